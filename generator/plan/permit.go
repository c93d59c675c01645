package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// leastArc is the width of a range below which a knee is only held still. Common practice, no source (rules 7).
const leastArc unit.Degrees = 20

// permit is what the limits leave of an exercise.
type permit struct {
	allowed bool
	because basis.Said  // why not
	reach   *unit.Reach // what is left of its range; nil where it has none

	measured basis.Said    // which measured end narrowed the range; empty where none did
	bends    *unit.Degrees // of an exercise for range that a measurement narrowed: how far the knee bends
}

func denied(key string, values ...any) permit { return permit{because: basis.Say(key, values...)} }

// permits weighs an exercise against the limits of a stretch of days: the strictest of any of its days holds.
func (l *limits) permits(e *program.Exercise, days []unit.Day) permit {
	p := permit{allowed: true, reach: e.Range}
	var narrowed basis.Said
	for _, d := range days {
		for _, k := range spokenOf(e) {
			r := l.rule(k, e.Kinds, d)
			if why := l.forbids(r, e); why != "" {
				return denied("{a}: {b} ({c})", k, why, r.setBy())
			}
			if r.allow.Range != nil && p.reach != nil && k != unit.Brace {
				met := p.reach.Meet(*r.allow.Range)
				if met != *p.reach {
					narrowed = r.setBy()
				}
				p.reach = &met
			}
		}
	}
	switch {
	case p.reach == nil:
	case p.reach.Empty():
		return denied("no part of its range is allowed ({a})", narrowed)
	case !e.Isometric() && p.reach.Arc() < leastArc && e.Range.Arc() >= leastArc:
		return denied("an arc of {a}° is left: under {b}° only holding still ({c})", float64(p.reach.Arc()), float64(leastArc), narrowed)
	}
	return p
}

// partOf narrows a permit to the part of the movement that a slot asks for, or says why nothing of it is left.
func (p permit) partOf(part *unit.Reach, e *program.Exercise) (left permit, why basis.Said) {
	if part == nil || p.reach == nil {
		return p, ""
	}
	asked := e.Range.Meet(*part)
	met := p.reach.Meet(*part)
	switch {
	case met.Empty():
		return p, basis.Say("no part of {a} is left, which the slot asks for", degrees(*part))
	case !e.Isometric() && met.Arc() < leastArc && asked.Arc() >= leastArc:
		return p, basis.Say("an arc of {a}° is left of {b}, which the slot asks for: under {c}° only holding still", float64(met.Arc()), degrees(*part), float64(leastArc))
	}
	p.reach = &met
	return p, ""
}

// spokenOf are the kinds that limit an exercise: those it names, and those that bind them. Bend nests: a passive limit
// binds every bend of the knee, an active one the loaded bend too.
func spokenOf(e *program.Exercise) []unit.Kind {
	kinds := slices.Clone(e.Kinds)
	add := func(k unit.Kind) {
		if !slices.Contains(kinds, k) {
			kinds = append(kinds, k)
		}
	}
	if e.Names(unit.LoadedBend) {
		add(unit.ActiveBend)
	}
	if e.Range != nil {
		add(unit.PassiveBend)
	}
	return kinds
}

// forbids says why a ruling forbids the exercise; empty where it does not.
func (l *limits) forbids(r ruling, e *program.Exercise) basis.Said {
	a := r.allow
	switch {
	case a.Closed():
		return "closed"
	case a.Grade != "" && e.Work.Rank() > a.Grade.Rank():
		return basis.Say("only {a} work", a.Grade)
	case a.BothOnly && e.Side == program.OneLeg && e.Chain != program.OpenChain:
		return "only with both legs together"
	case a.Part != nil && (e.WeightOnLeg == nil || *e.WeightOnLeg > *a.Part):
		return basis.Say("only {a} % of body weight on the leg", float64(*a.Part))
	case a.PartMass != nil && !l.bears(e, *a.PartMass):
		return basis.Say("only {a} kg on the leg", float64(*a.PartMass))
	case a.Locked != nil && e.Range != nil && e.Range.Arc() > 0 && e.Names(unit.Brace):
		return basis.Say("brace locked at {a}°", float64(*a.Locked))
	}
	return ""
}

// bears reports whether an exercise keeps within a weight on the leg: the share of the newest body mass that it puts there.
// Without the exercise's word on its share, or without a body mass, it does not.
func (l *limits) bears(e *program.Exercise, most unit.Kilograms) bool {
	mass, known := l.mass.Value()
	return e.WeightOnLeg != nil && known && float64(float64(mass)*float64(*e.WeightOnLeg))/100 <= float64(most)
}

// daysFrom lists the days from one day on.
func daysFrom(first unit.Day, n int) []unit.Day {
	list := make([]unit.Day, n)
	for i := range list {
		list[i] = first.AddDays(i)
	}
	return list
}
