package finding_test

import (
	"fmt"
	"strings"
	"testing"
)

// Every kind of test, from the file to its measure. Expected values are those worked in the evidence (measurement.md, marked
// C there), or worked by hand where it says so.
func TestEveryKindOfTest(t *testing.T) {
	for _, row := range []struct {
		name, top, setup, day string
		measure, want         string // "" is: not there or not tested
		why                   string
	}{
		{"hop for height", "height_cm = 168", "", "[[hop]]\ntest = \"single\"\nleft.distance_cm = [150, 152]\nright.distance_cm = [152]",
			"hop-single.percent-of-height", "90.4 %", "152 of 168 cm is 90.48, cut down"},
		{"hop without a height", "", "", "[[hop]]\ntest = \"single\"\nleft.distance_cm = [152]\nright.distance_cm = [152]", "hop-single.percent-of-height", "", "no height, no share of it"},
		{"triple hop has none", "height_cm = 168", "", "[[hop]]\ntest = \"triple\"\nleft.distance_cm = [452]\nright.distance_cm = [480]", "hop-triple.percent-of-height", "", "the mark is of a single hop"},
		{"side hop", "", "", "[[hop]]\ntest = \"side\"\nleft.count = [36]\nright.count = [40]", "hop-side.lsi", "90 %", "by hand"},
		{"vertical hop", "", "", "[[hop]]\ntest = \"vertical\"\nleft.distance_cm = [18]\nright.distance_cm = [24]", "hop-vertical.lsi", "75 %", "by hand"},
		{"mean of two hops", "", "", "[[hop]]\ntest = \"single\"\ntrial = \"mean\"\nleft.distance_cm = [90, 100]\nright.distance_cm = [100, 100]", "hop-single.lsi", "95 %", "by hand; the best would be 100"},
		{"timed, mean", "", "", "[[hop]]\ntest = \"timed-6m\"\ntrial = \"mean\"\nleft.time_s = [2.0, 2.2]\nright.time_s = [1.92]", "hop-timed-6m.lsi", "91.4 %", "1.92 over 2.10 is 91.43"},
		{"rise", "", "", "[single_leg_rise]\nleft.seat_cm = 40\nright.seat_cm = 20", "single-leg-rise.lsi", "75 %", "60 over 80 by hand: seats are turned round before the ratio"},
		{"y-balance", "", "[setup.y-balance]\nleft.leg_cm = 88\nright.leg_cm = 88\n", ybalance("58", "101", "95"), "y-balance.composite", "96.2 %", "58, 101, 95 of a leg of 88: 96.21"},
		{"y-balance in front", "", "[setup.y-balance]\nleft.leg_cm = 88\n", ybalance("58", "101", "95"), "y-balance.anterior-difference", "0.04 m", "62 less 58"},
		{"y-balance without a leg", "", "", ybalance("58", "101", "95"), "y-balance.composite", "", "no length, no composite"},
		{"acl-rsi by answers", "", "", "[[questionnaire]]\nid = \"acl-rsi\"\nitems = [70, 60, 80, 50, 60, 70, 80, 90, 60, 50, 70, 60]", "acl-rsi", "66.6667", "mean of 12"},
		{"koos with two missing", "", "", "[[questionnaire]]\nid = \"koos-pain\"\nitems = [1, 0, 2, \"-\", 1, \"-\", 1, 0, 1]", "koos-pain", "78.5714", "5 of 9 are enough"},
		{"koos with five missing", "", "", "[[questionnaire]]\nid = \"koos-pain\"\nitems = [1, 0, 2, \"-\", \"-\", \"-\", \"-\", \"-\", 1]", "koos-pain", "", "4 answered: none"},
		{"acl-rsi with one missing", "", "", "[[questionnaire]]\nid = \"acl-rsi-short\"\nitems = [70, 60, 50, \"-\", 80, 70]", "acl-rsi-short", "", "no rule for it was found"},
		{"hamstrings to quadriceps", "", both, "mass_kg = 62\n" + forces("knee-extension", "300", "400") + forces("knee-flexion", "150", "240"), "hamstrings-to-quadriceps.percent", "50 %", "by hand, left is operated"},
		{"measured at another angle", "", both, "mass_kg = 62\n" + forces("knee-extension", "300", "400") + forces("knee-flexion", "150", "240") + "angle_deg = 90\nmode = \"isokinetic\"\n", "hamstrings-to-quadriceps.percent", "", "another mode"},
		{"Winter", "", sixty, "mass_kg = 62\n" + forces("knee-extension", "420", "420"), "knee-extension.nm-per-kg", "2.30617 N·m/kg", "measurement.md 2, 60°"},
		{"de Leva", "sex = \"female\"", strings.Replace(sixty, "tared", "model = \"de-leva\"\ntared", 1), "mass_kg = 62\n" + forces("knee-extension", "420", "420"), "knee-extension.nm-per-kg", "2.3033 N·m/kg", "measurement.md 2, 142.8047 N·m"},
		{"weighed", "", sixty + "weighed_at_deg = 60\nleft.limb_weight_n = 10\nright.limb_weight_n = 10\n", "mass_kg = 62\n" + forces("knee-extension", "420", "420"), "knee-extension.nm-per-kg", "2.28871 N·m/kg",
			"by hand: (420 + 10) × 0.33 ÷ 62, weighed at the angle of the test"},
		{"one leg weighed", "", sixty + "weighed_at_deg = 60\nright.limb_weight_n = 10\n", "mass_kg = 62\n" + forces("knee-extension", "420", "420"), "knee-extension.nm-per-kg", "", "torques would not be alike"},
	} {
		t.Run(row.name, func(t *testing.T) {
			f := person{top: row.top, setup: row.setup, tests: map[string]string{"2026-06-01": row.day}}.findings(t, "2026-06-08")
			got := ""
			if m := f.Measure(row.measure); m.OK {
				got = strings.TrimSpace(fmt.Sprintf("%.6g %s", m.Number, m.Unit))
			}
			if got != row.want {
				t.Errorf("%s is %q (%s), want %q (%s)", row.measure, got, f.Measure(row.measure).Reason, row.want, row.why)
			}
		})
	}
}

const (
	both  = "[setup.knee-extension]\ngauge = \"belt\"\nangle_deg = 90\nleft.arm_cm = 33\nright.arm_cm = 33\n[setup.knee-flexion]\ngauge = \"belt\"\nangle_deg = 90\nleft.arm_cm = 33\nright.arm_cm = 33\n"
	sixty = "[setup.knee-extension]\ngauge = \"belt\"\nangle_deg = 60\nshank_cm = 39\ntared = false\nleft.arm_cm = 33\nright.arm_cm = 33\n"
)

func forces(test, left, right string) string {
	return fmt.Sprintf("[[strength]]\ntest = %q\nleft.peak_n = [%s]\nright.peak_n = [%s]\n", test, left, right)
}

func ybalance(ant, pm, pl string) string {
	return fmt.Sprintf("[y_balance]\nleft.anterior_cm = [%s]\nleft.posteromedial_cm = [%s]\nleft.posterolateral_cm = [%s]\nright.anterior_cm = [62]\nright.posteromedial_cm = [104]\nright.posterolateral_cm = [98]\n", ant, pm, pl)
}

// A difference of 4 cm is not above 4 cm; of healthy people many are above it, so it is a flag and doubts nothing.
func TestReachIsFlaggedAbove4cm(t *testing.T) {
	for front, flags := range map[string]int{"58": 0, "57.9": 1} {
		f := person{tests: map[string]string{"2026-06-01": ybalance(front, "101", "95")}}.findings(t, "2026-06-08")
		if len(f.Flags) != flags || len(f.Doubts) != 0 {
			t.Errorf("62 and %s: %d flags, %d doubts; want %d and none", front, len(f.Flags), len(f.Doubts), flags)
		}
	}
}

// Two values under other conditions are never held against each other, and it is said what differs.
func TestApart(t *testing.T) {
	setup := "[setup.knee-extension]\ngauge = \"belt\"\nangle_deg = 90\nleft.arm_cm = 31\nright.arm_cm = 31\n"
	for _, row := range []struct{ name, then, want string }{
		{"nothing", "", ""},
		{"gauge", "gauge = \"averaging\"\n", "another gauge (averaging, then belt)"},
		{"angle", "angle_deg = 60\ntared = true\n", "another angle (60°, then 90°)"},
		{"mode", "mode = \"isokinetic\"\nspeed_deg_per_s = 60\n", "another mode (isokinetic, then isometric)"},
		{"lever", "left.arm_cm = 28\n", "another lever (0.28 m, then 0.31 m)"},
		{"a tape's width", "left.arm_cm = 30.5\n", ""},
	} {
		f := person{setup: setup, tests: map[string]string{
			"2026-05-01": forces("knee-extension", "300", "400") + row.then,
			"2026-06-01": forces("knee-extension", "320", "400"),
		}}.findings(t, "2026-06-08")
		h := f.History["knee-extension.lsi"]
		if len(h) != 2 {
			t.Fatalf("%s: %d values", row.name, len(h))
		}
		if got := h[0].Alike.Apart(h[1].Alike); got.String() != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// Hops far apart ask for one more trial and keep their value; a later test takes the flag away.
func TestHopsFarApartAreFlagged(t *testing.T) {
	far := "[[hop]]\ntest = \"single\"\nleft.distance_cm = [90, 130]\nright.distance_cm = [140, 141]\n"
	near := strings.Replace(far, "90, 130", "128, 130", 1)
	for name, row := range map[string]struct {
		tests map[string]string
		flags int
	}{
		"far":        {map[string]string{"2026-06-01": far}, 1},
		"near":       {map[string]string{"2026-06-01": near}, 0},
		"near after": {map[string]string{"2026-05-01": far, "2026-06-01": near}, 0},
	} {
		f := person{tests: row.tests}.findings(t, "2026-06-08")
		if m := f.Measure("hop-single.lsi"); len(f.Flags) != row.flags || len(m.Doubts) != 0 || !m.OK {
			t.Errorf("%s: %d flags, doubts %v, want %d and none", name, len(f.Flags), m.Doubts, row.flags)
		}
	}
}
