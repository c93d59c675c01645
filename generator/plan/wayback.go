package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Stay and step back in loads (rules 22, 27). Asked for by the block's first day, stay begins the growth a week later; a step
// back lowers the first week, and the way back is one change a week: the load by a step in the second, the set in the third,
// then a step a week again. What comes to light in the block holds from its week to the block's end.

// stepBackTo is what a step back leaves of a load at most; common practice, no source.
const stepBackTo = 0.9

var (
	byStepBack = basis.Rule{Name: "step back: a step or a tenth less, whichever is more", Sum: "min($1 × 0.9, $1 − $2)", Source: "common practice, no source"}
	byWayBack  = basis.Rule{Name: "the way back: a step a week", Sum: "min($1, $2 + $3 × $4)", Source: "common practice, no source"}
	byStepKept = basis.Rule{Name: "the lower of both", Sum: "min($1, $2)", Source: "the strictest wins"}
)

// setComesBack is the week after a step back, counted from 0, in which the set comes back and the load rests.
const setComesBack = 2

// delay is by how many weeks the growth begins later: stay and step back repeat the first week's load. What is first done in a
// later week has waited already.
func (p *planner) delay(e *program.Exercise, side unit.Side, first int) int {
	if first > 1 {
		return 0
	}
	before := Symptoms{Action: NoAction}
	for _, g := range p.symptoms.Signals {
		if g.Since == 0 && g.Exercise == "" {
			before.weigh(g)
		}
	}
	rested := before.Level == "session" && before.Action.Rank() >= Pause.Rank() // over after the first week, which then earned nothing
	if before.Action == Stay || before.Action == StepBack || rested || p.backsFirst(e, side) {
		return 1
	}
	return 0
}

// lastGrowing is the week whose growth a week has: its own, or the one before stay, step back or a pause came to light. In a pause the other
// leg goes on, and no further: its handout says "no more than this", so no page may print a ceiling that rises.
func (p *planner) lastGrowing(e *program.Exercise, week int) int {
	for _, g := range p.symptoms.Signals {
		lasting := g.Action.Rank() >= Pause.Rank() && g.Level != "session"
		if (g.Since > 0 || lasting) && g.Since <= week && g.speaksOf(e) {
			week = max(1, g.Since-1)
		}
	}
	return week
}

// speaksOf reports whether a signal is of the whole knee or of this exercise.
func (g Signal) speaksOf(e *program.Exercise) bool { return g.Exercise == "" || g.Exercise == e.ID }

// backs reports whether a leg steps back in an exercise in some week: for the whole knee, or for this exercise alone.
func (p *planner) backs(e *program.Exercise, side unit.Side) bool {
	return p.backsFirst(e, side) || p.backsIn(e, side, len(p.weeks))
}

// backsFirst reports whether a step back was asked for by the block's first day.
func (p *planner) backsFirst(e *program.Exercise, side unit.Side) bool {
	return p.steppingBack(e, side, func(g Signal) bool { return g.Since == 0 })
}

// backsIn reports whether a step back that came to light in the block holds in a week.
func (p *planner) backsIn(e *program.Exercise, side unit.Side, week int) bool {
	return p.steppingBack(e, side, func(g Signal) bool { return g.Since > 0 && g.Since <= week })
}

func (p *planner) steppingBack(e *program.Exercise, side unit.Side, counts func(Signal) bool) bool {
	if side != unit.Both && !p.own(side) && !p.knees.sameDay(side) {
		return false
	}
	for _, g := range p.symptoms.Signals {
		if g.Action == StepBack && g.speaksOf(e) && counts(g) {
			return true
		}
	}
	return false
}

// setLess reports whether a week has one set less.
func (p *planner) setLess(e *program.Exercise, side unit.Side, week int) bool {
	return p.backsIn(e, side, week) || p.lastGrowing(e, week)-1 < setComesBack && p.backsFirst(e, side)
}

// steppedBack takes a step or a tenth off a week's load where symptoms ask for it, and leads back a step a week. first is the
// load of the first week, load the one of this week, both before the step back.
func (l *loader) steppedBack(first, load basis.Num[unit.Kilograms], w *WeekDose) basis.Num[unit.Kilograms] {
	less := func(id string, x basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
		return basis.Of2(l.weekID(w.Week, id), byStepBack, func(x, s unit.Kilograms) unit.Kilograms {
			return max(0, min(unit.Kilograms(stepBackTo*float64(x)), x-s))
		}, x, stepOf(l.place, l.device))
	}
	back := load
	if l.backsFirst(l.e, l.side) {
		back = l.wayBack(less("stepped-back", first), load, w)
	}
	if !l.backsIn(l.e, l.side, w.Week) {
		return back
	}
	now := less("stepped-back-now", load)
	return basis.Of2(l.weekID(w.Week, "stepped-back-kept"), byStepKept, func(a, b unit.Kilograms) unit.Kilograms { return min(a, b) }, back, now)
}

// wayBack is the load of a week after a step back of the first one: a step more a week, but in the one in which the set comes
// back, and never more than without the step back.
func (l *loader) wayBack(lowest, load basis.Num[unit.Kilograms], w *WeekDose) basis.Num[unit.Kilograms] {
	steps := l.climbed
	if steps == 0 {
		return lowest
	}
	if steps >= setComesBack {
		steps--
	}
	climbed := basis.Given(l.weekID(w.Week, "steps-back-up"), byDose, unit.Count(steps), "steps since the step back")
	return basis.Of4(l.weekID(w.Week, "way-back"), byWayBack, func(top, x, step unit.Kilograms, n unit.Count) unit.Kilograms {
		return min(top, x+unit.Kilograms(float64(step)*float64(n)))
	}, load, lowest, stepMoved(l.place, l.device), climbed)
}
