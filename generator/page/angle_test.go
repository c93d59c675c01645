package page

import (
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/figure"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Nobody moves a knee from here to there while walking, pedalling or jumping: the sentence says how far it may bend by the way.
// Its digits stay those of the picture and of the limit.
func TestRangeOfWhatIsNotMovedThrough(t *testing.T) {
	h := handout{samplePlan(), sampleWords(t)}
	concentric := []program.Contraction{program.Concentric}
	for _, tt := range []struct {
		name   string
		pose   figure.Pose
		held   bool
		lo, hi unit.Degrees
		by     basis.Said
		want   string
	}{
		{name: "a walk", pose: figure.Pose{Motion: figure.Hold, Hidden: true}, hi: 60, want: "You may bend up to 60° (well short of a right angle)."},
		{name: "a walk under a limit", pose: figure.Pose{Motion: figure.Hold, Hidden: true}, hi: 40, want: "You may bend up to 40° (half of a right angle). Do not bend further than 40°."},
		{name: "a jump", pose: figure.Pose{Motion: figure.Flight, Hidden: true}, lo: 10, hi: 60, want: "You may bend up to 60° (well short of a right angle)."},
		{name: "a bike", pose: figure.Pose{Motion: figure.Cycle}, lo: 30, hi: 60, want: "You bend between 30° (a soft bend) and 60° (well short of a right angle)."},
		{name: "a squat", pose: figure.Pose{Motion: figure.Repeat}, hi: 60, want: "Move from straight (0°) to 60° (well short of a right angle)."},
		{name: "a knee that lacks 4°", lo: 4, hi: 50, by: "the {a} knee lacks {b}° of straight ({c})", want: "Move from 4° (nearly straight) to 50° (half of a right angle). That is how straight it goes for now. Do not bend further than 50°."},
		{name: "a knee that bends to 50°", hi: 50, by: "the {a} knee bends to {b}° ({c})", want: "Move from straight (0°) to 50° (half of a right angle). That is how far it bends for now. Never force it."},
		{name: "a stand", pose: figure.Pose{Motion: figure.Hold, Hidden: true}, held: true, hi: 60, want: "Hold your knee between straight (0°) and 60° (well short of a right angle)."},
	} {
		e := program.Exercise{Figure: tt.pose, Contraction: concentric, Range: reach(tt.lo, 60)}
		if tt.by != "" {
			e.Range = reach(0, 60)
		}
		if tt.held {
			e.Contraction = []program.Contraction{program.Isometric}
		}
		if got := h.inRange(&e, *reach(tt.lo, tt.hi), nil, measuredEnd(plan.WeekDose{RangeBy: tt.by})); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}
