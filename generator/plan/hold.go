package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// revised takes in what came to light after the block's first day, where it asks for more caution: a pause that the
// therapist has called, test days that themselves ask for one, and what the client reports of more than one session.
// Nothing that came later makes a page milder. A hold stands until the knee has been looked at again and that look asks
// for no pause.
func (s *Symptoms) revised(c *client.Client, b *client.Block, event *client.Event, newer Symptoms) {
	if h := c.Held(b); h != nil && !h.From.Before(event.Date) && (newer.pausedByLook() || !c.LookedAfter(h)) {
		s.Held = h
		s.take(Signal{Action: Pause, Level: "block", On: h.From, Code: "hold", Because: fmt.Sprintf("held from %s by %s (%s)", h.From, h.By, h.Reason)})
	}
	if lasting, _ := newer.in(2); lasting.Rank() >= Pause.Rank() && (lasting.Rank() > s.Action.Rank() || s.Level == "session") {
		s.On = newer.On
		for _, g := range newer.Signals {
			if g.Action.Rank() >= Pause.Rank() && g.Level != "session" {
				s.take(g)
			}
		}
	}
}

// pausedByLook reports whether a test day asks for a pause.
func (s *Symptoms) pausedByLook() bool {
	return slices.ContainsFunc(s.Signals, func(g Signal) bool { return !g.Reported && g.Exercise == "" && g.Action.Rank() >= Pause.Rank() })
}

// take weighs one more signal: the strictest wins, of two alike the one that holds longer.
func (s *Symptoms) take(g Signal) {
	s.Signals = append(s.Signals, g)
	s.weigh(g)
}

// lastWord is the last day before the block ends on which a test day looked or the client reported.
func lastWord(c *client.Client, b *client.Block) (last unit.Day) {
	last = b.Starts
	see := func(on unit.Day) {
		if on.After(last) && on.Before(b.Starts.AddWeeks(b.Weeks)) {
			last = on
		}
	}
	for i := range c.Tests {
		see(c.Tests[i].On)
	}
	for i := range c.Logs {
		for _, k := range c.Logs[i].Knee {
			see(k.On)
		}
	}
	return last
}
