package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A printed range is held against what the leg was measured to do (rules 7): nobody is asked to press through a bend that
// the knee does not have. A measurement only narrows; where none was made, the limits alone hold, and a flag says so.

// aLittleFurther is how far beyond its measured bend a knee may be taken for each week of the block, by exercises whose aim
// is range: next week's figure is a ceiling like any other. Tool default: published milestones go faster than ten degrees
// a week (wk 1 90, wk 2 105, wk 3 to 4 125).
const aLittleFurther unit.Degrees = 10

// ends are the newest measured ends of a leg's range, up to the block's first day and after what happened to that leg.
type ends struct {
	side               unit.Side
	straight, bend     unit.Degrees
	straightOn, bendOn unit.Day // zero: not measured
}

// endsOf are the measured ends of a leg.
func (p *planner) endsOf(side unit.Side) ends {
	e, since := ends{side: side}, p.knees.of[side].event.Date
	for _, k := range p.found.Knees {
		if k.On.Before(since) {
			continue
		}
		angles := k.Left
		if side == unit.Right {
			angles = k.Right
		}
		if v, ok := angles.Straight.Value(); ok {
			e.straight, e.straightOn = v, k.On
		}
		if v, ok := angles.Flexion.Value(); ok {
			e.bend, e.bendOn = v, k.On
		}
	}
	return e
}

// reach is how far an exercise may ask a leg to go in a week of the block. Loaded work stays between the measured ends.
// Other work may go as straight as it likes, since quad sets and heel props are there to win what lacks; of bend, exercises
// for range ask a little more than there is.
func (e ends) reach(x *program.Exercise, week int) unit.Reach {
	r := unit.Full
	if !e.bendOn.IsZero() {
		r.MostBent = e.bend
		if forRange(x) {
			r.MostBent += unit.Degrees(float64(aLittleFurther) * float64(week))
		}
	}
	if !e.straightOn.IsZero() && underLoad(x) {
		r.Straightest = max(r.Straightest, e.straight)
	}
	return r
}

// says names the end that narrows a range.
func (e ends) says(narrow, before unit.Reach) basis.Said {
	if before.MostBent > narrow.MostBent {
		return basis.Say("the {a} knee bends to {b}° ({c})", e.side, float64(e.bend), e.bendOn)
	}
	return basis.Say("the {a} knee lacks {b}° of straight ({c})", e.side, float64(e.straight), e.straightOn)
}

// underLoad reports whether an exercise loads the knee through its range.
func underLoad(x *program.Exercise) bool {
	return slices.ContainsFunc([]unit.Kind{unit.LoadedBend, unit.StraighteningUnderLoad, unit.AddedWeight}, x.Names)
}

// forRange reports whether the aim of an exercise is range, without load.
func forRange(x *program.Exercise) bool {
	return slices.Contains(x.Trains, "range") && !underLoad(x)
}

// asMeasured narrows a permit to what every leg that the exercise works was measured to do.
func (p *planner) asMeasured(left permit, x *program.Exercise, side unit.Side, week int) permit {
	if !left.allowed || left.reach == nil {
		return left
	}
	for _, s := range p.knees.sides() {
		if side != s && side != unit.Both && !x.LoadsBoth {
			continue
		}
		leg, before := p.endsOf(s), *left.reach
		narrow := leg.reach(x, week)
		met := before.Meet(narrow)
		if met == before {
			continue
		}
		why := leg.says(narrow, before)
		switch {
		case met.Empty():
			return denied("{a}: no part of the allowed range is left", why)
		case underLoad(x) && !x.Isometric() && met.Arc() < leastArc && x.Range.Arc() >= leastArc:
			return denied("{a}: an arc of {b}° is left, under {c}° only holding still", why, float64(met.Arc()), float64(leastArc))
		}
		left.reach, left.measured = &met, why
		if forRange(x) {
			left.bends = &leg.bend
		}
	}
	return left
}

// flagMeasured says where a range of the event's knee is printed that nobody has held against the knee.
func (p *planner) flagMeasured() {
	for _, s := range p.knees.sides() {
		prints := func(r Prescription) bool {
			return (r.Side == s || r.Side == unit.Both) && r.Weeks[0].Range != nil && r.Weeks[0].Range.MostBent > 0
		}
		if (p.own(s) || p.knees.sameDay(s)) && p.endsOf(s).bendOn.IsZero() && slices.ContainsFunc(p.plan.Prescriptions, prints) {
			p.flag("bend-not-measured", "flexion", "the bend of the {a} knee has not been measured since the event: printed ranges rest on limits alone", s)
		}
	}
}
