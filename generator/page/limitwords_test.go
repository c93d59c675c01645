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

// A bend that may not be passed never has the words of a larger one: who may bend to 86° and reads "a right angle" goes 4° too far.
func TestLandmarksNearARightAngle(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	for _, row := range []struct {
		bend unit.Degrees
		want string
	}{
		{69, "well short of a right angle"}, {70, "a little short of a right angle"}, {76, "a little short of a right angle"}, {84, "a little short of a right angle"},
		{85, "nearly a right angle"}, {86, "nearly a right angle"}, {89, "nearly a right angle"}, {89.99, "nearly a right angle"},
		{90, "a right angle"}, {93, "a right angle"}, {94, "a little past a right angle"}, {110, "a little past a right angle"},
	} {
		if got := h.bend(row.bend); !strings.HasSuffix(got, "° ("+row.want+")") {
			t.Errorf("%g°: %q, want %q", float64(row.bend), got, row.want)
		}
	}
}

// How far the knee bends now is said once: a later week has its own end and no more.
func TestHowFarItBendsIsSaidOnce(t *testing.T) {
	p := samplePlan()
	slide := *p.Prescriptions[0].Exercise
	slide.Range, slide.Contraction = reach(0, 130), nil
	p.Prescriptions = p.Prescriptions[:1]
	r := &p.Prescriptions[0]
	r.Exercise = &slide
	for i := range r.Weeks {
		r.Weeks[i].Range, r.Weeks[i].Bends = reach(0, 76+10*unit.Degrees(i)), deg(66)
	}
	md := handoutSays(t, p)
	if n := strings.Count(md, "Your knee bends to 66° now."); n != 1 {
		t.Errorf("said %d times", n)
	}
	if !strings.Contains(md, "If it stays calm, go a little further, up to 86°.") {
		t.Error("the second week does not say how far it may go")
	}
}

// A knee that lacks degrees is not told to be at 0°: nobody presses a knee flat that does not go flat.
func TestAsStraightAsItGoes(t *testing.T) {
	const flat, goes = "Keep your knee straight (0°).", "Keep your knee as straight as it goes."
	lacks := func(left, right unit.Degrees) *finding.Findings {
		at := func(d unit.Degrees) finding.KneeAngles {
			return finding.KneeAngles{Straight: basis.Given("sample.straight", basis.Rule{Name: "sample"}, d, "hand-made")}
		}
		return &finding.Findings{Knees: []finding.KneeDay{{On: day("2026-03-09"), Left: at(9), Right: at(9)}, {On: day("2026-04-06"), Left: at(left), Right: at(right)}}}
	}
	squeeze := &program.Exercise{ID: "quad-set", Contraction: []program.Contraction{program.Isometric}}
	for _, row := range []struct {
		name  string
		found *finding.Findings
		side  unit.Side
		want  string
	}{
		{"not measured", nil, unit.Left, flat}, {"won since", lacks(0, 0), unit.Left, flat}, {"lacks 4°", lacks(4, 0), unit.Left, goes},
		{"the other leg lacks 4°", lacks(4, 0), unit.Right, flat}, {"both together", lacks(0, 4), unit.Both, goes}, {"goes beyond", lacks(-3, 0), unit.Left, flat},
	} {
		h := handout{samplePlan(), sampleWords(t)}
		h.Found = row.found
		if got := h.rangeOf(plan.Prescription{Exercise: squeeze, Side: row.side}, plan.WeekDose{Range: reach(0, 0)}); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	h := handout{samplePlan(), sampleWords(t)}
	h.Found = lacks(4, 0)
	if got := h.rangeOf(plan.Prescription{Exercise: squeeze, Side: unit.Left}, plan.WeekDose{Range: reach(30, 30)}); !strings.Contains(got, "Hold your knee at 30°") {
		t.Errorf("a bend to hold stays one: %q", got)
	}
}

// TestGoOnNamesTheBoxes: what a pause lets go on is by name what has a box, and of the paused knee alone.
func TestGoOnNamesTheBoxes(t *testing.T) {
	p := pausedSample()
	var own []string
	for _, r := range p.Prescriptions {
		if r.Side == unit.Left || r.Side == unit.Both {
			own = append(own, r.Exercise.Title)
		}
	}
	if len(own) == 0 {
		t.Fatal("the sample's knee has no box")
	}
	md := handoutSays(t, p)
	_, line, found := strings.Cut(md, "Do these as their boxes say: ")
	line, _, _ = strings.Cut(line, "\n")
	for _, title := range own {
		if !strings.Contains(line, title) {
			t.Errorf("%q has a box and does not go on: %q", title, line)
		}
	}
	p.Prescriptions[0].Side, p.Prescriptions = unit.Right, p.Prescriptions[:1]
	if md := handoutSays(t, p); !found || strings.Contains(md, "Do these as their boxes say") {
		t.Error("no box of the knee, and a list of them")
	}
	if md := handoutSays(t, samplePlan()); strings.Contains(md, "Do these as their boxes say") {
		t.Error("without a pause all goes on")
	}
}

// In a pause running rests as it is: a step back does not take it away once more.
func TestAPauseTakesRunningAwayOnce(t *testing.T) {
	run := plan.ActivityState{Activity: &program.Activity{ID: "running", Kinds: []unit.Kind{unit.Running}}, State: "suspended", OpenedBy: "imbali"}
	for _, row := range []struct {
		p    *plan.Plan
		want bool
	}{{samplePlan(), true}, {pausedSample(), false}} {
		h := handout{row.p, sampleWords(t)}
		h.Activities = []plan.ActivityState{run}
		if got := strings.Contains(h.less(), "no running"); got != row.want {
			t.Errorf("%s: %q", row.p.Symptoms.Action, h.less())
		}
	}
}

// A wound is spoken of in the first weeks after an operation, where it is young, and not by an exercise, which stands on later pages too.
func TestTheWoundPullsInTheFirstWeeks(t *testing.T) {
	const pull = "You may feel a pull at it when you tighten your thigh."
	if md := handoutSays(t, sampleEarly()); !strings.Contains(md, pull) {
		t.Error("week 1 does not say that a wound may pull")
	}
	if md := handoutSays(t, samplePlan()); strings.Contains(md, pull) {
		t.Error("week 12 says it")
	}
}

// The numbers below a chart are headed in plain words; the unit stands beside them.
func TestTestsInPlainWords(t *testing.T) {
	if got := sampleWords(t).Say("chart.in-unit", "unit", "N·m"); got != "Force of your leg, as tested (N·m)" {
		t.Errorf("%q", got)
	}
}
