package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// revised takes in what came to light after the block's first day: a pause that the therapist has called, what test days
// ask for, and what the client reports of more than one session. Nothing that came later makes a page milder. A pause is of
// the whole page; stay and step back hold from the week in which they came to light to the block's end. A hold stands until
// the knee has been looked at again and found quiet.
func (s *Symptoms) revised(c *client.Client, b *client.Block, event *client.Event, newer Symptoms) {
	if h := c.Held(b); h != nil && !h.From.Before(event.Date) && (newer.unquiet() || !c.LookedAfter(h)) {
		s.Held = h
		s.take(Signal{Action: Pause, Level: "block", On: h.From, Since: weekOf(b, h.From), Code: "hold", Because: basis.Say("held from {a} by {b} ({c})", h.From, h.By, h.Reason)})
	}
	for _, g := range newer.Signals {
		if g.On.After(b.Starts) && g.Level != "session" {
			g.Since = weekOf(b, g.On)
			s.take(g)
			s.On = newer.On
		} else if g.On.After(b.Starts) && g.Reported {
			s.Told = append(s.Told, g) // of one session: the page says what to do, and the therapist is told
		}
	}
}

// weekOf is the week of the block in which a day lies, from 1.
func weekOf(b *client.Block, on unit.Day) int { return max(0, on.WeeksSince(b.Starts)) + 1 }

// unquiet reports whether the newest looks still ask for something. Swelling that came down from a pause is quiet enough: it
// has an action of its own.
func (s *Symptoms) unquiet() bool {
	return slices.ContainsFunc(s.Signals, func(g Signal) bool {
		fell := g.Action == Stay && g.Code == "effusion"
		return !g.Reported && g.Exercise == "" && g.Action.Rank() > NoAction.Rank() && !fell
	})
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
