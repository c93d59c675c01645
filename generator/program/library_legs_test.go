package program_test

import (
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

var otherLegToo = regexp.MustCompile(`both (legs|feet)`)

// What makes an exercise of one leg easier never loads the other knee: that one may be in a pause.
func TestOneLegIsNotEasedByBoth(t *testing.T) {
	for id, e := range library(t) {
		if e.Side == program.OneLeg && e.Names(unit.WeightBearing) && otherLegToo.MatchString(e.Words.EaseOff) {
			t.Errorf("%s: %q", id, e.Words.EaseOff)
		}
	}
}

// A page of week 20 has the same words of an exercise as one of week 1: a wound that pulls stands in the care of the first weeks.
func TestNoExerciseFeelsTheWound(t *testing.T) {
	for id, e := range library(t) {
		if strings.Contains(e.Words.Normal, "wound") {
			t.Errorf("%s: %q", id, e.Words.Normal)
		}
	}
}

// A bike goes round from about 105° to 110° of bend on (evidence, exercises: from memory), so its steps fit the knee that only
// rocks, and the cue of the whole turn is of 110°.
func TestTheBikeFitsRockingAndTurning(t *testing.T) {
	bike := library(t)["stationary-cycling"]
	steps := strings.Join(bike.Words.Steps, " ")
	if !strings.Contains(steps, "Rock them to and fro, where your knee does not let them go round.") {
		t.Errorf("the steps do not say when to rock: %q", steps)
	}
	for _, c := range bike.Words.Cues {
		if strings.Contains(c.Text, "all the way round") && (c.ReachesDeg == nil || *c.ReachesDeg != 110) {
			t.Errorf("%q is not kept for 110°", c.Text)
		}
	}
}
