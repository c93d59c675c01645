package client

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Days that can be typed and are rarely meant: with a year that is wrong by one or ten, limits would seem to be over, or
// not to have begun, and nothing else would show it.

// Spans that are asked about. Chosen: common practice, no source.
const (
	lateWeeks = 39  // from an operation to the first thing recorded after it
	longAgo   = 104 // weeks from an operation to the block
	farOff    = 26  // weeks from a word said to the day from which it holds
	oldest    = 100 // years of a client's age,
	young     = 8   // and the other way
)

func (r *reader) days() {
	if len(r.c.Events) == 0 {
		return
	}
	first := slices.MinFunc(r.c.Events, func(a, b Event) int { return a.Date.Compare(b.Date) }).Date
	if first.IsZero() {
		return // the reader has said so
	}
	r.born(first)
	r.farAhead(r.known(first))
	if b := r.c.Block(); b != nil && !b.Starts.IsZero() {
		r.newestOperation(b)
	}
	early := func(what string, from unit.Day, at basis.Origin) {
		if !from.IsZero() && from.Before(first) {
			r.ask(at.At("from"), fmt.Sprintf("%s begins %s, before the first event of %s", what, from, first), wrongYear)
		}
	}
	for _, s := range r.c.Stages {
		early("stage "+s.ID, s.From, s.At)
	}
	for _, o := range r.c.Opened {
		early(o.ID, o.From, o.At)
	}
	for i := range r.c.Limits {
		l := &r.c.Limits[i]
		if !l.Said.IsZero() && !l.From.IsZero() && l.From.After(l.Said.AddWeeks(farOff)) {
			r.ask(l.At.At("from"), fmt.Sprintf("the limit of %s was said on %s and begins only %s", l.Kind, l.Said, l.From), wrongYear)
		}
	}
}

// born holds the month of birth against the first event.
func (r *reader) born(first unit.Day) {
	at := r.c.At.At("born")
	born := unit.Day{Year: r.c.Born.Year, Month: r.c.Born.Month, Date: 1}
	switch age := r.c.Born.Age(first); {
	case born.Year == 0:
	case born.After(first):
		r.wrong(at, fmt.Sprintf("born after the first event of %s", first), "write the year and month of birth")
	case age > oldest, age < young:
		r.ask(at, fmt.Sprintf("that makes %d years on the day of the first event", age), wrongYear)
	}
}

// lateRecord asks where the first thing recorded after an operation comes very late: a year that is one too early empties
// the limits without a word.
func (r *reader) lateRecord(e *Event) {
	var first unit.Day
	see := func(d unit.Day) {
		if !d.IsZero() && !d.Before(e.Date) && (first.IsZero() || d.Before(first)) {
			first = d
		}
	}
	for _, t := range r.c.Tests {
		see(t.On)
	}
	for _, s := range r.c.Stages {
		see(s.From)
	}
	for _, l := range r.c.Limits {
		see(l.Said)
	}
	for _, b := range r.c.Blocks {
		see(b.Starts)
	}
	if !first.IsZero() && first.After(e.Date.AddWeeks(lateWeeks)) {
		r.ask(e.At.At("date"), fmt.Sprintf("the first thing recorded after this operation is of %s, %d weeks later", first, first.WeeksSince(e.Date)), wrongYear)
	}
}

// newestOperation asks about an operation that lies long before the block.
func (r *reader) newestOperation(b *Block) {
	var newest *Event
	for i := range r.c.Events {
		e := &r.c.Events[i]
		if e.Kind == Operation && (newest == nil || e.Date.After(newest.Date)) {
			newest = e
		}
	}
	if newest != nil && !newest.Date.IsZero() {
		r.lateRecord(newest)
	}
	if newest != nil && !newest.Date.IsZero() && b.Starts.After(newest.Date.AddWeeks(longAgo)) {
		r.ask(newest.At.At("date"), fmt.Sprintf("the operation of %s lies %d weeks before block %d: its limits are over", newest.Date, b.Starts.WeeksSince(newest.Date), b.Number),
			wrongYear)
	}
}

// setupNames asks about set-ups that no test will look for.
func (r *reader) setupNames() {
	for id, s := range r.c.Setups {
		named := func(known string) bool { return id == known || strings.HasPrefix(id, known+"-") }
		lever := s.Device == "" && (s.Left.Arm.OK() || s.Right.Arm.OK()) // with a device it is the lever of an exercise's ankle weight
		ofForce := s.Gauge != "" || s.Mode != "" || s.Angle.OK() || lever
		if ofForce && !slices.ContainsFunc(strengthTests, named) {
			r.ask(basis.Origin{File: r.dir + "/client.toml", Key: "setup." + id}, fmt.Sprintf("no test of force is called %q", id),
				"write one of "+strings.Join(strengthTests, ", "))
		}
	}
}

// stronger is how much stronger the operated leg may look before it is asked about. Chosen: common practice, no source.
const stronger = 1.15

// Suspicious asks about values that are possible but rarely true: the operated leg stronger, a lever typed in millimetres
// is refused by its bounds already.
func (c *Client) Suspicious(side unit.Side) (faults source.Faults) {
	for i := range c.Tests {
		for j := range c.Tests[i].Strength {
			s := &c.Tests[i].Strength[j]
			operated, other := best(s.Left.Peak), best(s.Right.Peak)
			if side == unit.Right {
				operated, other = other, operated
			}
			if other > 0 && float64(operated) > float64(stronger*float64(other)) {
				faults.Add(source.Fault{File: s.At.File, Line: s.At.Line, Key: s.At.At("test").Key, Ask: true,
					What:    fmt.Sprintf("%s: the operated leg looks more than 15 percent stronger than the other", s.Test),
					Instead: "see whether left and right were swapped"})
			}
		}
	}
	return slices.Concat(faults, c.suspiciousTrials(side), c.heavyLifts(side), c.beyondBend())
}

// twice is how much heavier a lift may be than the last one before it is asked about. Chosen: common practice, no source.
const twice = 2

// heavyLifts asks about a lift of the operated leg that is far above its last one, or above the other leg's: a slip of the
// pen there becomes a weight on a machine.
func (c *Client) heavyLifts(side unit.Side) (faults source.Faults) {
	last := map[string]unit.Kilograms{}
	for i := range c.Tests {
		for j := range c.Tests[i].Lifts {
			l := &c.Tests[i].Lifts[j]
			operated, other := load(l.Left), load(l.Right)
			if side == unit.Right {
				operated, other = other, operated
			}
			before := last[l.Exercise]
			if operated > 0 {
				last[l.Exercise] = operated
			}
			says := ""
			switch {
			case before > 0 && float64(operated) > float64(twice*float64(before)):
				says = fmt.Sprintf("%s: %g kg is more than twice the last one, %g kg", l.Exercise, float64(operated), float64(before))
			case c.SoundOther() && other > 0 && float64(operated) > float64(stronger*float64(other)):
				says = fmt.Sprintf("%s: the operated leg lifts more than 15 percent more than the other", l.Exercise)
			default:
				continue
			}
			faults.Add(source.Fault{File: l.At.File, Line: l.At.Line, Key: l.At.At("exercise").Key, Ask: true, What: says, Instead: "see whether the weight and the legs are right"})
		}
	}
	return faults
}

func load(s Set) unit.Kilograms { return max(s.Plates.Or(0), s.Moved.Or(0)) }

func best(trials []basis.Num[unit.Newtons]) (top unit.Newtons) {
	for _, t := range trials {
		top = max(top, t.Or(0))
	}
	return top
}
