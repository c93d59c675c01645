package page

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// TestRoutine: what the client plans stands above the diary, in the client's words where they are typed, else as lines to fill in.
func TestRoutine(t *testing.T) {
	shown := unit.Day{Year: 2026, Month: 4, Date: 6}
	for _, row := range []struct {
		why, routine, hurdle string
		shown                *unit.Day
		has, hasNot          []string
	}{
		{why: "nobody has asked yet: both lines are blank, and nobody claims to have shown anything",
			has: []string{"After __________ I do my exercises.", "If __________ gets in the way"}, hasNot: []string{"We showed you"}},
		{why: "one is typed: the other stays to be filled in", routine: "At lunch I go to the gym.",
			has: []string{"At lunch I go to the gym.", "If __________ gets in the way"}, hasNot: []string{"After __________"}},
		{why: "all is typed", routine: "At lunch I go.", hurdle: "If it rains, I take the bus.", shown: &shown,
			has: []string{"At lunch I go.", "If it rains, I take the bus.", "We showed you these exercises on Mon 6 April 2026."}, hasNot: []string{"____"}},
	} {
		p := deskPlan()
		p.Block.Routine, p.Block.Hurdle, p.Block.Shown = row.routine, row.hurdle, row.shown
		text := said(Handout(p, deskWords(t)))
		for _, want := range row.has {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is not on the page", row.why, want)
			}
		}
		for _, not := range row.hasNot {
			if strings.Contains(text, not) {
				t.Errorf("%s: %q is on the page", row.why, not)
			}
		}
		if routine, diary := strings.Index(text, "When will you train?"), strings.Index(text, "Keep a tick"); routine < 0 || diary >= 0 && routine > diary {
			t.Errorf("%s: the plan does not stand above the diary (%d, %d)", row.why, routine, diary)
		}
	}
}
