package plan

import (
	"fmt"

	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// revised takes in what came to light after the block's first day, where it asks for more caution: a pause that the
// therapist has called, and test days that themselves ask for one. Nothing that came later makes a page milder. A hold
// stands until the knee has been looked at again and that look asks for no pause.
func (s *Symptoms) revised(c *client.Client, b *client.Block, event *client.Event, newer Symptoms) {
	pauses := newer.Action.Rank() >= Pause.Rank()
	if h := c.Held(b); h != nil && !h.From.Before(event.Date) && (pauses || !c.LookedAfter(h)) {
		s.Held = h
		s.take(Signal{Action: Pause, Level: "block", On: h.From, Code: "hold", Because: fmt.Sprintf("held from %s by %s (%s)", h.From, h.By, h.Reason)})
	}
	if pauses && newer.Action.Rank() > s.Action.Rank() {
		s.On = newer.On
		for _, g := range newer.Signals {
			if g.Action.Rank() >= Pause.Rank() {
				s.take(g)
			}
		}
	}
}

// take weighs one more signal: the strictest wins.
func (s *Symptoms) take(g Signal) {
	s.Signals = append(s.Signals, g)
	if g.Action.Rank() > s.Action.Rank() {
		s.Action, s.Because, s.Level = g.Action, g.Because, g.Level
	}
}

// lastLook is the last test day before the block ends.
func lastLook(c *client.Client, b *client.Block) (last unit.Day) {
	last = b.Starts
	for i := range c.Tests {
		if on := c.Tests[i].On; on.After(last) && on.Before(b.Starts.AddWeeks(b.Weeks)) {
			last = on
		}
	}
	return last
}
