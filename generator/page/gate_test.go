package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

// gated is a box whose range is another in each week: the most bent degrees of weeks first, first+1, …
func gated(first int, most ...unit.Degrees) plan.Prescription {
	p := plan.Prescription{Exercise: &program.Exercise{ID: "old", Title: "Old work", Kinds: []unit.Kind{unit.ActiveBend}}, Slot: &program.Slot{ID: "front"}, Side: unit.Left, Role: "operated"}
	for i, m := range most {
		week := first + i
		p.Weeks = append(p.Weeks, plan.WeekDose{Week: week, Starts: day("2026-04-06").AddWeeks(week - 1), Due: week == 1, Dose: program.Dose{Sets: n(3), Reps: n(10)}, Range: reach(0, m)})
	}
	return p
}

// TestGateSaysWhatToDoMeanwhile: who has not been told finds in the same box what is due before the gate.
func TestGateSaysWhatToDoMeanwhile(t *testing.T) {
	p := samplePlan()
	h := handout{p, sampleWords(t)}
	for _, row := range []struct {
		name string
		box  plan.Prescription
		want []string // of the later weeks
		why  string
	}{
		{"one gate", gated(1, 60, 60, 90, 90), []string{"", "Stay with week 2."}, "weeks 3 and 4 say the same, so one line; week 2 is the last before it"},
		{"gate after gate", gated(1, 30, 60, 90, 90), []string{"Stay with week 1.", "Stay with the last week you were told to do."}, "week 2 may not have been opened either"},
		{"a range that narrows", gated(1, 90, 60, 60, 60), []string{""}, "less needs nobody's word"},
		{"no range", plan.Prescription{Weeks: []plan.WeekDose{{Week: 1, Due: true}, {Week: 2}, {Week: 3}, {Week: 4}}}, nil, "nothing goes further"},
	} {
		var got []string
		for _, s := range h.stretches(row.box, false) {
			_, after, _ := strings.Cut(s.says, "Not told yet? ")
			got = append(got, after)
			if (after != "") != strings.Contains(s.says, "Only after your physiotherapist says so.") {
				t.Errorf("%s: %q: a gate and its way out stand together", row.name, s.says)
			}
		}
		if row.want == nil {
			row.want = []string{""}
		}
		if strings.Join(got, "|") != strings.Join(row.want, "|") {
			t.Errorf("%s: %q, want %q: %s", row.name, got, row.want, row.why)
		}
	}
}

// TestBoxThatTakesThePlaceOfAnother: the old exercise goes on until the new one is opened, and never where that is not sure.
func TestBoxThatTakesThePlaceOfAnother(t *testing.T) {
	const goesOn = "leave it out once you do: New work. Until then go on as in week 2."
	for _, row := range []struct {
		name   string
		change func(p *plan.Plan, old, next *plan.Prescription)
		holds  bool
		why    string
	}{
		{"in its place", func(*plan.Plan, *plan.Prescription, *plan.Prescription) {}, true, "same slot and leg, right after it, no further, no other kind of work"},
		{"another slot", func(_ *plan.Plan, _, next *plan.Prescription) { next.Slot = &program.Slot{ID: "back"} }, false, "it replaces something else"},
		{"the other leg", func(_ *plan.Plan, _, next *plan.Prescription) { next.Side = unit.Right }, false, "legs do not stand in for each other"},
		{"a narrower range", func(_ *plan.Plan, _, next *plan.Prescription) { next.Weeks[0].Range = reach(0, 45) }, false, "limits of that week may forbid the old range"},
		{"another kind of work", func(_ *plan.Plan, old, _ *plan.Prescription) {
			old.Exercise.Kinds = append(old.Exercise.Kinds, unit.Kneeling)
		}, false, "what limits allow of the new one says nothing about kneeling"},
		{"a week between", func(_ *plan.Plan, old, _ *plan.Prescription) { old.Weeks = old.Weeks[:1] }, false, "it was stopped for another reason"},
		{"at another place", func(p *plan.Plan, _, _ *plan.Prescription) {
			for i := range p.Weeks {
				if p.Weeks[i].Number > 2 {
					p.Weeks[i].Place = &plan.Place{ID: "hotel"}
				}
			}
		}, false, "what the old one needs may not be there"},
	} {
		old, next := gated(1, 60, 60), gated(3, 90, 90)
		next.Exercise, next.Slot = &program.Exercise{ID: "new", Title: "New work", Kinds: []unit.Kind{unit.ActiveBend, unit.AddedWeight}}, old.Slot
		p := samplePlan()
		for i := range p.Weeks {
			p.Weeks[i].Away, p.Weeks[i].Place = nil, nil
		}
		row.change(p, &old, &next)
		p.Prescriptions = []plan.Prescription{old, next}
		h := handout{p, sampleWords(t)}
		if got := h.leftOut(old, 3) == goesOn; got != row.holds {
			t.Errorf("%s: the old box says %q: %s", row.name, h.leftOut(old, 3), row.why)
		}
		if got := strings.HasSuffix(h.begins(next), "Until then do exercise 1."); got != row.holds {
			t.Errorf("%s: the new box says %q: %s", row.name, h.begins(next), row.why)
		}
		if !row.holds && !strings.HasSuffix(h.begins(next), "Until then leave it out.") {
			t.Errorf("%s: the new box says nothing for who was not told: %q", row.name, h.begins(next))
		}
	}
}

// TestGateBeforeTheNextVisit: what waits for a word in a week that is over by the next visit is asked about.
func TestGateBeforeTheNextVisit(t *testing.T) {
	plain, _ := words.LoadPlain(source.Over(templates.FS), words.Shipped)
	for _, row := range []struct {
		visit string
		box   plan.Prescription
		want  string
		why   string
	}{
		{"2026-05-04", gated(1, 60, 60, 90, 90), "from 2026-04-20 on old waits", "the gate is in the week of 20 April, the visit after the block"},
		{"2026-04-27", gated(1, 60, 60, 90, 90), "from 2026-04-20 on old waits", "the week is over"},
		{"2026-04-26", gated(1, 60, 60, 90, 90), "", "its last day is in time"},
		{"2026-04-20", gated(1, 60, 60, 90, 90), "", ""},
		{"2026-05-04", gated(2, 60, 60, 60), "from 2026-04-13 on old waits", "a box that begins later is a gate too"},
		{"2026-05-04", gated(1, 60, 60, 60, 60), "", "nothing waits"},
		{"", gated(1, 60, 60, 90, 90), "", "no visit is booked: the page says so itself"},
	} {
		p := samplePlan()
		p.Block.NextVisit = nil
		if row.visit != "" {
			on := day(row.visit)
			p.Block.NextVisit = &on
		}
		p.Prescriptions = []plan.Prescription{row.box}
		got := ""
		for _, r := range Remarks(p, sampleWords(t), plain) {
			if r.ID == "gate" {
				got = r.What
			}
		}
		if row.want == "" && got != "" || !strings.HasPrefix(got, row.want) {
			t.Errorf("visit %s: %q, want %q: %s", row.visit, got, row.want, row.why)
		}
	}
}
