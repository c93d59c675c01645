package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// Rule 9: tests obey limits too. Of the operated leg a value from inside a forbidding window is not used; a typed reason
// admits it against a shipped limit, against an instruction nothing does. The other leg's value stands.
func TestRule09_TestsObeyLimits(t *testing.T) {
	hop := "[[hop]]\ntest = \"single\"\nleft.distance_cm = [90]\nright.distance_cm = [100]\n"
	isometric := pull("knee-extension", "[331]", "[410]")
	at := func(angle int) string {
		return fmt.Sprintf("[[strength]]\ntest = \"knee-extension\"\nangle_deg = %d\ntared = true\nleft.peak_n = [331]\nright.peak_n = [410]\n", angle)
	}
	isokinetic := "[[strength]]\ntest = \"knee-extension\"\nmode = \"isokinetic\"\nspeed_deg_per_s = 60\nleft.torque_nm = [100]\nright.torque_nm = [130]\n"
	curl := lift("leg-curl-machine", "", "15 kg x 8+2", "20 kg x 8+2")
	why := "reason = \"asked for by the team doctor\"\n"
	noHop := limit("impact", "allowed = false", "2026-01-05", "2026-08-01", "surgeon", "Dr Auk", "2026-01-05")
	noHopByUs := limit("impact", "allowed = false", "2026-01-05", "2026-08-01", "therapist", "Imbali R.", "2026-01-05")
	noForce := limit("maximal-effort", "allowed = false", "2026-01-05", "2026-08-01", "surgeon", "Dr Auk", "2026-01-05")
	press := func(more, set string) string { return lift("leg-press-single", more, set, "70 kg x 8+2") }
	for _, row := range []struct {
		name, on, measure, more, test string
		used                          bool
		why                           string
	}{
		{"hop too early", "2026-03-29", "hop-single.lsi", "", hop, false, "impact is closed up to week 12"},
		{"hop with a reason", "2026-03-29", "hop-single.lsi", "", why + hop, true, "a reason admits it against a shipped limit"},
		{"hop in week 12", "2026-03-30", "hop-single.lsi", "", hop, true, "the limit has lifted"},
		{"hop against a surgeon", "2026-04-20", "hop-single.lsi", noHop, why + hop, false, "against an instruction nothing does"},
		{"hop against a therapist", "2026-04-20", "hop-single.lsi", noHopByUs, why + hop, false, "a therapist's own limit is an instruction too"},
		{"hop before the operation", "2026-01-02", "hop-single.lsi", limit("impact", "allowed = false", "2025-12-01", "", "surgeon", "Dr Auk", "2025-12-01"), hop, true, "a test before the event is not the operated knee's state; it is kept as it is, and not asked about"},
		{"isometric at 90 in week 5", "2026-02-15", "knee-extension.lsi", setups, isometric, false, "day 41 is week 5"},
		{"isometric at 90 in week 6", "2026-02-16", "knee-extension.lsi", setups, isometric, true, "held at 60 to 90 from week 6"},
		{"isometric at 60 in week 6", "2026-02-16", "knee-extension.lsi", setups, at(60), true, "60 belongs to it"},
		{"isometric at 59 in week 6", "2026-02-16", "knee-extension.lsi", setups, at(59), false, "outside 60 to 90"},
		{"isometric at 45 in week 12", "2026-03-30", "knee-extension.lsi", setups, at(45), true, "maximal effort is open"},
		{"isometric in week 6 against a surgeon", "2026-02-16", "knee-extension.lsi", setups + noForce, isometric, false, "an instruction is not passed"},
		{"isometric at 90 where the knee may only bend to 60", "2026-02-16", "knee-extension.lsi", setups + limit("active-bend", "range_deg = [0, 60]", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), isometric, false, "deeper than the active bend that is allowed"},
		{"isokinetic in week 8", "2026-03-02", "knee-extension.lsi", setups, isokinetic, false, "maximal effort through the whole arc"},
		{"isokinetic in week 12", "2026-03-30", "knee-extension.lsi", setups, isokinetic, true, "open"},
		{"curl in week 7", "2026-02-23", "leg-curl-machine.lsi", setups, curl, false, "only active work of the hamstrings before week 8"},
		{"curl in week 8", "2026-03-02", "leg-curl-machine.lsi", setups, curl, true, "resisted work"},
		{"press with 2 in reserve", "2026-03-02", "leg-press-single.lsi", setups, press("", "50 kg x 8+2"), true, "lifts before week 12 keep 2 to 3 in reserve"},
		{"press with 1 in reserve", "2026-03-02", "leg-press-single.lsi", setups, press("", "50 kg x 8+1"), false, "maximal effort before week 12"},
		{"press to failure in week 12", "2026-03-30", "leg-press-single.lsi", setups, press("", "50 kg x 8+0"), true, "open"},
		{"press deeper than allowed", "2026-03-02", "leg-press-single.lsi", setups, press("range_deg = [0, 100]", "50 kg x 8+2"), false, "0 to 90 is allowed"},
		{"press on half the weight", "2026-04-06", "leg-press-single.lsi", setups + limit("weight-bearing", "part_percent = 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), press("", "50 kg x 8+2"), false, "part weight on the leg allows no press, and no test of it"},
		{"hop on half the weight", "2026-04-06", "hop-single.lsi", limit("weight-bearing", "part_percent = 50", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), hop, false, "… nor a hop"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-05-04", stages: "rebuild 2026-03-02", more: row.more, tests: map[string]string{row.on: row.test}}
			p, faults := w.planned(t)
			if p == nil {
				t.Fatal(faults)
			}
			asked := strings.Contains(faults.Error(), "the value is not used")
			if used := !asked; used != row.used {
				t.Errorf("used: %v, want %v (%s)\n%v", used, row.used, row.why, faults)
			}
			m := p.Found.Measure(row.measure)
			if wanted := row.used && !strings.Contains(row.name, "before the operation"); m.OK != wanted {
				t.Errorf("%s is %v, want %v (%s); %s", row.measure, m.OK, wanted, row.why, m.Reason)
			}
			if !row.used && !otherLegHas(p.Found) {
				t.Errorf("the other leg's value is gone too")
			}
		})
	}
}

// otherLegHas reports whether any test kept the value of the right leg.
func otherLegHas(f *finding.Findings) bool {
	for _, s := range f.Strength {
		if s.Right.Force.OK() || s.Right.Torque.OK() {
			return true
		}
	}
	for _, l := range f.Lifts {
		if l.Right.OneRM.OK() {
			return true
		}
	}
	for _, h := range f.Hops {
		if h.Right.Distance.OK() {
			return true
		}
	}
	return false
}

// Rule 9: the tested range of a lift is the limit in force unless the day says otherwise.
func TestRule09_TestedRangeIsTheLimitInForce(t *testing.T) {
	w := who{starts: "2026-03-02", stages: "rebuild 2026-02-16", more: setups, weeks: 1,
		tests: map[string]string{"2026-02-23": straightKnees + lift("leg-press-single", "", "40 kg x 8+2", "70 kg x 8+2")}}
	d := dose(w.plan(t), "leg-press-single", unit.Left, 1)
	if !d.FindYourWeight || !strings.Contains(d.Why.String(), "60") {
		t.Errorf("tested in week 7 at 0 to 60, planned in week 8 at 0 to 90: %+v", d.Why)
	}
	w.starts = "2026-02-23"
	if d := dose(w.plan(t), "leg-press-single", unit.Left, 1); put(d) < 0 || reach(d) != "0-60" {
		t.Errorf("in week 7 itself: %s, %v kg", reach(d), put(d))
	}
}

// Deleting a refused test changes nothing: a refused value is a missing value.
func TestRule09_ARefusedTestIsNoTest(t *testing.T) {
	w := who{starts: "2026-02-16", stages: "rebuild 2026-02-16", more: setups, tests: map[string]string{"2026-02-15": straightKnees + pull("knee-extension", "[331]", "[410]")}}
	if c := criterion(t, w.plan(t), "run.knee-extension.lsi"); c.State != "not tested" || !strings.Contains(c.Reason.String(), "maximal-effort") {
		t.Errorf("%s: %s", c.State, c.Reason)
	}
}

// Rules 9 and 15: what is asked only where it was tested is asked where it was tested and refused: a poor hop from a
// forbidden week does not become "nobody hopped".
func TestRule09_ARefusedTestIsAskedFor(t *testing.T) {
	poor := straightKnees + "[[hop]]\ntest = \"single\"\nleft.distance_cm = [40]\nright.distance_cm = [100]\n"
	for _, row := range []struct {
		name, on, test string
		passed         bool
	}{
		{"nobody hopped", "2026-03-23", straightKnees, true},
		{"said so", "2026-03-23", straightKnees + "[[hop]]\ntest = \"single\"\nleft.not_tested = \"the surgeon's wish\"\n", true},
		{"hopped, and refused", "2026-03-23", poor, false},
		{"hopped poorly", "2026-04-06", poor, false},
	} {
		p := who{starts: "2026-04-06", stages: "rebuild 2026-03-02", tests: map[string]string{row.on: row.test}}.plan(t)
		if c := criterion(t, p, "running.hop-single.lsi"); c.Passed() != row.passed {
			t.Errorf("%s: %s, passed %v", row.name, c.State, c.Passed())
		}
	}
}
