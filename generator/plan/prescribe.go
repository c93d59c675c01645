package plan

import (
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// prescribe adds a week to the prescription of a slot, exercise and leg.
func (p *planner) prescribe(slot *program.Slot, e *program.Exercise, side unit.Side, d WeekDose) {
	place := p.weeks[d.Week-1].Place
	setup := p.setup(e)
	device, _ := deviceFor(e, place, setup)
	for i := range p.plan.Prescriptions {
		r := &p.plan.Prescriptions[i]
		if r.Slot == slot && r.Exercise == e && r.Side == side && r.Device == device {
			r.Weeks = append(r.Weeks, d)
			return
		}
	}
	l := p.newLoader(p.thing(slot, e), e, slot, side, place, device)
	r := Prescription{Exercise: e, Slot: slot, Side: side, Role: p.role(side), Device: device, Setup: setup, Weeks: []WeekDose{d}, OneRM: l.max}
	r.Span, r.Way, r.Body, r.StepShare, r.Tonnage = l.span(), l.way, l.body, l.stepShare(&d), l.tonnage(&d)
	r.Volume = l.volume(&d, r.Tonnage)
	r.Mechanics, r.FromIsometric = l.mechanics(&d), l.isometricStart(&d)
	r.Easier, r.Harder = p.neighbour(e.Easier, side, false), p.neighbour(e.Harder, side, true)
	switch {
	case l.logged != nil:
		r.LiftedOn, r.Tested, r.Logged = l.logged.on, l.logged.reach, true
	case l.lift != nil:
		r.LiftedOn, r.Tested = l.lift.On, l.lift.Range
	}
	r.Level = p.level(e)
	for _, s := range p.phase.Sessions {
		if slices.Contains(s.Slots, slot.ID) {
			r.Sessions = append(r.Sessions, s.ID)
		}
	}
	p.plan.Prescriptions = append(p.plan.Prescriptions, r)
}

// neighbour is the easier or harder exercise, where it could be done in every week of the block, at each week's place and as the
// therapist left it. A harder one must have its whole range: who may only rock the pedals is not asked whether to ride. Chosen.
func (p *planner) neighbour(id string, side unit.Side, whole bool) *program.Exercise {
	e := p.program.Exercises[id]
	if e == nil {
		return nil
	}
	if e.Side == program.BothLegs {
		side = unit.Both
	}
	bound := p.knees.involves(e, side)
	for _, w := range p.weeks {
		_, lacks := deviceFor(e, w.Place, p.setup(e))
		left, why := p.mayDo(e, side, w, bound)
		narrowed := left.reach != nil && e.Range != nil && !e.Range.Within(*left.reach)
		begins := bound && p.pausedIn(w.Number) && !goesOnInPause(e) && !p.didBefore(e, side)
		if lacks != "" || why != "" || whole && narrowed || begins {
			return nil
		}
	}
	return e
}

// thing is the beginning of the ids of an exercise; in a second slot it carries the slot's name.
func (p *planner) thing(slot *program.Slot, e *program.Exercise) string {
	if first, used := p.things[e.ID]; used && first != slot.ID {
		return e.ID + "-in-" + slot.ID
	}
	p.things[e.ID] = slot.ID
	return e.ID
}

func (p *planner) setup(e *program.Exercise) *client.Setup {
	if s, typed := p.client.Setups[e.ID]; typed {
		return &s
	}
	return nil
}

// doseOf is what a slot asks of a leg in a week, through the range that is left.
func (p *planner) doseOf(slot *program.Slot, e *program.Exercise, side unit.Side, w Week, left permit) WeekDose {
	d := WeekDose{Week: w.Number, Starts: w.Starts, Due: w.Number == 1, Dose: p.held(slot, e, side, w), Range: left.reach, RangeBy: left.measured, Bends: left.bends}
	if slot.OtherSets != nil && side != unit.Both && !p.own(side) {
		d.Dose.Sets = slot.OtherSets
	}
	if lighter := p.lighterWeek(w.Number); lighter != nil {
		d.Dose = lighter.Lighter(d.Dose)
	}
	return d
}
