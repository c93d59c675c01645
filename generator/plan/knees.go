package plan

import (
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Limits bind a knee (rules 5). Those of the program bind the knee of the event that its weeks count from. The other leg is
// free, but for what speaks of it: an event of its own, the graft that it gave, an instruction that names it.

// knees are the limits of both legs.
type knees struct {
	event *client.Event
	of    map[unit.Side]*limits
}

// gatherKnees lays out the limits of both legs.
func gatherKnees(p *program.Program, c *client.Client, event *client.Event, on unit.Day) knees {
	k := knees{event: event, of: map[unit.Side]*limits{}}
	for _, side := range []unit.Side{unit.Left, unit.Right} {
		l := &limits{side: side, event: event, mass: newestMass(c, on)}
		said := event // what was said of this leg before it is of another state of it
		own := otherEvent(p, c, event, side, on)
		switch {
		case isOf(event.Side, side):
			l.program(p, c, event, program.OperatedLeg)
		case own != nil:
			l.event = own
			l.program(p, c, own, program.OperatedLeg)
			said = own
		}
		if gave(event, side) {
			l.program(p, c, event, program.DonorLeg)
			said = event
		}
		if theirs := otherEvent(p, c, event, side.Opposite(), on); theirs != nil && gave(theirs, side) {
			l.program(p, c, theirs, program.DonorLeg) // the event's own leg gave the graft of the other
		}
		for i := range c.Limits {
			if in := &c.Limits[i]; isOf(in.Side, side) || in.Side == "" && isOf(event.Side, side) {
				l.instruction(in, said)
			}
		}
		k.of[side] = l
	}
	return k
}

// isOf reports whether what is said of a side is said of a leg: of both it is.
func isOf(said, leg unit.Side) bool { return said == leg || said == unit.Both }

// otherEvent is the newest event of the same kind on the other leg, up to the day: the leg that was operated too.
func otherEvent(p *program.Program, c *client.Client, event *client.Event, side unit.Side, on unit.Day) (own *client.Event) {
	for i := range c.Events {
		e := &c.Events[i]
		if e == event || e.Side != side || e.Date.After(on) || e.Procedure != p.CountsFrom && string(e.Kind) != p.CountsFrom {
			continue
		}
		if own == nil || e.Date.After(own.Date) {
			own = e
		}
	}
	return own
}

// sides are the legs, the event's own first.
func (k knees) sides() []unit.Side {
	if k.event.Side == unit.Right {
		return []unit.Side{unit.Right, unit.Left}
	}
	return []unit.Side{unit.Left, unit.Right}
}

// main are the limits of the event's knee.
func (k knees) main() *limits { return k.of[k.sides()[0]] }

// involves reports whether an exercise of a leg works the event's knee too. Of two knees operated on one day each counts as
// that knee: swelling and pain are typed without a side, and nobody can say which of the two they are of.
func (k knees) involves(e *program.Exercise, side unit.Side) bool {
	return side == unit.Both || k.event.Side == unit.Both || side == k.event.Side || e.LoadsBoth || k.sameDay(side)
}

// sameDay reports whether a leg was operated on the day of the event, by an event of its own: it goes through the same stages
// and does what a slot keeps for the operated leg. A leg operated earlier is in another stage, for which it is not tested.
func (k knees) sameDay(side unit.Side) bool {
	return k.operatedToo(side) && k.of[side].event.Date == k.event.Date
}

// operatedToo reports whether a leg has an event of its own besides the one that weeks count from.
func (k knees) operatedToo(side unit.Side) bool {
	l := k.of[side]
	return l != nil && l.event != k.event
}

// permits weighs an exercise of a leg against the limits of every knee that it works.
func (k knees) permits(e *program.Exercise, days []unit.Day, side unit.Side) permit {
	whole := permit{allowed: true, reach: e.Range}
	for _, s := range k.sides() {
		if side != s && side != unit.Both && !e.LoadsBoth {
			continue
		}
		p := k.of[s].permits(e, days)
		if !p.allowed {
			return p
		}
		whole = whole.and(p, e)
	}
	return whole
}

// and is what both permits leave.
func (p permit) and(o permit, e *program.Exercise) permit {
	if p.reach == nil || o.reach == nil {
		return o
	}
	met := p.reach.Meet(*o.reach)
	switch {
	case met.Empty():
		return denied("the two knees allow no common range")
	case !e.Isometric() && met.Arc() < leastArc && e.Range.Arc() >= leastArc:
		return denied("the two knees allow an arc of {a}° together: under {b}° only holding still", float64(met.Arc()), float64(leastArc))
	}
	return permit{allowed: true, reach: &met}
}

// rule decides one kind on one day for both knees together: the strictest, as walking or running uses both.
func (k knees) rule(kind unit.Kind, named []unit.Kind, d unit.Day) ruling {
	first, second := k.sides()[0], k.sides()[1]
	r := k.of[first].rule(kind, named, d)
	if o := k.of[second].rule(kind, named, d); o.allow.Closed() && !r.allow.Closed() {
		return o
	}
	return r
}

// turns are the days after first on which a window of the kind begins or lifts, on either leg.
func (k knees) turns(kind unit.Kind, first unit.Day) (days []unit.Day) {
	for _, side := range k.sides() {
		days = append(days, k.of[side].turns(kind, first)...)
	}
	return days
}
