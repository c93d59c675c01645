package client

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Days far ahead, and a bend that a test of the same day went beyond. All of it is asked, nothing is refused: an operation may be
// planned, and a limit may be long.

// longest is for how many weeks a limit may hold before it is asked about. Chosen: common practice, no source.
const longest = 156

const wrongYear = "see whether the year is right"

// farAhead asks about what begins half a year or more after all that is planned, and about limits that hold for years.
func (r *reader) farAhead(known unit.Day) {
	ask := func(what string, on unit.Day, at basis.Origin) {
		if on.After(known.AddWeeks(farOff)) {
			r.ask(at, fmt.Sprintf("%s %s, long after all that is planned, which ends %s", what, on, known), wrongYear)
		}
	}
	for _, e := range r.c.Events {
		ask("this event is of", e.Date, e.At.At("date"))
	}
	for _, s := range r.c.Stages {
		ask("stage "+s.ID+" begins", s.From, s.At.At("from"))
	}
	for _, o := range r.c.Opened {
		ask(o.ID+" begins", o.From, o.At.At("from"))
	}
	for i := range r.c.Limits {
		l := &r.c.Limits[i]
		if l.Said.IsZero() { // else days says it
			ask(fmt.Sprintf("the limit of %s begins", l.Kind), l.From, l.At.At("from"))
		}
		if l.Lifts != nil && !l.From.IsZero() && l.Lifts.After(l.From.AddWeeks(longest)) {
			r.ask(l.At.At("lifts"), fmt.Sprintf("the limit of %s holds from %s to %s, %d weeks", l.Kind, l.From, l.Lifts, l.Lifts.WeeksSince(l.From)), wrongYear)
		}
	}
}

// known is the last day of what is planned: of the newest block, else the first event.
func (r *reader) known(first unit.Day) unit.Day {
	if b := r.c.Block(); b != nil && !b.Starts.IsZero() {
		return b.Starts.AddWeeks(b.Weeks).AddDays(-1)
	}
	return first
}

// beyondBend asks about a knee that was measured to bend less than a test of the same day needed.
func (c *Client) beyondBend() (faults source.Faults) {
	for i := range c.Tests {
		d := &c.Tests[i]
		for _, leg := range []struct {
			side unit.Side
			knee *KneeRange
		}{{unit.Left, &d.Left}, {unit.Right, &d.Right}} {
			bends, measured := leg.knee.Flexion.Value()
			if deepest, test := c.deepest(d, leg.side); measured && deepest > bends {
				faults.Add(source.Fault{File: d.At.File, Line: d.At.Line, Key: string(leg.side) + ".flexion", Ask: true,
					What:    fmt.Sprintf("the %s knee bends to %g° on %s, and %s was tested at %g°", leg.side, float64(bends), d.On, test, float64(deepest)),
					Instead: "see whether the bend, and the angle or range of the test, are right"})
			}
		}
	}
	return faults
}

// deepest is the furthest bend that a leg's tests of a day went through, as far as that was typed, and which test it was.
func (c *Client) deepest(d *TestDay, side unit.Side) (bend unit.Degrees, test string) {
	for i := range d.Strength {
		s := &d.Strength[i]
		pull := s.Left
		if side == unit.Right {
			pull = s.Right
		}
		if at, ok := c.Conditions(s).Angle.Value(); ok && len(pull.Peak)+len(pull.Torque) > 0 && at > bend {
			bend, test = at, s.Test
		}
	}
	for i := range d.Lifts {
		l := &d.Lifts[i]
		set := l.Left
		if side == unit.Right {
			set = l.Right
		}
		if l.Range != nil && (set.Done() || l.Both.Done()) && l.Range.MostBent > bend {
			bend, test = l.Range.MostBent, l.Exercise
		}
	}
	return bend, test
}
