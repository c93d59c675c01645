package plan

import (
	"slices"
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

// firstPage is nil where nothing since the block's first day has made another page.
func (p *Plan) firstPage() *firstPage {
	until := p.cameToLight()
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

// cameToLight is the first day on which another page held: that of the first pause, for it is of the whole page, else of the first
// signal. A report's own day is not yet one: the client had trained by the page before. Zero: nothing came to light.
func (p *Plan) cameToLight() (pause unit.Day) {
	var first unit.Day
	for _, g := range p.Symptoms.Signals {
		if !g.On.After(p.Block.Starts) {
			continue
		}
		on := g.On
		switch {
		case g.Reported:
			on = on.AddDays(1)
		case g.Code == "effusion":
			on = p.swollenSince(on)
		}
		first = firstOf(first, on)
		if g.Exercise == "" && g.Action.Rank() >= Pause.Rank() {
			pause = firstOf(pause, on)
		}
	}
	if pause.IsZero() {
		return first
	}
	return pause
}

// swollenSince is the first day in the block of the looks up to a day that all saw as much swelling as pauses: the signal is of the newest.
func (p *Plan) swollenSince(day unit.Day) unit.Day {
	for i := range slices.Backward(p.Client.Tests) {
		switch d := &p.Client.Tests[i]; {
		case d.Effusion == "" || !d.On.Before(day):
		case d.Effusion.Rank() < unit.Grade2.Rank() || !d.On.After(p.Block.Starts):
			return day
		default:
			day = d.On
		}
	}
	return day
}

// firstOf is the earlier of two days; a is zero where there is none yet.
func firstOf(a, b unit.Day) unit.Day {
	if a.IsZero() || b.Before(a) {
		return b
	}
	return a
}

// ofFirstPage are the lines of what the page of now asks for no more, by the sessions of the days on which the first page held.
func (b *backer) ofFirstPage(first *firstPage) (lines []BackLine) {
	if first == nil || first.page() == nil {
		return nil
	}
	before := *first.page()
	before.Sessions = slices.DeleteFunc(slices.Clone(before.Sessions), func(s SessionDay) bool { return !first.inForce(s.Day) })
	then := *b
	then.Plan = &before
	for i := range before.Prescriptions {
		if line, some := then.line(&before.Prescriptions[i]); some {
			line.Denied = b.denied(&before.Prescriptions[i], line.Completed)
			lines = append(lines, line)
		}
	}
	return lines
}
