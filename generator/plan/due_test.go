package plan_test

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

// dueKeys are the keys of the form of a day, each with last time's value: "key=last".
func dueKeys(due plan.Due) (keys []string) {
	add := func(prefix string, values []plan.DueValue) {
		for _, v := range values {
			keys = append(keys, prefix+v.Key+"="+v.Last)
		}
	}
	add("", due.Day)
	for _, list := range [][]plan.DueTest{due.Strength, due.Lifts, due.Hops} {
		for _, t := range list {
			add(t.ID+" ", t.Values)
		}
	}
	return keys
}

// The form of a test day speaks the units in which its values were typed last, else the clinic's.
func TestDueInTheUnitsTyped(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.tests["2026-04-07"] = "mass_lb = 171\nright.beyond_straight_deg = 2\n[[strength]]\ntest = \"knee-extension\"\ngauge = \"belt\"\nmode = \"isometric\"\nangle_deg = 90\nleft.arm_cm = 30\nright.arm_cm = 30\n" +
		"left.peak_lbf = [62, 66]\nright.peak_lbf = [98]\n[[strength]]\ntest = \"knee-flexion\"\ngauge = \"belt\"\nmode = \"isokinetic\"\nspeed_deg_per_s = 60\nleft.torque_nm = [60]\nright.torque_nm = [80]\n"
	for _, row := range []struct {
		units string
		want  []string
		why   string
	}{
		{"metric", []string{"mass_lb=171", "knee-extension left.peak_lbf=[62, 66]", "knee-flexion right.torque_nm=[80]", "single left.distance_cm=", "right.beyond_straight_deg=2"}, "what was typed in pounds is shown in pounds"},
		{"imperial", []string{"mass_lb=171", "single left.distance_in="}, "what was never typed is asked in the clinic's units"},
	} {
		w.files["clinic.toml"] = strings.Replace(clinicText, "emergency", "units = \""+row.units+"\"\nemergency", 1)
		p := w.plan(t)
		got := dueKeys(plan.DueTests(p.Clinic, p.Program, p.Client, day("2026-05-04")))
		for _, want := range row.want {
			if !slices.Contains(got, want) {
				t.Errorf("%s: no %q (%s) in\n%s", row.units, want, row.why, strings.Join(got, "\n"))
			}
		}
	}
}

// Rule 25: whoever types a lift with both legs is asked for each leg alone too, for without it there is no load.
func TestRule25_DueAsksEachLegAlone(t *testing.T) {
	w := pressed("leg-press-both", "", "", "")
	w.files = own(`"leg-press-both"`)
	w.tests = map[string]string{"2026-04-06": straightKnees + "[[lift]]\nexercise = \"leg-press-both\"\nboth = \"100 kg x 8+2\"\n"}
	p := w.plan(t)
	got := dueKeys(plan.DueTests(p.Clinic, p.Program, p.Client, day("2026-05-04")))
	for _, want := range []string{"leg-press-both both=\"100 kg x 8+2\"", "leg-press-single left=", "leg-press-single right="} {
		if !slices.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, strings.Join(got, "\n"))
		}
	}
}

// Rule 30: what was done before a pause was called was asked for by the page of then; what was done after it was not.
func TestRule30_LoggedBeforeAPause(t *testing.T) {
	for _, row := range []struct {
		name, hold string
		asked      int
		why        string
	}{
		{"no pause", "", 0, "all was asked"},
		{"a pause after both days", "2026-04-16", 0, "the page in force had the press on it"},
		{"a pause between them", "2026-04-14", 1, "the second day's sets were done in a pause"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.files["clients/tern-04/logs/2026-04-17.json"] = logOf("2026-04-13 left 50 10,10,10 2", "2026-04-15 left 50 10,10,10 2")
		if row.hold != "" {
			for name, text := range held(row.hold, "swelling") {
				w.files[name] = text
			}
		}
		_, faults := w.planned(t)
		if got := strings.Count(faults.Error(), "was not asked for on"); got != row.asked {
			t.Errorf("%s: %d lines were not asked for, want %d (%s): %s", row.name, got, row.asked, row.why, faults)
		}
	}
}
