package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A set that differs from the others has a line of its own, with its load and its repetitions; the fourth set of a daily-adjusted
// slot says what to take after what was done. Rows of one load stand together.
func TestSetsThatDifferHaveLines(t *testing.T) {
	p := samplePlan()
	r := &p.Prescriptions[0]
	r.Weeks = r.Weeks[:1]
	w := &r.Weeks[0]
	w.Dose = program.Dose{Sets: n(4), Reps: n(10)}
	w.Each = []plan.SetDose{{Plates: kg(20), PerSide: []unit.Kilograms{10}, Reps: n(10)}, {Plates: kg(30), PerSide: []unit.Kilograms{10, 5}, Reps: n(6)}, {Plates: kg(40), PerSide: []unit.Kilograms{20}}}
	w.Fourth = []plan.FourthSet{{From: 0, To: 2, Plates: kg(35), PerSide: []unit.Kilograms{10, 7.5}}, {From: 3, To: 4, Plates: kg(40), PerSide: []unit.Kilograms{20}}, {From: 5, To: 6, Plates: kg(40), PerSide: []unit.Kilograms{20}}, {From: 7, Plates: kg(45), PerSide: []unit.Kilograms{20, 2.5}}}
	text := string(printed(t, samplePrinter(t).Markdown, Handout(p, sampleWords(t))))
	for _, want := range []string{"Set 1: 10 times · 10 kg on each side", "Set 2: 6 times · 15 kg on each side", "Set 3: as many as you can · 20 kg on each side",
		"Set 4, after 0 to 2 in set 3: 17.5 kg on each side · as many as you can", "Set 4, after 3 to 6 in set 3: 20 kg on each side", "Set 4, after 7 or more in set 3: 22.5 kg on each side", "4 sets"} {
		if !strings.Contains(strings.ReplaceAll(text, "\u00a0", " "), want) {
			t.Errorf("the page does not say %q", want)
		}
	}
	if strings.Contains(text, "4\u00a0×\u00a010") {
		t.Error("the page says 4 × 10 as if all sets were alike")
	}
}

// What a dose needs besides a weight is said in the box: a band's length, the force of a hold in the unit of the gauge, a cuff.
func TestBesidesAWeight(t *testing.T) {
	by := basis.Rule{Name: "sample"}
	for _, row := range []struct {
		change func(*plan.WeekDose)
		want   string
	}{
		{func(w *plan.WeekDose) { w.Stretch = basis.Given("s", by, unit.Metres(1.49), "") }, "stretch the band to 149 cm"},
		{func(w *plan.WeekDose) { w.HoldAt, w.HoldIn = basis.Given("f", by, unit.Newtons(315), ""), "N" }, "push with 315 N all the time"},
		{func(w *plan.WeekDose) {
			w.HoldAt, w.HoldIn = basis.Given("f", by, unit.Newtons(31.5*unit.NewtonsPerKgf), ""), "kgf"
		}, "push with 31.5 kgf all the time"},
		{func(w *plan.WeekDose) { w.Pressure = basis.Given("p", by, unit.MillimetresOfMercury(144), "") }, "pump it up to 144 mmHg"},
	} {
		p := samplePlan()
		row.change(&p.Prescriptions[0].Weeks[0])
		text := strings.ReplaceAll(string(printed(t, samplePrinter(t).Markdown, Handout(p, sampleWords(t)))), "\u00a0", " ")
		if !strings.Contains(text, row.want) {
			t.Errorf("the page does not say %q", row.want)
		}
	}
}

// The body alone is no load of the machine: the page says so in these words.
func TestBodyAloneIsSaid(t *testing.T) {
	h := handout{Plan: samplePlan(), w: sampleWords(t)}
	pr := h.Prescriptions[0]
	pr.Weeks[0].Plates, pr.Weeks[0].PerSide = kg(0), nil
	if got := h.loadOf(pr, pr.Weeks[0]); got != "no added weight" {
		t.Errorf("%q", got)
	}
	withBody := pr
	withBody.Body = &finding.Body{}
	if got := h.loadOf(withBody, pr.Weeks[0]); got != "your body alone, no weight" {
		t.Errorf("%q", got)
	}
}
