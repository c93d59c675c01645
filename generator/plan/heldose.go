package plan

import (
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// held is the dose of a week of the phase, held down by symptoms: what goes on during a pause does not grow, and after stay
// minutes, rounds and landings grow a week later, as loads do (rules 22, 27). It only ever takes away.
func (p *planner) held(slot *program.Slot, e *program.Exercise, side unit.Side, w Week) program.Dose {
	dose := slot.DoseFor(e, w.PhaseWeek)
	if side != unit.Both && !p.own(side) && !p.knees.sameDay(side) {
		return dose
	}
	as := w.Number
	switch action, _ := p.symptoms.in(w.Number); {
	case action.Rank() >= Pause.Rank():
		as = 1
	case action == Stay:
		as = max(1, w.Number-1)
	}
	if as == w.Number {
		return dose
	}
	before := slot.DoseFor(e, p.weeks[as-1].PhaseWeek)
	dose.Minutes, dose.Contacts, dose.Rounds = fewer(dose.Minutes, before.Minutes), fewer(dose.Contacts, before.Contacts), fewer(dose.Rounds, before.Rounds)
	return dose
}

// fewer is the smaller of two numbers; of one that is not said, the other stands.
func fewer(now, before *int) *int {
	if now == nil || before == nil || *now <= *before {
		return now
	}
	return before
}
