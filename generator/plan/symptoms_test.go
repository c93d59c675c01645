package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Rule 28: the published table, look by look, five days apart.
func TestRule28_EffusionCourse(t *testing.T) {
	for _, row := range published(t, "effusion-decision.csv") {
		tests := map[string]string{"2026-01-02": "effusion = \"3+\"\n"} // before the operation: no look after it
		for i, grade := range strings.Fields(row["looks"]) {
			tests[day("2026-01-12").AddDays(5*i).String()] = fmt.Sprintf("effusion = %q\nleft.lacks_extension_deg = 0\n", grade)
		}
		p := who{starts: "2026-04-06", tests: tests}.plan(t)
		if got := string(p.Symptoms.Action); got != row["action"] {
			t.Errorf("%s: %s, want %s (%s); %s", row["looks"], got, row["action"], row["reason"], p.Symptoms.Because)
		}
	}
}

// Rule 28: the sweep test needs a knee that nearly straightens: else a look ends no pause, and what it saw counts all the same. The
// kneecap tap misses a little, so it ends a pause as a 1+ would.
func TestRule28_ABentKneeHidesSwelling(t *testing.T) {
	const tap = "effusion_method = \"patellar-tap\"\n"
	look := func(grade string, lacks int) string {
		return fmt.Sprintf("effusion = %q\nleft.lacks_extension_deg = %d\n", grade, lacks)
	}
	for _, row := range []struct {
		looks []string
		want  plan.Action
		why   string
	}{
		{[]string{look("2+", 0), look("trace", 0)}, plan.NoAction, "a valid look ends the pause"},
		{[]string{look("2+", 0), look("trace", 5)}, plan.NoAction, "5° cannot be told from straight by a goniometer"},
		{[]string{look("2+", 0), look("trace", 6)}, plan.Pause, "an invalid one does not"},
		{[]string{look("2+", 0), look("zero", 6), look("trace", 0)}, plan.NoAction, "the next valid one does"},
		{[]string{look("2+", 6)}, plan.Pause, "swelling that is seen counts"},
		{[]string{look("2+", 6), look("zero", 6) + tap}, plan.Stay, "the tap sees 1+ at best: stay after a pause"},
		{[]string{look("2+", 6), look("zero", 6) + tap, look("zero", 6) + tap}, plan.NoAction, "1+ again resumes"},
		{[]string{look("2+", 6), look("2+", 6) + tap}, plan.Pause, "what the tap sees counts"},
		{[]string{look("2+", 6), look("trace", 6) + "effusion_method = \"ultrasound\"\n"}, plan.NoAction, "ultrasound sees the least"},
	} {
		tests := map[string]string{}
		for i, text := range row.looks {
			tests[day("2026-01-12").AddDays(5*i).String()] = text
		}
		if got := (who{starts: "2026-04-06", tests: tests}).plan(t).Symptoms.Action; got != row.want {
			t.Errorf("%q: %s, want %s (%s)", row.looks, got, row.want, row.why)
		}
	}
}

// Rule 29: kind of pain before its number, then the number, then the next morning.
func TestRule29_Pain(t *testing.T) {
	for _, row := range []struct {
		worst, morning, kind string
		want                 plan.Action
		why                  string
	}{
		{"", "", "", plan.NoAction, "nothing typed"},
		{"0", "", "ache", plan.NoAction, "0 to 2 go on"},
		{"2", "", "ache", plan.NoAction, "2 itself goes on"},
		{"2", "3", "ache", plan.StepBack, "above 2 next morning"},
		{"2.5", "2", "ache", plan.Stay, "above 2, back to 2 next morning"},
		{"5", "2", "ache", plan.Stay, "5 itself"},
		{"3", "", "ache", plan.Pause, "the next morning was not asked"},
		{"5", "3", "ache", plan.StepBack, "not settled"},
		{"5.5", "0", "ache", plan.StepBack, "above 5"},
		{"6", "", "ache", plan.Pause, "above 5 and the next morning not asked: no less than 3 does"},
		{"6", "1", "ache", plan.StepBack, "above 5, whatever the morning"},
		{"", "3", "", plan.StepBack, "only the morning was asked"},
		{"0", "0", "sharp", plan.StepBack, "kind before number"},
		{"1", "0", "catching", plan.StepBack, ""},
		{"1", "0", "giving-way", plan.StepBack, ""},
		{"3", "", "sharp", plan.Pause, "both: the strictest wins"},
	} {
		text := ""
		for key, v := range map[string]string{"pain_worst": row.worst, "pain_next_morning": row.morning} {
			if v != "" {
				text += key + " = " + v + "\n"
			}
		}
		if row.kind != "" {
			text += fmt.Sprintf("pain_kind = %q\n", row.kind)
		}
		p := who{starts: "2026-04-06", tests: map[string]string{"2026-04-03": text}}.plan(t)
		if got := p.Symptoms.Action; got != row.want {
			t.Errorf("%s, morning %s, %s: %s, want %s (%s)", row.worst, row.morning, row.kind, got, row.want, row.why)
		}
	}
}

// Rules 27 and 29: the newest look at each: a look at swelling alone does not take pain away, a calm day does.
func TestRule27_TheNewestLookAtEach(t *testing.T) {
	for _, row := range []struct {
		last string
		want plan.Action
		why  string
	}{
		{"effusion = \"zero\"\n", plan.StepBack, "pain was not asked again"},
		{"mass_kg = 64\n", plan.StepBack, "no look at all"},
		{"pain_worst = 0\n", plan.NoAction, "asked again, and gone"},
	} {
		p := who{starts: "2026-04-06", tests: map[string]string{"2026-04-01": "pain_worst = 6\npain_next_morning = 2\n", "2026-04-03": row.last}}.plan(t)
		if got := p.Symptoms.Action; got != row.want {
			t.Errorf("%q: %s, want %s (%s)", row.last, got, row.want, row.why)
		}
	}
}

// Rule 27: a pause leaves range, quad sets and the other leg; no loaded or impact work of that knee.
func TestRule27_Pause(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.files = own(`"leg-press-single"`, `"quad-set"`, `"heel-slide"`, `"knee-extension-isometric-90"`, `"squat"`, `"heel-raise"`, `"leg-curl-machine"`, `"running-intervals"`)
	w.more += opened("running", "2026-03-02")
	w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], "effusion = \"trace\"", "effusion = \"2+\"", 1)
	p := w.plan(t)
	for _, row := range []struct {
		exercise string
		side     unit.Side
		want     bool
	}{
		{"leg-press-single", unit.Left, false}, {"leg-press-single", unit.Right, true},
		{"quad-set", unit.Left, true}, {"heel-slide", unit.Left, true},
		{"knee-extension-isometric-90", unit.Left, false}, {"squat", unit.Both, false}, {"heel-raise", unit.Both, false},
		{"leg-curl-machine", unit.Left, false}, {"leg-curl-machine", unit.Right, true}, {"running-intervals", unit.Both, false},
	} {
		if got := dose(p, row.exercise, row.side, 1) != nil; got != row.want {
			t.Errorf("%s, %s: prescribed %v, want %v; %s", row.exercise, row.side, got, row.want, because(p, row.exercise, 1))
		}
	}
	if a := activity(t, p, "running"); a.State != "suspended" {
		t.Errorf("running is %s", a.State)
	}
}

// Rule 27: a step back is one step or 10 % down and one set less in the first week, and no impact; stay repeats.
func TestRule27_StepBackAndStay(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	base := w.tests["2026-04-06"]
	for _, row := range []struct {
		pain, left, right string
		sets              int
		why               string
	}{
		{"pain_worst = 1\npain_next_morning = 1", "52.5 55 55 57.5 57.5 60", "80 82.5 85 87.5 87.5 90", 3, "calm"},
		{"pain_worst = 4\npain_next_morning = 1", "52.5 52.5 55 55 57.5 57.5", "80 80 82.5 85 87.5 87.5", 3, "stay: the growth begins a week later"},
		{"pain_worst = 7\npain_next_morning = 1", "47.5 50 50 52.5 55 57.5", "80 80 82.5 85 87.5 87.5", 2, "step back: 54.29 × 0.9 = 48.86, then 2.5 a week but in the third, when the set comes back"},
	} {
		w.tests["2026-04-06"] = strings.Replace(base, "pain_worst = 1\npain_next_morning = 1", row.pain, 1)
		p := w.plan(t)
		if got := loads(p, "leg-press-single", unit.Left); got != row.left {
			t.Errorf("%s: operated %s, want %s (%s)", row.pain, got, row.left, row.why)
		}
		if got := loads(p, "leg-press-single", unit.Right); got != row.right {
			t.Errorf("%s: other %s, want %s", row.pain, got, row.right)
		}
		if got := *dose(p, "leg-press-single", unit.Left, 1).Dose.Sets; got != row.sets {
			t.Errorf("%s: %d sets, want %d", row.pain, got, row.sets)
		}
		if got := *dose(p, "leg-press-single", unit.Right, 1).Dose.Sets; got != 3 {
			t.Errorf("%s: the other leg %d sets", row.pain, got)
		}
	}
	light := pressed("knee-extension-machine", "20 kg x 8+0", "30 kg x 8+0", "")
	light.weeks, light.tests["2026-04-06"] = 1, strings.Replace(light.tests["2026-04-06"], "pain_worst = 1", "pain_worst = 7", 1)
	if got := loads(light.plan(t), "knee-extension-machine", unit.Left); got != "11.25" {
		t.Errorf("14.29 less a step of 5 is 9.29… %s", got)
	}
}

// Rule 29: a test marked "stopped for pain" counts as pain above 5 for that exercise, for both legs' sake of that exercise only.
func TestRule29_StoppedForPainOfOneExercise(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.files = own(`"leg-press-single"`, `"leg-press-both"`)
	single := lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0")
	stopped := "[[lift]]\nexercise = \"leg-press-both\"\nrange_deg = [0, 90]\nboth.stopped_for_pain = true\n"
	w.tests["2026-04-06"] = straightKnees + single + stopped
	p := w.plan(t)
	if p.Symptoms.Action != plan.NoAction || len(p.Symptoms.Exercises) != 1 {
		t.Errorf("%s %v", p.Symptoms.Action, p.Symptoms.Exercises)
	}
	if got := loads(p, "leg-press-single", unit.Left); got != "52.5 55 55 57.5 57.5 60" {
		t.Errorf("the other exercise goes on: %s", got)
	}
	if d := dose(p, "leg-press-both", unit.Both, 1); *d.Dose.Sets != 2 {
		t.Errorf("one set less: %d", *d.Dose.Sets)
	}
	w.tests["2025-09-29"], w.tests["2026-04-06"] = stopped, straightKnees+single
	if p := w.plan(t); len(p.Symptoms.Exercises) != 0 {
		t.Errorf("stopped before the operation: %v", p.Symptoms.Exercises)
	}
	w.tests["2026-04-01"], w.tests["2026-04-06"] = stopped, straightKnees+single+"[[lift]]\nexercise = \"leg-press-both\"\nrange_deg = [0, 90]\nboth = \"140 kg x 8+0\"\n"
	if p := w.plan(t); len(p.Symptoms.Exercises) != 0 {
		t.Errorf("a newer lift went well: %v", p.Symptoms.Exercises)
	}
	// an exercise that steps back does not grow in the week after either
	w.tests = map[string]string{"2026-04-06": straightKnees + "[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft = \"60 kg x 8+0\"\nright.stopped_for_pain = true\n"}
	if got := loads(w.plan(t), "leg-press-single", unit.Left); got != "47.5 50 50 52.5 55 57.5" {
		t.Errorf("stepped back, then a step a week: %s", got)
	}
}

// Flags: the knee was not looked at, or long ago.
func TestRule27_StaleLook(t *testing.T) {
	for _, row := range []struct{ on, want string }{{"", "knee-not-looked-at"}, {"2026-03-22", "knee-looked-at-long-ago"}, {"2026-03-23", ""}} {
		w := who{starts: "2026-04-06", tests: map[string]string{}}
		if row.on != "" {
			w.tests[row.on] = calm
		}
		got := ""
		for _, f := range w.plan(t).Flags {
			if strings.HasPrefix(f.ID, "knee-") {
				got = f.ID
			}
		}
		if got != row.want {
			t.Errorf("last look %q: flag %q, want %q", row.on, got, row.want)
		}
	}
}
