package plan_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// loads are what is put on in the weeks of a block; "find" where the weight is to be found, "-" where it is not prescribed.
func loads(p *plan.Plan, exercise string, side unit.Side) string {
	var list []string
	for _, w := range p.Weeks {
		switch d := dose(p, exercise, side, w.Number); {
		case d == nil:
			list = append(list, "-")
		case d.FindYourWeight:
			list = append(list, "find")
		default:
			list = append(list, fmt.Sprintf("%g", put(d)))
		}
	}
	return strings.Join(list, " ")
}

// pressed is a client of week 16 and on, where no limit is left, with one day of lifts on that morning.
func pressed(exercise, left, right, more string) who {
	return who{date: "2025-10-06", starts: "2026-04-06", weeks: 6, more: setups + more, files: own(`"` + exercise + `"`),
		tests: map[string]string{"2026-04-06": straightKnees + lift(exercise, "range_deg = [0, 90]", left, right)}}
}

// Rules 19 to 22: the worked case of two legs on one press, with all its ceilings.
func TestRule21_WorkedCase(t *testing.T) {
	p := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "").plan(t)
	for _, row := range []struct {
		side               unit.Side
		loads              string
		max, share, spared float64
	}{
		{unit.Left, "52.5 55 55 57.5 57.5 60", 76, 69.07894736842105, 3.4285714285714306},
		{unit.Right, "80 82.5 85 87.5 87.5 90", 114, 70.17543859649123, 2.75},
	} {
		if got := loads(p, "leg-press-single", row.side); got != row.loads {
			t.Errorf("%s: %s, want %s", row.side, got, row.loads)
		}
		d := dose(p, "leg-press-single", row.side, 1)
		if !d.Due || dose(p, "leg-press-single", row.side, 2).Due {
			t.Errorf("%s: only week 1 is due", row.side)
		}
		if got := float64(d.Share.Or(0)); fmt.Sprintf("%.6f", got) != fmt.Sprintf("%.6f", row.share) {
			t.Errorf("%s: true share %v, want %v", row.side, got, row.share)
		}
		if got := float64(d.Implied.Or(0)); fmt.Sprintf("%.6f", got) != fmt.Sprintf("%.6f", row.spared) {
			t.Errorf("%s: implied reserve %v, want %v", row.side, got, row.spared)
		}
	}
	if m := p.Found.Measure("leg-press-single.lsi"); m.Number != 66.6 {
		t.Errorf("ratio %v, want 66.6: cut down, not rounded to 66.7", m.Number)
	}
}

// Rule 19: the same press with its carriage of 45 kg counted: formulas use what is moved, the client reads what to put on.
func TestRule19_CarriageIsMoved(t *testing.T) {
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.place = "heavy"
	w.more = "[setup.leg-press-single]\ndevice = \"big-press\"\n"
	p := w.plan(t)
	for side, want := range map[unit.Side]string{unit.Left: "50 50 52.5 55 57.5 60", unit.Right: "75 80 82.5 85 87.5 92.5"} {
		if got := loads(p, "leg-press-single", side); got != want {
			t.Errorf("%s: %s, want %s", side, got, want)
		}
	}
	d := dose(p, "leg-press-single", unit.Left, 1)
	if d.Moved.Or(0) != 95 {
		t.Errorf("moved %v, want 95", d.Moved.Or(0))
	}
	if want := []unit.Kilograms{20, 5}; !slices.Equal(d.PerSide, want) {
		t.Errorf("a side %v, want %v", d.PerSide, want)
	}
	if m := p.Found.Measure("leg-press-single.lsi"); m.Number != 77.7 {
		t.Errorf("ratio %v, want 77.7", m.Number)
	}
}

// Rule 19: what was moved may be typed instead of what was put on.
func TestRule19_MovedMayBeTyped(t *testing.T) {
	w := pressed("leg-press-single", "", "", "")
	w.place = "heavy"
	w.more = "[setup.leg-press-single]\ndevice = \"big-press\"\n"
	w.tests["2026-04-06"] = straightKnees + "[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft.moved_kg = 105\nleft.reps = 8\nleft.reserve = 0\nright.moved_kg = 135\nright.reps = 8\nright.reserve = 0\n"
	if got := loads(w.plan(t), "leg-press-single", unit.Left); got != "50 50 52.5 55 57.5 60" {
		t.Errorf("%s", got)
	}
}

// Rule 19: a cable of ratio 2: half the stack is felt; the client reads the pin.
func TestRule19_Cable(t *testing.T) {
	cable := "title = \"Pull\"\ndescribe = \"Pull.\"\ntrains = [\"hamstrings\"]\nkinds = []\nneeds = [\"cable\"]\nside = \"one\"\ncontraction = [\"concentric\"]\nresisted_by = \"external\"\nstanding = \"common practice\"\n"
	w := pressed("pull", "20 kg x 8+0", "40 kg x 8+0", "[setup.pull]\ndevice = \"pulley\"\n")
	w.place, w.files["programs/exercises/pull.toml"] = "cables", cable
	w.more = "[setup.pull]\ndevice = \"pulley\"\n"
	p := w.plan(t)
	d := dose(p, "pull", unit.Left, 1)
	if d == nil {
		t.Fatal(because(p, "pull", 1))
	}
	// felt 10, maximum 12.667, working load 9.048 felt, 18.095 pinned, cut to 17.5
	if put(d) != 17.5 || d.Moved.Or(0) != 8.75 {
		t.Errorf("pinned %v, felt %v, want 17.5 and 8.75", put(d), d.Moved.Or(0))
	}
}

// Rule 21: a stack with a lightest pin and an add-on weight, cut down to what can be set.
func TestRule21_StackWithAddOn(t *testing.T) {
	for _, row := range []struct {
		set  string
		want string
		why  string
	}{
		{"20 kg x 8+0", "16.25", "18.095: 15 and the add-on of 1.25 is 16.25; 20 would be too much"},
		{"21.25 kg x 8+0", "16.25", "19.2 still"},
		{"16.25 kg x 10+0", "15", "15.48: 16.25 would be too much"},
		{"10 kg x 8+0", "6.25", "9.05: 5 and 1.25"},
		{"6.25 kg x 7+0", "5", "5.51: the lightest pin"},
		{"5 kg x 8+0", "-", "4.52 lies under the lightest pin: the slot's next choice"},
		{"40 kg x 15+0", "40", "42.9: the stack ends at 40"},
	} {
		w := pressed("knee-extension-machine", row.set, "60 kg x 8+0", "")
		w.weeks = 1
		w.files = own(`"knee-extension-machine", "knee-extension-no-added-weight"`)
		p := w.plan(t)
		if got := loads(p, "knee-extension-machine", unit.Left); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.set, got, row.want, row.why)
		}
		if row.want == "-" && (chosen(p, "slot-1", unit.Left, 1) != "knee-extension-no-added-weight" || !strings.Contains(because(p, "knee-extension-machine", 1), "lightest")) {
			t.Errorf("under the pin: %s, because %q", chosen(p, "slot-1", unit.Left, 1), because(p, "knee-extension-machine", 1))
		}
	}
}

// Rule 21: nothing to put on is no load: a press of plates alone cannot be set to 0 kg, one with a carriage can.
func TestRule21_NothingToPutOn(t *testing.T) {
	w := pressed("leg-press-single", "2.5 kg x 8+0", "90 kg x 8+0", "")
	if got := loads(w.plan(t), "leg-press-single", unit.Left); got != "- - - - - -" {
		t.Errorf("plates alone: %s; 2.26 cannot be put on, and what is not done earns no growth", got)
	}
	w.place = "heavy"
	w.more = "[setup.leg-press-single]\ndevice = \"big-press\"\n"
	w.tests["2026-04-06"] = straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "moved 51 kg x 8+0", "90 kg x 8+0")
	if got := loads(w.plan(t), "leg-press-single", unit.Left); !strings.HasPrefix(got, "0 ") {
		t.Errorf("51 moved is 46.1 worked: the carriage alone, 0 to put on: %s", got)
	}
	w.tests["2026-04-06"] = straightKnees + lift("leg-press-single", "range_deg = [0, 90]", "moved 46 kg x 8+0", "90 kg x 8+0")
	if got := loads(w.plan(t), "leg-press-single", unit.Left); !strings.HasPrefix(got, "- ") {
		t.Errorf("46 moved is 41.6 worked: the empty machine is too heavy: %s", got)
	}
}

// Rule 20: refused above 15 repetitions to failure, doubted above 10.
func TestRule20_ManyRepetitions(t *testing.T) {
	for _, row := range []struct {
		set     string
		load    bool
		doubted bool
	}{{"60 kg x 10+0", true, false}, {"60 kg x 10+1", true, true}, {"60 kg x 12+3", true, true}, {"60 kg x 15+1", false, true}} {
		p := pressed("leg-press-single", row.set, "90 kg x 8+0", "").plan(t)
		if got := put(dose(p, "leg-press-single", unit.Left, 1)) > 0; got != row.load {
			t.Errorf("%s: a load %v", row.set, got)
		}
		doubted := false
		for _, f := range p.Flags {
			doubted = doubted || f.ID == "many-reps"
		}
		if doubted != row.doubted {
			t.Errorf("%s: doubted %v", row.set, doubted)
		}
	}
}

// Rule 20: a flag where the plan lies more than 4 repetitions from the tested zone. The plan is 10 with 2 in reserve: 12.
func TestRule20_FarFromTested(t *testing.T) {
	for set, want := range map[string]bool{"60 kg x 8+0": false, "60 kg x 7+0": true, "60 kg x 5+3": false, "60 kg x 5+2": true} {
		got := false
		for _, f := range pressed("leg-press-single", set, "90 kg x 8+0", "").plan(t).Flags {
			got = got || f.ID == "far-from-tested" && f.About == "leg-press-single.left"
		}
		if got != want {
			t.Errorf("%s: flag %v", set, got)
		}
	}
}

// Rules 20 and 24: find your weight, in all its causes. Nothing carries across legs, ranges, machines or exercises.
func TestRule24_FindYourWeight(t *testing.T) {
	good := lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0")
	for _, row := range []struct{ name, test, more, place, because, why string }{
		{"never lifted", "", "", "", "no lift", ""},
		{"another exercise", strings.Replace(good, "leg-press-single", "squat", 1), "", "", "no lift", "a squat says nothing of a press"},
		{"another machine", strings.Replace(good, "range_deg", "place = \"heavy\"\ndevice = \"big-press\"\nrange_deg", 1), "", "", "no lift", "loads never carry across machines"},
		{"this leg not tested", lift("leg-press-single", "range_deg = [0, 90]", "", "90 kg x 8+0"), "", "", "not tested", "the other leg's lift says nothing of this one"},
		{"not tested, with a reason", "[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft.not_tested = \"swollen\"\nright = \"90 kg x 8+0\"\n", "", "", "swollen", "the reason is kept"},
		{"stopped for pain", "[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft.stopped_for_pain = true\nright = \"90 kg x 8+0\"\n", "", "", "stopped for pain", ""},
		{"deeper than tested", lift("leg-press-single", "range_deg = [0, 70]", "60 kg x 8+0", "90 kg x 8+0"), "", "", "deeper", "work deeper than tested"},
		{"too many repetitions", lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 16+0", "90 kg x 8+0"), "", "", "more than 15", "no estimate"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pressed("leg-press-single", "", "", "")
			w.tests["2026-04-06"] = straightKnees + row.test
			p := w.plan(t)
			d := dose(p, "leg-press-single", unit.Left, 1)
			if d == nil || !d.FindYourWeight || d.Plates.OK() || !strings.Contains(d.Why.String(), row.because) {
				t.Errorf("%s: %+v", row.why, d)
			}
		})
	}
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.tests["2025-09-29"], w.tests["2026-04-06"] = w.tests["2026-04-06"], straightKnees
	if got := loads(w.plan(t), "leg-press-single", unit.Left); !strings.HasPrefix(got, "find") {
		t.Errorf("a lift from before the operation makes a load: %s", got)
	}
}

// Rule 20, straight end: an extension machine that was tested from 45 says nothing of the last degrees.
func TestRule24_StraighterThanTested(t *testing.T) {
	w := pressed("knee-extension-machine", "", "", "")
	w.tests["2026-04-06"] = straightKnees + lift("knee-extension-machine", "range_deg = [45, 90]", "30 kg x 8+0", "40 kg x 8+0")
	if d := dose(w.plan(t), "knee-extension-machine", unit.Left, 1); !d.FindYourWeight || !strings.Contains(d.Why.String(), "straighter") {
		t.Errorf("%+v", d)
	}
}

// The other leg is kept in the range in which its lift was tested: both legs are worked alike.
func TestRule20_TheTestedRangeIsKept(t *testing.T) {
	w := pressed("leg-press-single", "", "", limit("loaded-bend", "range_deg = [0, 70]", "2026-03-02", "", "surgeon", "Dr Auk", "2026-03-02"))
	w.tests["2026-04-06"] = straightKnees + lift("leg-press-single", "", "60 kg x 8+0", "90 kg x 8+0")
	p := w.plan(t)
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		if d := dose(p, "leg-press-single", side, 1); reach(d) != "0-70" || put(d) < 0 {
			t.Errorf("%s: %s, %v", side, reach(d), put(d))
		}
	}
}

// Rule 25: both legs together carry at most twice the weaker leg's own until the legs are even.
func TestRule25_BothLegs(t *testing.T) {
	both := func(set string) string {
		return "[[lift]]\nexercise = \"leg-press-both\"\nrange_deg = [0, 90]\nboth = \"" + set + "\"\n"
	}
	for _, row := range []struct {
		name, test, want, why string
	}{
		{"capped", both("140 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0"), "107.5", "twice 76 is 152, under its own 177.3: 108.57"},
		{"own is less", both("100 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0"), "90", "126.7 is under 152: 90.48"},
		{"even legs", both("140 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "moved 54 kg x 8+0", "60 kg x 8+0"), "125", "ratio 90: its own 177.3 stands: 126.67"},
		{"a hair under", both("140 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "moved 53.9 kg x 8+0", "60 kg x 8+0"), "97.5", "89.8: twice 68.27 is 136.5: 97.53"},
		{"the other leg is the weaker", both("140 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "90 kg x 8+0", "60 kg x 8+0"), "107.5", "150 %: the weaker leg caps, whichever it is"},
		{"no own test", lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0"), "find", "no load without a lift of that exercise"},
		{"no test of each leg", both("140 kg x 8+0"), "find", "the strong leg would do the work"},
		{"one leg untested", both("140 kg x 8+0") + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", ""), "find", "likewise"},
		{"deeper than tested", strings.Replace(both("140 kg x 8+0"), "90]", "70]", 1) + lift("leg-press-single", "range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0"), "find", ""},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pressed("leg-press-both", "", "", "")
			w.weeks, w.tests["2026-04-06"] = 1, straightKnees+row.test
			if got := loads(w.plan(t), "leg-press-both", unit.Both); got != row.want {
				t.Errorf("%s, want %s (%s)", got, row.want, row.why)
			}
		})
	}
}

func override(more string) string {
	return "[[override]]\nexercise = \"leg-press-single\"\n" + more + "\n"
}

// Overrides change sets, repetitions, range and load of a leg; a load is never above what was computed unless it is the
// surgeon's, and it is what the machine can be set to.
func TestRule06_OverridesNeverLoosen(t *testing.T) {
	for _, row := range []struct{ name, block, loads, reach, why string }{
		{"less", override("side = \"left\"\nplates_kg = 40\nreason = \"wish\""), "40 40 40 40 40 40", "0-90", ""},
		{"more", override("side = \"left\"\nplates_kg = 80\nreason = \"wish\""), "52.5 55 55 57.5 57.5 60", "0-90", "never above what was computed"},
		{"more by the surgeon", override("side = \"left\"\nplates_kg = 70\nreason = \"surgeon: asked for it\""), "70 70 70 70 70 70", "0-90", "his word, below the estimated maximum of 76"},
		{"between the steps", override("side = \"left\"\nplates_kg = 41\nreason = \"wish\""), "40 40 40 40 40 40", "0-90", "cut to the step like every load"},
		{"the other leg", override("side = \"right\"\nplates_kg = 40\nreason = \"wish\""), "52.5 55 55 57.5 57.5 60", "0-90", "it names the other leg"},
		{"tighter range", override("side = \"left\"\nrange_deg = [0, 50]\nreason = \"pain\""), "52.5 55 55 57.5 57.5 60", "0-50", ""},
		{"wider range", override("side = \"left\"\nrange_deg = [-10, 120]\nreason = \"wish\""), "52.5 55 55 57.5 57.5 60", "0-90", "may only tighten"},
		{"nothing in common", override("side = \"left\"\nrange_deg = [100, 120]\nreason = \"wish\""), "- - - - - -", "not prescribed", ""},
		{"left out", override("side = \"left\"\nleave_out = true\nreason = \"pain\""), "- - - - - -", "not prescribed", ""},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
			w.block = row.block
			p := w.plan(t)
			if got := loads(p, "leg-press-single", unit.Left); got != row.loads {
				t.Errorf("%s, want %s (%s)", got, row.loads, row.why)
			}
			if got := reach(dose(p, "leg-press-single", unit.Left, 1)); got != row.reach {
				t.Errorf("%s, want %s (%s)", got, row.reach, row.why)
			}
			if len(p.Overrides) != 1 || !p.Overrides[0].Applied && row.name != "wider range" {
				t.Errorf("what was overridden is not told: %+v", p.Overrides)
			}
			if shared := page.SharedIDs(p); len(shared) > 0 {
				t.Errorf("ids that mean two numbers: %v", shared)
			}
		})
	}
	w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
	w.block = override("side = \"left\"\nsets = 2\nreps = 8\nreason = \"travel\"")
	if d := dose(w.plan(t), "leg-press-single", unit.Left, 1); *d.Dose.Sets != 2 || *d.Dose.Reps != 8 || put(d) != 55 {
		t.Errorf("2 sets of 8 with 2 in reserve, 57 cut to 55: %d × %d, %v", *d.Dose.Sets, *d.Dose.Reps, put(d))
	}
}

// Nothing carries across machines, and one id means one number, though two places call a machine by one name.
func TestRule24_TwoMachinesOfOneName(t *testing.T) {
	w := pressed("leg-curl-machine", "", "", "[[away]]\nfrom = 2026-04-20\nuntil = 2026-04-26\nplace = \"second\"\n")
	w.weeks = 4
	w.files["clinic.toml"] = clinicText + "[[place]]\nid = \"second\"\n[[place.device]]\nid = \"curl\"\nkind = \"leg-curl-stack\"\nlightest_kg = 4\nstep_kg = 4\n"
	w.tests["2026-04-06"] = straightKnees + lift("leg-curl-machine", "range_deg = [0, 90]", "20 kg x 8+0", "30 kg x 8+0")
	w.tests["2026-04-05"] = straightKnees + lift("leg-curl-machine", "place = \"second\"\nrange_deg = [0, 90]", "28 kg x 8+0", "36 kg x 8+0")
	p := w.plan(t)
	var left []string
	for _, r := range p.Prescriptions {
		if r.Side == unit.Left {
			for i := range r.Weeks {
				left = append(left, fmt.Sprintf("week %d %g", r.Weeks[i].Week, put(&r.Weeks[i])))
			}
		}
	}
	slices.Sort(left)
	if want := []string{"week 1 15", "week 2 15", "week 3 24", "week 4 15"}; !slices.Equal(left, want) {
		t.Errorf("%v, want %v", left, want)
	}
	if shared := page.SharedIDs(p); len(shared) > 0 {
		t.Errorf("ids that mean two numbers: %v", shared)
	}
}

// Rule 11: tests are typed left and right; the plan says operated and other, donor, or both.
func TestRule11_RolesOfTheLegs(t *testing.T) {
	for _, row := range []struct{ side, other, left, right string }{
		{"left", "sound", "operated", "other"}, {"right", "sound", "other", "operated"}, {"left", "donor", "operated", "donor"}, {"left", "operated-too", "operated", "other"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.side, w.other, w.files = row.side, row.other, own(`"leg-press-single"`, `"squat"`)
		seen := map[unit.Side]bool{}
		for _, r := range w.plan(t).Prescriptions {
			seen[r.Side] = true
			if want := map[unit.Side]string{unit.Left: row.left, unit.Right: row.right, unit.Both: "both"}[r.Side]; r.Role != want {
				t.Errorf("%s operated, other %s: the %s leg is %s, want %s", row.side, row.other, r.Side, r.Role, want)
			}
		}
		if !seen[unit.Left] || !seen[unit.Right] {
			t.Errorf("%s operated, other %s: only %v have a box", row.side, row.other, seen)
		}
	}
}

// Rule 21: what a device can be set to: plates in pairs or one by one, a rack of dumbbells that ends somewhere.
func TestRule21_Devices(t *testing.T) {
	hold := "title = \"Hold\"\ndescribe = \"Hold.\"\ntrains = [\"quadriceps\"]\nkinds = []\nneeds = [\"dumbbell\"]\nside = \"one\"\ncontraction = [\"concentric\"]\nresisted_by = \"external\"\nstanding = \"common practice\"\n"
	for _, row := range []struct{ device, set, want, side, why string }{
		{"plates_kg = [10, 5, 2.5]", "40 kg x 8+0", "35", "[10 5 2.5]", "36.19: in pairs of 2.5, 17.5 a side"},
		{"plates_kg = [10, 5, 2.5]\nsingle = true", "40 kg x 8+0", "35", "[]", "one by one, in steps of 2.5; 36.19 is cut to 35"},
		{"plates_kg = [10, 5, 1]\nsingle = true", "40 kg x 8+0", "36", "[]", "in steps of 1"},
		{"bar_kg = 20\nplates_kg = [10, 5, 1.25]", "40 kg x 8+0", "32.5", "[10 5 1.25]", "60 moved: 54.29 worked, 34.29 put on, cut to 32.5"},
		{"step_kg = 2", "40 kg x 8+0", "36", "[]", "a rack in steps of 2"},
		{"step_kg = 2\nheaviest_kg = 25", "24 kg x 15+0", "24", "[]", "25.7: the rack ends at 25"},
		{"step_kg = 2\nlightest_kg = 1\nheaviest_kg = 25", "25 kg x 15+0", "25", "[]", "26.8: 1, 3, … 25"},
		{"lightest_kg = 1", "40 kg x 8+0", "find", "[]", "without a step nothing can be set"},
	} {
		w := pressed("hold", row.set, "60 kg x 8+0", "")
		w.weeks, w.place, w.more = 1, "rack", "[setup.hold]\ndevice = \"bells\"\n"
		w.files["programs/exercises/hold.toml"] = hold
		w.files["clinic.toml"] = clinicText + "[[place]]\nid = \"rack\"\n[[place.device]]\nid = \"bells\"\nkind = \"dumbbell\"\n" + row.device + "\n"
		p := w.plan(t)
		if got := loads(p, "hold", unit.Left); got != row.want {
			t.Errorf("%q: %s, want %s (%s)", row.device, got, row.want, row.why)
		}
		if d := dose(p, "hold", unit.Left, 1); d != nil && fmt.Sprint(d.PerSide) != row.side {
			t.Errorf("%q: a side %v, want %s", row.device, d.PerSide, row.side)
		}
	}
}
