package page

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// TestRestsAreWhatWasOnThePage: the page of a pause lists what the client would else have done there: nothing that the place
// has no equipment for, one exercise of each slot, and one of both legs without a leg's name.
func TestRestsAreWhatWasOnThePage(t *testing.T) {
	p := floorPlan()
	add := func(id, title string, needs ...unit.DeviceKind) {
		p.Program.Exercises[id] = &program.Exercise{ID: id, Title: title, Needs: needs}
	}
	add("kick-band", "Kick against a band", "band")
	add("press", "Press", "angled-leg-press")
	add("step-up", "Step-up")
	p.Dropped = []plan.Dropped{
		{Slot: "front", Exercise: "kick-band", Side: unit.Left, Week: 1, Paused: true},
		{Slot: "front", Exercise: "press", Side: unit.Left, Week: 1, Paused: true},
		{Slot: "step", Exercise: "step-up", Side: unit.Left, Week: 1, Paused: true},
		{Slot: "step", Exercise: "step-up", Side: unit.Right, Week: 1, Paused: true},
		{Slot: "other", Exercise: "press", Side: unit.Right, Week: 1},
	}
	var lines []string
	for _, n := range (handout{p, sampleWords(t)}).rests().Nodes {
		for _, item := range n.Items {
			lines = append(lines, strings.ReplaceAll(textOf(item), "\u00a0", " "))
		}
	}
	if got, want := strings.Join(lines, " | "), "Press, LEFT leg | Step-up"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
