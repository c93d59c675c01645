package plan_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

func waived(id string) string {
	return fmt.Sprintf("[[waived]]\ncriterion = %q\nby = \"imbali\"\nreason = \"agreed\"\n", id)
}

// Rule 15: a criterion is met, not met, not tested, out of date or waived; a doubtful test opens nothing.
func TestRule15_StatesOfACriterion(t *testing.T) {
	force := func(left, right int) string {
		return pull("knee-extension", fmt.Sprintf("[%d]", left), fmt.Sprintf("[%d]", right))
	}
	for _, row := range []struct {
		name, id, more, test, on, want, why string
	}{
		{"at the mark", "run.knee-extension.lsi", "", force(260, 325), "2026-04-06", "met", "260 of 325 is exactly 80; floats alone say 79.999"},
		{"one newton short", "run.knee-extension.lsi", "", force(259, 325), "2026-04-06", "not met", "79.6"},
		{"no hair over", "run.knee-extension.lsi", "", pull("knee-extension", "[255.88]", "[320]"), "2026-04-06", "not met", "79.9625 is cut down to 79.9, not rounded up to 80"},
		{"untested leg", "run.knee-extension.lsi", "", "[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [260]\nright.not_tested = \"no time\"\n", "2026-04-06", "not tested", "no test is not a weak leg"},
		{"untested operated leg", "run.knee-extension.lsi", "", "[[strength]]\ntest = \"knee-extension\"\nright.peak_n = [260]\n", "2026-04-06", "not tested", "nothing was typed"},
		{"stopped for pain", "run.knee-extension.lsi", "", "[[strength]]\ntest = \"knee-extension\"\nleft.stopped_for_pain = true\nright.peak_n = [260]\n", "2026-04-06", "not tested", "stopped for pain"},
		{"no test at all", "run.knee-extension.lsi", "", "", "2026-04-06", "not tested", ""},
		{"six weeks old", "run.knee-extension.lsi", "", force(260, 325), "2026-02-23", "met", "42 days: within six weeks"},
		{"a day older", "run.knee-extension.lsi", "", force(260, 325), "2026-02-22", "out of date", "43 days"},
		{"swelling two weeks old", "run.effusion", "", calm, "2026-03-23", "met", "within two weeks"},
		{"swelling a day older", "run.effusion", "", calm, "2026-03-22", "out of date", "15 days"},
		{"above 110", "run.knee-extension.lsi", "", force(331, 300), "2026-04-06", "not met", "110.3: a doubt about the reference, not a pass"},
		{"110 itself", "run.knee-extension.lsi", "", force(330, 300), "2026-04-06", "met", "110 is not above 110"},
		{"hop above 110", "running.hop-single.lsi", "", "[[hop]]\ntest = \"single\"\nleft.distance_cm = [120]\nright.distance_cm = [100]\n", "2026-04-06", "not met", "120 of a hop is no pass either"},
		{"wide spread", "run.knee-extension.lsi", "", pull("knee-extension", "[330, 420, 405]", "[410, 412, 405]"), "2026-04-06", "not met", "trials spread 12.5 %: doubtful, opens nothing"},
		{"waived", "run.knee-extension.lsi", waived("run.knee-extension.lsi"), force(200, 325), "2026-04-06", "waived", "by name, with a reason"},
		{"waived and not tested", "run.knee-extension.lsi", waived("run.knee-extension.lsi"), "", "2026-04-06", "waived", ""},
		{"waived elsewhere", "run.knee-extension.lsi", waived("running.knee-extension.lsi"), force(200, 325), "2026-04-06", "not met", "the waiver is of running's, not of the stage's"},
		{"waived but met", "run.knee-extension.lsi", waived("run.knee-extension.lsi"), force(300, 325), "2026-04-06", "met", "what is met needs no waiver"},
		{"a floor waived", "running.time", waived("running.time"), "", "2026-04-06", "met", "week 13"},
		{"only if tested", "running.hop-single.lsi", "", "", "2026-04-06", "not tested", "asked only where it was done"},
		{"grade", "run.effusion", "", "effusion = \"1+\"\n", "2026-04-06", "not met", "1+ is above trace"},
		{"sweep of a nearly straight knee", "run.effusion", "", "effusion = \"zero\"\nleft.lacks_extension_deg = 5\n", "2026-04-06", "met", "a goniometer cannot tell 5° from straight"},
		{"sweep of a bent knee", "run.effusion", "", "effusion = \"zero\"\nleft.lacks_extension_deg = 6\n", "2026-04-06", "not tested", "the sweep test needs a knee that nearly straightens"},
		{"swollen all the same", "run.effusion", "", "effusion = \"2+\"\nleft.lacks_extension_deg = 6\n", "2026-04-06", "not met", "what was seen is there"},
		{"tap for a trace", "run.effusion", "", "effusion = \"zero\"\neffusion_method = \"patellar-tap\"\n", "2026-04-06", "not tested", "a tap cannot see a trace"},
		{"tape for a trace", "run.effusion", "", "effusion = \"zero\"\neffusion_method = \"girth\"\n", "2026-04-06", "not tested", "nor can a tape"},
		{"tap of a swollen knee", "run.effusion", "", "effusion = \"1+\"\neffusion_method = \"patellar-tap\"\n", "2026-04-06", "not met", "it sees a 1+"},
		{"ultrasound of a bent knee", "run.effusion", "", "effusion = \"zero\"\neffusion_method = \"ultrasound\"\nleft.lacks_extension_deg = 6\n", "2026-04-06", "met", "it does not ask for a straight knee"},
		{"below is below", "run.pain", "", "pain_worst = 2\npain_next_morning = 0\n", "2026-04-06", "not met", "below 2 in the source"},
		{"beyond straight", "run.extension", "", "left.beyond_straight_deg = 4\n", "2026-04-06", "met", "beyond straight lacks nothing"},
		{"lacks a degree", "run.extension", "", "left.lacks_extension_deg = 1\n", "2026-04-06", "not met", ""},
		{"the other knee's extension", "run.extension", "", "right.lacks_extension_deg = 0\n", "2026-04-06", "not tested", "the other knee says nothing of this one"},
		{"before the operation", "run.knee-extension.lsi", "", force(325, 325), "2025-12-29", "not tested", "a value from before the event is not the state of the operated leg"},
		{"swelling before the operation", "run.effusion", "", calm, "2026-01-04", "not tested", "likewise"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-04-06", stages: "rebuild 2026-03-02", more: setups + row.more, tests: map[string]string{}}
			if row.test != "" {
				w.tests[row.on] = row.test
			}
			c := criterion(t, w.plan(t), row.id)
			if string(c.State) != row.want {
				t.Errorf("%s, want %s (%s); found %v, doubt %q", c.State, row.want, row.why, c.Found, c.Doubt)
			}
			if opens := c.State == plan.Met || c.State == plan.Waived || row.name == "only if tested"; c.Passed() != opens {
				t.Errorf("%s, and passed is %v", c.State, c.Passed())
			}
		})
	}
}

// Rule 16: swelling, pain and extension before any impact cannot be waived.
func TestRule16_SwellingPainAndExtensionCannotBeWaived(t *testing.T) {
	for _, measure := range []string{"effusion", "pain", "extension"} {
		_, faults := who{starts: "2026-04-06", more: waived("running." + measure)}.planned(t)
		if !strings.Contains(faults.Wrong().Error(), "cannot be waived") {
			t.Errorf("%s: %v", measure, faults)
		}
	}
	if _, faults := (who{starts: "2026-04-06", more: waived("running.time")}).planned(t); len(faults.Wrong()) > 0 {
		t.Errorf("a floor may be waived by name: %v", faults)
	}
	if _, faults := (who{starts: "2026-04-06", more: waived("running.knee-extention.lsi")}).planned(t); len(faults.Wrong()) == 0 {
		t.Errorf("a misspelt criterion passes in silence")
	}
}

// Rule 13: with a value of the other leg from before the operation, the lower of symmetry and that ratio governs.
func TestRule13_TheLowerGoverns(t *testing.T) {
	now := straightKnees + pull("knee-extension", "[180]", "[200]")
	for _, row := range []struct {
		before, want string
		found        float64
		why          string
	}{
		{"", "met", 90, "symmetry alone"},
		{pull("knee-extension", "[240]", "[240]"), "not met", 75, "180 of 240 before the operation"},
		{pull("knee-extension", "[190]", "[190]"), "met", 90, "the ratio 94.7 is the higher: symmetry governs"},
		{"[[strength]]\ntest = \"knee-extension\"\nangle_deg = 60\ntared = true\nleft.peak_n = [240]\nright.peak_n = [240]\n", "met", 90, "tested at another angle: never compared"},
		{"[[strength]]\ntest = \"knee-extension\"\nleft.peak_n = [240]\nright.not_tested = \"no time\"\n", "met", 90, "the other leg was not tested then"},
	} {
		w := who{starts: "2026-04-06", stages: "rebuild 2026-03-02", more: setups, tests: map[string]string{"2026-04-06": now, "2025-12-29": row.before}}
		c := criterion(t, w.plan(t), "run.knee-extension.lsi")
		if string(c.State) != row.want || c.Found == nil || c.Found.Value != row.found {
			t.Errorf("%s with %v, want %s with %g (%s)", c.State, c.Found, row.want, row.found, row.why)
		}
	}
}

// Rule 12: unless the other leg is sound, symmetry opens nothing; a flag says so.
func TestRule12_NoSoundReference(t *testing.T) {
	for _, other := range []string{"injured-before", "donor", "operated-too"} {
		w := who{other: other, starts: "2026-04-06", stages: "rebuild 2026-03-02", more: setups,
			tests: map[string]string{"2026-04-06": straightKnees + pull("knee-extension", "[300]", "[325]")}}
		p := w.plan(t)
		for _, id := range []string{"run.knee-extension.lsi", "run.flexion.percent-of-other"} {
			if c := criterion(t, p, id); c.Passed() || c.Doubt == "" {
				t.Errorf("%s: %s is %s, doubt %q", other, id, c.State, c.Doubt)
			}
		}
		flagged := false
		for _, f := range p.Flags {
			flagged = flagged || f.ID == "reference-not-sound"
		}
		if !flagged {
			t.Errorf("%s: no flag", other)
		}
	}
}

// Rule 14: the reference rising more than 10 % is a flag.
func TestRule14_TheReferenceRises(t *testing.T) {
	for _, row := range []struct {
		right string
		want  bool
	}{{"[440]", false}, {"[441]", true}} {
		w := who{starts: "2026-04-06", stages: "rebuild 2026-03-02", more: setups, tests: map[string]string{
			"2026-03-02": pull("knee-extension", "[300]", "[400]"), "2026-04-06": pull("knee-extension", "[300]", row.right)}}
		got := false
		for _, f := range w.plan(t).Flags {
			got = got || f.ID == "reference-rising"
		}
		if got != row.want {
			t.Errorf("400 to %s: flag %v", row.right, got)
		}
	}
}

// Rule 16: the stage is recorded; what is earned is said beside it; an old test never causes a step back.
func TestRule16_RecordedEarnedAhead(t *testing.T) {
	good := straightKnees + pull("knee-extension", "[300]", "[325]") + pull("knee-flexion", "[200]", "[220]")
	for _, row := range []struct {
		name, stages  string
		tests         map[string]string
		set, earned   string
		ahead, record bool
		next          string
		why           string
	}{
		{"nothing recorded", "", nil, "settle", "settle", false, false, "activate", "the first phase is taken"},
		{"recorded and earned", "activate 2026-01-26, rebuild 2026-03-02", map[string]string{"2026-01-26": straightKnees, "2026-03-02": good}, "rebuild", "rebuild", false, true, "run", ""},
		{"earned further", "activate 2026-01-26, rebuild 2026-03-02", map[string]string{"2026-01-26": straightKnees, "2026-03-02": good, "2026-04-06": good}, "rebuild", "run", false, true, "run", "the next one is earned; it is not set by itself"},
		{"set ahead", "activate 2026-01-26, rebuild 2026-03-02", map[string]string{"2026-01-26": straightKnees}, "rebuild", "activate", true, true, "run", "rebuild's strength was never tested"},
		{"old tests", "activate 2026-01-26, rebuild 2026-02-16", map[string]string{"2026-01-26": straightKnees, "2026-02-16": good}, "rebuild", "rebuild", false, true, "run", "judged on the day it was recorded: seven weeks later it is no step back"},
		{"lost since", "activate 2026-01-26, rebuild 2026-03-02", map[string]string{"2026-01-26": straightKnees, "2026-03-02": good, "2026-04-06": "effusion = \"2+\"\nleft.lacks_extension_deg = 4\n"}, "rebuild", "rebuild", false, true, "run", "a lost criterion suspends impact, not the stage"},
		{"passed over", "rebuild 2026-03-02", map[string]string{"2026-03-02": good}, "rebuild", "rebuild", false, true, "run", "a phase that was passed over is judged on the day of the next"},
		{"of another operation", "run 2025-06-02", nil, "settle", "settle", false, false, "activate", "a stage from before the event is not a stage after it"},
	} {
		t.Run(row.name, func(t *testing.T) {
			s := who{starts: "2026-04-06", stages: row.stages, tests: row.tests, more: setups}.plan(t).Stage
			if s.Set.ID != row.set || s.Earned.ID != row.earned || s.Ahead != row.ahead || s.Recorded != row.record || s.Next.ID != row.next {
				t.Errorf("set %s earned %s ahead %v recorded %v next %s, want %s %s %v %v %s (%s); short %v", s.Set.ID, s.Earned.ID, s.Ahead, s.Recorded, s.Next.ID,
					row.set, row.earned, row.ahead, row.record, row.next, row.why, s.Short)
			}
		})
	}
}

// Rule 16: an any-of is met by one; an only-if-tested within it is no way round the others.
func TestRule16_AnyOf(t *testing.T) {
	any := func(marks string) map[string]string {
		return map[string]string{"programs/phases/activate.toml": "title = \"A\"\naim = \"B.\"\n[[enter]]\nany = [ " + marks + " ]\n" +
			"[[slot]]\nid = \"s\"\nchoose = [\"squat\"]\nreps = 10\n[[session]]\nid = \"a\"\nslots = [\"s\"]\n"}
	}
	two := `{ measure = "flexion", at_least_deg = 120 }, { measure = "flexion.percent-of-other", at_least_percent = 93 }`
	for _, row := range []struct{ name, marks, test, want, why string }{
		{"first", two, "left.flexion_deg = 121\n", "met", "121 is enough; the other knee was not measured"},
		{"second", two, "left.flexion_deg = 118\nright.flexion_deg = 125\n", "met", "94.4 percent"},
		{"neither", two, "left.flexion_deg = 110\nright.flexion_deg = 141\n", "not met", ""},
		{"nothing", two, "", "not tested", ""},
		{"optional is no way round", `{ measure = "hop-single.lsi", at_least_percent = 90, only_if_tested = true }, { measure = "flexion", at_least_deg = 120 }`, "left.flexion_deg = 90\n", "not met", "a hop that nobody did opens nothing"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := who{starts: "2026-04-06", files: any(row.marks), tests: map[string]string{"2026-04-06": row.test}}.plan(t)
			if c := criterion(t, p, "activate.any-1"); string(c.State) != row.want {
				t.Errorf("%s, want %s (%s)", c.State, row.want, row.why)
			}
		})
	}
}

// Rule 17: an activity is opened by the therapist alone, is not closed by an old test, and is suspended by swelling, a lost
// extension, a pause, or an instruction.
func TestRule17_Activities(t *testing.T) {
	good := straightKnees + pull("knee-extension", "[300]", "[325]") + pull("knee-flexion", "[200]", "[220]")
	run := opened("running", "2026-04-06")
	for _, row := range []struct{ name, more, test, on, want, why string }{
		{"everything earned", "", good, "2026-05-04", "closed", "the tool opens nothing"},
		{"opened", run, good, "2026-05-04", "open", ""},
		{"opened, no test since", run, good, "2026-03-02", "open", "a test that has grown old closes nothing"},
		{"opened, no strength earned", run, straightKnees, "2026-05-04", "open", "the therapist decides; what is missing is said"},
		{"opened tomorrow", opened("running", "2026-05-05"), good, "2026-05-04", "closed", ""},
		{"swelling 1+", run, "effusion = \"1+\"\n", "2026-05-04", "suspended", "trace or less for impact"},
		{"pain and extension never looked at", run, "effusion = \"trace\"\n", "2026-05-04", "suspended", "what nobody may waive is looked at first"},
		{"nothing ever looked at", run, "mass_kg = 64\n", "2026-05-04", "suspended", ""},
		{"swelling 2+", run, "effusion = \"2+\"\n", "2026-05-04", "suspended", "and a pause"},
		{"lost extension", run, "left.lacks_extension_deg = 2\n", "2026-05-04", "suspended", ""},
		{"the other knee lacks", run, calm + "left.lacks_extension_deg = 0\nright.lacks_extension_deg = 2\n", "2026-05-04", "open", "not the event's knee"},
		{"surgeon", run + limit("running", "allowed = false", "2026-04-20", "2026-06-01", "surgeon", "Dr Auk", "2026-04-20"), good, "2026-05-04", "suspended", "an instruction"},
		{"surgeon, lifted", run + limit("running", "allowed = false", "2026-04-20", "2026-05-04", "surgeon", "Dr Auk", "2026-04-20"), good, "2026-05-04", "open", "the first day without it"},
		{"of another operation", opened("running", "2025-09-01"), good, "2026-05-04", "closed", "opened before this operation: it opens nothing after it"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := who{starts: "2026-05-04", stages: "rebuild 2026-03-02, run 2026-03-30", more: setups + row.more, tests: map[string]string{row.on: row.test}}.plan(t)
			a := activity(t, p, "running")
			if a.State != row.want {
				t.Errorf("%s, want %s (%s); %s", a.State, row.want, row.why, a.Because)
			}
			runs := slices.ContainsFunc(p.Prescriptions, func(r plan.Prescription) bool { return r.Exercise.Activity == "running" })
			if runs != (row.want == "open") {
				t.Errorf("running is %s, and walk and jog is prescribed: %v", row.want, runs)
			}
			if !runs && chosen(p, "running", unit.Left, 1) != "stationary-cycling" && row.name != "swelling 2+" {
				t.Errorf("the slot's next choice was not taken: %s", chosen(p, "running", unit.Left, 1))
			}
		})
	}
}

// Rule 17: what opens one activity opens no other.
func TestRule17_EachActivityAlone(t *testing.T) {
	p := who{starts: "2026-05-04", stages: "run 2026-03-30", more: opened("running", "2026-04-06"), tests: map[string]string{"2026-05-04": straightKnees}}.plan(t)
	if len(p.Activities) < 3 {
		t.Fatalf("only %d activities", len(p.Activities))
	}
	for _, a := range p.Activities {
		if open := a.State == "open"; open != (a.Activity.ID == "running") {
			t.Errorf("%s is %s", a.Activity.ID, a.State)
		}
	}
}

// Rule 18: a closed activity's date is a "not before", with what is still missing.
func TestRule18_NotBefore(t *testing.T) {
	p := who{starts: "2026-03-02", stages: "rebuild 2026-03-02"}.plan(t)
	found := false
	for _, d := range p.Dates {
		if d.Kind == "not-before" && d.What == "running" {
			found = d.On == day("2026-03-30") && len(d.Missing) > 0
		}
	}
	if !found {
		t.Errorf("running is not before 2026-03-30, with what is missing: %+v", p.Dates)
	}
}
