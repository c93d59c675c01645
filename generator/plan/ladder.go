package plan

import (
	"fmt"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
)

// A ladder is climbed by its own rule; the therapist records the rung to begin on, with the activity that he opens.

// level is the rung on which the client begins: what was recorded with the newest opening of the activity, else the first.
// What was opened before the event was said of another state of the knee.
func (p *planner) level(e *program.Exercise) int {
	if len(e.Levels) == 0 {
		return 0
	}
	level, newest := 1, p.event.Date
	for _, o := range p.client.Opened {
		if o.ID == e.Activity && !o.From.After(p.block.Starts) && !o.From.Before(newest) {
			level, newest = min(max(1, o.Level), len(e.Levels)), o.From
		}
	}
	return level
}

// wrongLevels are recorded rungs that no ladder of the program has.
func wrongLevels(p *program.Program, c *client.Client) (wrong []Mistake) {
	for _, o := range c.Opened {
		if o.Level == 0 {
			continue
		}
		rungs := 0
		for _, e := range p.Exercises {
			if e.Activity == o.ID {
				rungs = max(rungs, len(e.Levels))
			}
		}
		switch {
		case rungs == 0:
			wrong = append(wrong, Mistake{At: o.At.At("level"), Ask: true, What: fmt.Sprintf("no exercise of program %s has a ladder for %s", p.ID, o.ID), Instead: "take the level out"})
		case o.Level > rungs:
			wrong = append(wrong, Mistake{At: o.At.At("level"), What: fmt.Sprintf("the ladder of %s has %d levels, not %d", o.ID, rungs, o.Level), Instead: fmt.Sprintf("write 1 to %d", rungs)})
		}
	}
	return wrong
}
