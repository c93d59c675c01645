package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// slotOf is a program of one slot, with lines of its own in the place of sets, repetitions and reserve.
func slotOf(choose, lines string) map[string]string {
	files := own(choose)
	text := files["programs/phases/settle.toml"]
	files["programs/phases/settle.toml"] = strings.Replace(text, "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5", lines, 1)
	return files
}

// eachOf are the sets of a dose: 10×15 10×22.5 max×30.
func eachOf(d *plan.WeekDose) string {
	if d == nil {
		return "-"
	}
	var all []string
	for _, s := range d.Each {
		reps := "max"
		if s.Reps != nil {
			reps = fmt.Sprint(*s.Reps)
		}
		all = append(all, fmt.Sprintf("%s×%g", reps, float64(s.Plates.Or(0))))
	}
	return strings.Join(all, " ")
}

// DeLorme and Oxford: 50, 75 and 100 % of what is moved ten times. Loading plan 4.3: a 10RM of 30 kg gives 15, 22.5 and 30, 675 kg in
// all. 40 kg to failure once is a maximum of 40; Epley's share of ten is 75 %: 30.
func TestMethodRisingAndFalling(t *testing.T) {
	for _, row := range []struct{ lines, date, want, because, why string }{
		{"method = \"rising\"\nreserve = 0", "2025-10-06", "10×15 10×22.5 10×30", "", ""},
		{"method = \"falling\"\nreserve = 0", "2025-10-06", "10×30 10×22.5 10×15", "", ""},
		{"method = \"rising\"\nreserve = 2", "2025-10-06", "10×12.5 10×20 10×27.5", "", "71.43 % of 40 is 28.57: each set is cut from its own share"},
		{"method = \"rising\"\nreserve = 0", "2026-02-02", "-", "all-out effort is closed", "week 9: to failure waits until week 12"},
		{"method = \"rising\"\nreserve = 2", "2026-02-02", "10×12.5 10×20 10×27.5", "", "week 9, with 2 in reserve: not to failure"},
	} {
		w := pressed("leg-press-single", "40 kg x 1+0", "90 kg x 8+0", "")
		w.files, w.date, w.weeks = slotOf(`"leg-press-single"`, row.lines), row.date, 1
		if row.date > "2026" {
			w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], `"40 kg x 1+0"`, "{ moved_kg = 31.5, reps = 5, reserve = 3 }", 1) // 31.5 × 1.2667 = 39.9
		}
		p := w.plan(t)
		if got := eachOf(dose(p, "leg-press-single", unit.Left, 1)); got != row.want || !strings.Contains(because(p, "leg-press-single", 1), row.because) {
			t.Errorf("%q on %s: %s, because %q, want %s (%s)", row.lines, row.date, got, because(p, "leg-press-single", 1), row.want, row.why)
		}
		if shared := page.SharedIDs(p); len(shared) > 0 {
			t.Errorf("ids that mean two numbers: %v", shared)
		}
	}
	w := pressed("leg-press-single", "40 kg x 1+0", "90 kg x 8+0", "")
	w.files = slotOf(`"leg-press-single"`, "method = \"rising\"\nreserve = 0")
	if got := w.plan(t).Prescriptions[0].Tonnage.Or(0); got != 675 {
		t.Errorf("%v kg in all, want 675", got)
	}
}

// A step back drops the last set, a typed load caps all of them.
func TestMethodIsHeldDown(t *testing.T) {
	w := pressed("leg-press-single", "40 kg x 1+0", "90 kg x 8+0", "")
	w.weeks, w.files = 1, slotOf(`"leg-press-single"`, "method = \"rising\"\nreserve = 2")
	w.block = override("side = \"left\"\nplates_kg = 15\nreason = \"wish\"")
	if got := eachOf(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got != "10×12.5 10×15 10×15" {
		t.Errorf("%s, want every set at 15 or less", got)
	}
	w.block = override("side = \"left\"\nsets = 2\nreason = \"wish\"")
	if got := eachOf(dose(w.plan(t), "leg-press-single", unit.Left, 1)); got != "10×12.5 10×20" {
		t.Errorf("%s, want the last set left out", got)
	}
}

// Daily adjusted. Loading plan 3.1: a working weight of 40 gives 20 × 10, 30 × 6, 40 as often as possible, then after 8 of it 42.5,
// after 2 of it 35. 48 kg to failure once: 83.3 % is 40.
func TestMethodDailyAdjusted(t *testing.T) {
	w := pressed("leg-press-single", "moved 48 kg x 1+0", "90 kg x 8+0", "")
	w.weeks, w.files = 1, slotOf(`"leg-press-single"`, `method = "daily-adjusted"`)
	p := w.plan(t)
	d := dose(p, "leg-press-single", unit.Left, 1)
	if got := eachOf(d); got != "10×20 6×30 max×40" {
		t.Fatalf("%s, want 10×20 6×30 max×40 (%s)", got, because(p, "leg-press-single", 1))
	}
	fourth := ""
	for _, f := range d.Fourth {
		fourth += fmt.Sprintf("%d:%g ", f.From, float64(f.Plates.Or(0)))
	}
	// 11 and more asks for 5 kg more, which is above a tenth of 40: the load stays
	if fourth != "0:35 3:37.5 5:40 7:42.5 11:40 " && fourth != "0:35 3:37.5 5:40 7:42.5 11:42.5 " {
		t.Errorf("set 4: %s", fourth)
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	w.date, w.tests["2026-04-06"] = "2026-02-02", straightKnees+lift("leg-press-single", "range_deg = [0, 90]", "40 kg x 4+3", "40 kg x 4+3")
	if why := because(w.plan(t), "leg-press-single", 1); !strings.Contains(why, "all-out effort is closed") {
		t.Errorf("week 9: %q", why)
	}
	w.date = "2025-10-06"
	w.tests["2026-04-06"] = strings.Replace(straightKnees, "pain_worst = 1", "pain_worst = 4", 1) + lift("leg-press-single", "range_deg = [0, 90]", "48 kg x 1+0", "48 kg x 1+0")
	if why := because(w.plan(t), "leg-press-single", 1); !strings.Contains(why, "calm") {
		t.Errorf("a sore knee goes on to failure: %q", why)
	}
}

// cuffed is a press under a cuff. Loading plan 4.8: a maximum of 60 gives 18 kg; 180 mmHg gives 144 at 80 %; 75 times 4 s and 3 rests of
// 30 s are 390 s. The press of the test clinic has steps of 2.5 kg: 17.5.
func cuffed(day, block string) who {
	w := pressed("leg-press-single", "60 kg x 1+0", "90 kg x 8+0", "")
	w.weeks, w.block = 1, block
	w.files = slotOf(`"leg-press-single", "step-up"`, "method = \"cuffed\"\ncuffed = { load_percent = 30, pressure_percent = 80 }")
	w.files["clinic.toml"] = strings.Replace(clinicText, "[[place]]\nid = \"heavy\"", "[[place.device]]\nid = \"cuff\"\nkind = \"cuff\"\n[[place]]\nid = \"heavy\"", 1)
	w.tests["2026-04-06"] += day
	return w
}

const cuffIsFit = "[cuffed]\nby = \"imbali\"\n"

func TestMethodCuffed(t *testing.T) {
	withKnee := func(w who, line string) who {
		w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], "left.flexion_deg = 138", "left.flexion_deg = 138\n"+line, 1)
		return w
	}
	w := withKnee(cuffed("", cuffIsFit), "left.occlusion_mmhg = 180")
	p := w.plan(t)
	d := dose(p, "leg-press-single", unit.Left, 1)
	if got := eachOf(d); got != "30×17.5 15×17.5 15×17.5 15×17.5" {
		t.Fatalf("%s (%s)", got, because(p, "leg-press-single", 1))
	}
	if d.Pressure.Or(0) != 144 || d.Dose.Rest == nil || *d.Dose.Rest != 30 {
		t.Errorf("%v mmHg, want 144", d.Pressure.Or(0))
	}
	if d.Time.Or(0) != 75*5+90 { // the press takes 5 s a time
		t.Errorf("%v s under the cuff", d.Time.Or(0))
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
	if dose(p, "leg-press-single", unit.Right, 1) != nil {
		t.Error("the right leg was not measured, and wears a cuff")
	}
	for _, row := range []struct {
		name    string
		w       who
		because string
	}{
		{"no therapist", withKnee(cuffed("", ""), "left.occlusion_mmhg = 180"), "therapist's word"},
		{"not measured", cuffed("", cuffIsFit), "not measured"},
		{"no lift", func() who {
			w := withKnee(cuffed("", cuffIsFit), "left.occlusion_mmhg = 180")
			w.tests["2026-04-06"], _, _ = strings.Cut(w.tests["2026-04-06"], "[[lift]]")
			return w
		}(), "no load under the cuff"},
		{"measured long ago", func() who {
			w := cuffed("", cuffIsFit)
			w.tests["2026-03-02"] = "left.occlusion_mmhg = 180\n"
			return w
		}(), "measure again"},
	} {
		if why := because(row.w.plan(t), "leg-press-single", 1); !strings.Contains(why, row.because) {
			t.Errorf("%s: %q, want %q", row.name, why, row.because)
		}
	}
	here := withKnee(cuffed("", cuffIsFit), "left.occlusion_mmhg = 180")
	delete(here.files, "clinic.toml")
	if why := because(here.plan(t), "leg-press-single", 1); !strings.Contains(why, "no cuff") {
		t.Errorf("no cuff at the place: %q", why)
	}
}

// Sets that differ between the legs.
func TestOtherSets(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.weeks, w.files = 1, slotOf(`"leg-press-single"`, "sets = 4\nother_sets = 2\nreps = 10\nreserve = 2")
	p := w.plan(t)
	// loading plan 8: at 2:1 by sets (4 : 2) 2100 and 1600 kg
	got := map[unit.Side]float64{}
	for _, r := range p.Prescriptions {
		got[r.Side] = float64(r.Tonnage.Or(0))
	}
	if got[unit.Left] != 2100 || got[unit.Right] != 1600 {
		t.Errorf("%v, want 2100 and 1600 kg", got)
	}
}

// Slips in a method are told at once, with what to write.
func TestMethodSlips(t *testing.T) {
	for _, row := range []struct{ lines, want string }{
		{"method = \"rising\"\nsets = 4\nreps = 10\nreserve = 2", "3 sets"},
		{"method = \"cuffed\"", "go together"},
		{"sets = 3\nreps = 10\ncuffed = { load_percent = 30, pressure_percent = 80 }", "go together"},
		{"method = \"cuffed\"\ncuffed = { load_percent = 50, pressure_percent = 80 }", "20 to 40"},
		{"method = \"stimulated\"", "go together"},
		{"method = \"daily-adjusted\"\nreserve = 2", "its own repetitions"},
		{"method = \"pyramid\"\nreps = 10", "pyramid"},
		{"legs = \"operated\"\nother_sets = 2\nsets = 3\nreps = 10", "one leg only"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.files = slotOf(`"leg-press-single"`, row.lines)
		_, found := w.planned(t)
		if faults := fmt.Sprint(found); !strings.Contains(faults, row.want) {
			t.Errorf("%q: %q, want %q", row.lines, faults, row.want)
		}
	}
}
