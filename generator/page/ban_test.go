package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Of two limits of straightening where one includes the other, the page names the one that includes; both where the wider
// one is over before the other while the page is in use.
func TestABanThatIncludesAnother(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	starts := h.Block.Starts
	end := starts.AddWeeks(h.Block.Weeks)
	no := false
	straightening := func(lifts unit.Day) plan.Window {
		return plan.Window{Kind: unit.StraighteningUnderLoad, Allow: unit.Allowance{Allowed: &no}, From: starts, Lifts: lifts, SetBy: "program", Wins: true}
	}
	weight := func(on []unit.Kind, lifts unit.Day) plan.Window {
		return plan.Window{Kind: unit.AddedWeight, On: on, Allow: unit.Allowance{Allowed: &no}, From: starts, Lifts: lifts, SetBy: "program", Wins: true}
	}
	withIt := []unit.Kind{unit.StraighteningUnderLoad}
	other := func(w plan.Window) plan.Window { w.Side = h.side().Opposite(); return w }
	for _, row := range []struct {
		name   string
		limits []plan.Window
		want   []unit.Kind
		why    string
	}{
		{"all of the page", []plan.Window{straightening(end), weight(withIt, end.AddWeeks(8))}, []unit.Kind{unit.StraighteningUnderLoad}, "nothing is straightened against a load"},
		{"the other order", []plan.Window{weight(withIt, end.AddWeeks(8)), straightening(end)}, []unit.Kind{unit.StraighteningUnderLoad}, ""},
		{"until further notice", []plan.Window{straightening(unit.Day{}), weight(withIt, unit.Day{})}, []unit.Kind{unit.StraighteningUnderLoad}, ""},
		{"over within the page", []plan.Window{straightening(end.AddDays(-1)), weight(withIt, end.AddWeeks(8))}, []unit.Kind{unit.StraighteningUnderLoad, unit.AddedWeight}, "then the other one is all there is"},
		{"over together", []plan.Window{straightening(starts.AddWeeks(1)), weight(withIt, starts.AddWeeks(1))}, []unit.Kind{unit.StraighteningUnderLoad}, ""},
		{"all added weight", []plan.Window{straightening(end), weight(nil, end)}, []unit.Kind{unit.StraighteningUnderLoad, unit.AddedWeight}, "a press takes weight too: not included"},
		{"weight of all and of some", []plan.Window{weight(nil, end), weight(withIt, end)}, []unit.Kind{unit.AddedWeight}, "all includes some"},
		{"one that covers two", []plan.Window{weight(withIt, end.AddWeeks(8)), straightening(starts.AddWeeks(1)), straightening(end)}, []unit.Kind{unit.StraighteningUnderLoad}, "the longer one says both"},
		{"two legs", []plan.Window{straightening(end), other(weight(withIt, end))}, []unit.Kind{unit.StraighteningUnderLoad, unit.AddedWeight}, "one leg says nothing of the other"},
	} {
		t.Run(row.name, func(t *testing.T) {
			h.Limits = row.limits
			var got, want []string
			for _, b := range h.bans() {
				got = append(got, string(b.kind))
			}
			for _, k := range row.want {
				want = append(want, string(k))
			}
			if strings.Join(got, ", ") != strings.Join(want, ", ") {
				t.Errorf("%v, want %v: %s", got, want, row.why)
			}
		})
	}
}

// A clinic with one number says what to do at other hours; with two it need not.
func TestPhonesAtOtherHours(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	all := h.Clinic.Phones
	for n, want := range map[int]bool{1: true, 2: false} {
		h.Clinic.Phones = all[:n]
		text := ""
		for _, node := range h.phones() {
			text += textOf(node.Spans)
		}
		if got := strings.Contains(text, "At other hours, call 999"); got != want {
			t.Errorf("%d numbers: %q", n, text)
		}
	}
}

// A goal that waits for a limit is said without a word of being late.
func TestAGoalThatWaits(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	g := plan.GoalState{State: "waits", Until: h.Block.Starts.AddWeeks(2), By: h.Block.Starts.AddWeeks(-2)}
	if got := h.byWhen(g); !strings.Contains(got, "limits do not allow this yet") || !strings.Contains(got, "not before") || strings.Contains(got, "Planned") {
		t.Errorf("%q", got)
	}
}

// An exercise for range says where the knee is now: its end is an aim, and not a ban.
func TestARangeALittleFurther(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	e := *h.Prescriptions[0].Exercise
	e.Range, e.Contraction = reach(0, 130), nil
	bends := unit.Degrees(66)
	if got := h.inRange(&e, *reach(0, 76), &bends, ""); !strings.Contains(got, "bends to 66° now") || strings.Contains(got, "Do not bend") {
		t.Errorf("%q", got)
	}
	if got := h.inRange(&e, *reach(0, 60), &bends, ""); !strings.Contains(got, "Do not bend further than 60°") {
		t.Errorf("an override below the measured bend is a ban: %q", got)
	}
}
