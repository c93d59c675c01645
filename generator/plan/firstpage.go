package plan

import (
	"sync"

	"paceleaf/generator/unit"
)

// What the client did before something came to light was done by the page as it was then. A pause of Thursday takes nothing
// away from Wednesday's sets.

// firstPage is the page of a block as it was issued, and the day on which something came to light.
type firstPage struct {
	until unit.Day
	page  func() *Plan
}

// firstPage is nil where nothing has come to light since the block's first day: no hold, no test day.
func (p *Plan) firstPage() *firstPage {
	var until unit.Day
	earlier := func(day unit.Day) {
		if day.After(p.Block.Starts) && (until.IsZero() || day.Before(until)) {
			until = day
		}
	}
	for i := range p.Client.Holds {
		earlier(p.Client.Holds[i].From)
	}
	for i := range p.Client.Tests {
		earlier(p.Client.Tests[i].On)
	}
	if until.IsZero() {
		return nil
	}
	return &firstPage{until, sync.OnceValue(func() *Plan {
		plan, _ := compute(p.Clinic, p.Program, asIssued(p.Client, p.Block))
		return plan
	})}
}

// inForce reports whether the page was the one that held on a day.
func (f *firstPage) inForce(on unit.Day) bool { return f != nil && on.Before(f.until) }
