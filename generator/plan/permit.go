package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// leastArc is the width of a range below which a knee is only held still. Common practice, no source (rules 7).
const leastArc unit.Degrees = 20

// permit is what the limits leave of an exercise.
type permit struct {
	allowed bool
	because string      // why not
	reach   *unit.Reach // what is left of its range; nil where it has none

	measured string        // which measured end narrowed the range; empty where none did
	bends    *unit.Degrees // of an exercise for range that a measurement narrowed: how far the knee bends
}

func denied(format string, args ...any) permit { return permit{because: fmt.Sprintf(format, args...)} }

// permits weighs an exercise against the limits of a stretch of days: the strictest of any of its days holds.
func (l *limits) permits(e *program.Exercise, days []unit.Day) permit {
	p := permit{allowed: true, reach: e.Range}
	var narrowed string
	for _, d := range days {
		for _, k := range spokenOf(e) {
			r := l.rule(k, e.Kinds, d)
			if why := l.forbids(r, e); why != "" {
				return denied("%s: %s (%s)", k, why, r.setBy())
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
		return denied("no part of its range is allowed (%s)", narrowed)
	case !e.Isometric() && p.reach.Arc() < leastArc && e.Range.Arc() >= leastArc:
		return denied("an arc of %g° is left: under %g° only holding still (%s)", float64(p.reach.Arc()), float64(leastArc), narrowed)
	}
	return p
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
func (l *limits) forbids(r ruling, e *program.Exercise) string {
	a := r.allow
	switch {
	case a.Closed():
		return "closed"
	case a.Grade != "" && e.Work.Rank() > a.Grade.Rank():
		return fmt.Sprintf("only %s work", a.Grade)
	case a.BothOnly && e.Side == program.OneLeg && e.Chain != program.OpenChain:
		return "only with both legs together"
	case a.Part != nil && (e.WeightOnLeg == nil || *e.WeightOnLeg > *a.Part):
		return fmt.Sprintf("only %g %% of body weight on the leg", float64(*a.Part))
	case a.PartMass != nil && !l.bears(e, *a.PartMass):
		return fmt.Sprintf("only %g kg on the leg", float64(*a.PartMass))
	case a.Locked != nil && e.Range != nil && e.Range.Arc() > 0 && e.Names(unit.Brace):
		return fmt.Sprintf("brace locked at %g°", float64(*a.Locked))
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
