package plan

import (
	"cmp"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Choosing (rules 5 to 8): for each slot, week and leg the first of its exercises that limits, place and knee allow.

// planner carries what a plan is made of while it is made.
type planner struct {
	program  *program.Program
	client   *client.Client
	event    *client.Event
	block    *client.Block
	found    *finding.Findings
	knees    knees
	phase    *program.Phase
	symptoms Symptoms
	weeks    []Week
	plan     *Plan
	logs
	things  map[string]string // exercise -> slot that first used its ids
	missed  map[string]int    // exercise and leg -> weeks without it, where its load begins a step lower
	earlier []*Plan           // what the client did before a pause; nil until somebody asks
}

// fillSlots makes the prescriptions of all slots that a session uses, in the order of the sessions.
func (p *planner) fillSlots() {
	var order []string
	for _, s := range p.phase.Sessions {
		for _, id := range s.Slots {
			if !slices.Contains(order, id) {
				order = append(order, id)
			}
		}
	}
	for _, id := range order {
		slot := p.phase.Slot(id)
		for _, side := range p.knees.sides() {
			if !p.own(side) && !p.knees.sameDay(side) && slot.Legs == program.OperatedOnly {
				continue
			}
			for _, w := range p.weeks {
				p.choose(slot, side, w)
			}
		}
	}
}

// choose takes the first exercise of a slot that can be done by a leg in a week.
func (p *planner) choose(slot *program.Slot, side unit.Side, w Week) {
	var passed []Dropped
	second := side != p.knees.sides()[0]
	for _, id := range slot.Choose {
		e := p.program.Exercises[id]
		legs := side
		if e.Side == program.BothLegs {
			legs = unit.Both
			if second && p.prescribed(slot, e, legs, w.Number) {
				p.drop(passed, false)
				return // the operated leg's line speaks of both
			}
			if second {
				continue // what the operated leg may not do, both together may not
			}
		}
		dose, why := p.dose(slot, e, legs, w)
		if why == "" {
			why = p.newInPause(slot, e, legs, w)
		}
		if why == "" {
			p.prescribe(slot, e, legs, dose)
			p.drop(passed, false)
			return
		}
		passed = append(passed, Dropped{Slot: slot.ID, Exercise: id, Side: legs, Week: w.Number, Because: why, Paused: p.knees.involves(e, legs) && (p.heldBack(e, w.Number) != "" || p.newInPause(slot, e, legs, w) != "")})
	}
	p.drop(passed, true)
}

// drop notes the choices passed over; where the slot is left empty the last one says so.
func (p *planner) drop(passed []Dropped, empty bool) {
	for i, d := range passed {
		d.Empty = empty && i == len(passed)-1
		p.plan.Dropped = append(p.plan.Dropped, d)
	}
}

func (p *planner) prescribed(slot *program.Slot, e *program.Exercise, side unit.Side, week int) bool {
	for _, r := range p.plan.Prescriptions {
		if r.Slot == slot && r.Exercise == e && r.Side == side && slices.ContainsFunc(r.Weeks, func(w WeekDose) bool { return w.Week == week }) {
			return true // on whichever device of the week's place
		}
	}
	return false
}

// dose says what is to be done in a week, or why the exercise is passed over.
func (p *planner) dose(slot *program.Slot, e *program.Exercise, side unit.Side, w Week) (d WeekDose, passOver basis.Said) {
	bound := p.knees.involves(e, side)
	left, why := p.mayDo(e, side, w, bound)
	if why == "" {
		left, why = left.partOf(slot.RangeIn(w.PhaseWeek), e)
	}
	if why != "" {
		return d, why
	}
	setup := p.setup(e)
	device, lacks := deviceFor(e, w.Place, setup)
	if lacks != "" {
		return d, lacks
	}
	d = p.doseOf(slot, e, side, w, left)
	if !bound {
		d.Range = p.testedRange(e, side, device, w.Place, d.Range)
	}
	if why := p.override(&d, e, side); why != "" {
		return d, why
	}
	if p.setLess(e, side, w.Number) {
		d.Dose.Sets, d.Dose.Rounds = oneLess(d.Dose.Sets), oneLess(d.Dose.Rounds)
	}
	l := p.newLoader(p.thing(slot, e), e, slot, side, w.Place, device)
	l.weeksEarned = l.earned(w.Number)
	if why := l.fill(&d, l.growth); why != "" {
		return d, why
	}
	if l.tooLightBefore(w.Number) {
		return d, lighterThanPin
	}
	p.overrideLoad(&d, l)
	if d.FindYourWeight && p.aloneEarly(w) {
		return d, foundTogether
	}
	l.holdTarget(&d)
	l.stimulation(&d)
	d.NearPin, d.PinDeg = pinFor(setup, d.Range)
	return d, ""
}

// oneLess is one set or round less, and never none.
func oneLess(n *int) *int {
	if n == nil || *n < 2 {
		return n
	}
	fewer := *n - 1
	return &fewer
}

// testedRange keeps the leg that no limit binds to the range in which its lift was tested: both legs are then worked
// alike, and the load holds.
func (p *planner) testedRange(e *program.Exercise, side unit.Side, device *client.Device, place *client.Place, reach *unit.Reach) *unit.Reach {
	l := &loader{lift: p.newestLift(e.ID, place, device), logged: p.loggedFor(e, side, place, device)}
	tested, _ := l.tested()
	if tested == nil || reach == nil {
		return reach
	}
	if met := reach.Meet(*tested); !met.Empty() {
		return &met
	}
	return reach
}

// role says what a leg is to the client.
func (p *planner) role(side unit.Side) string {
	switch {
	case side == unit.Both:
		return "both"
	case p.own(side) && p.event.Kind == client.Operation, p.knees.operatedToo(side):
		return "operated"
	case p.own(side):
		return "index"
	case p.client.OtherLeg == unit.Donor:
		return "donor"
	}
	return "other"
}

// own reports whether a leg is the event's.
func (p *planner) own(side unit.Side) bool { return side == p.event.Side || p.event.Side == unit.Both }

// heldBack says why symptoms keep the event's knee from an exercise; empty where they do not. A pause leaves range,
// quad sets and swelling care; a step back leaves out impact (rules 27).
func (p *planner) heldBack(e *program.Exercise, week int) basis.Said {
	switch a, because := p.symptoms.in(week); {
	case a.Rank() >= Pause.Rank() && restsInPause(e):
		return basis.Say("{a}: {b}", a, because)
	case a == StepBack && isImpact(e):
		return basis.Say("{a}, no impact: {b}", a, because)
	}
	return ""
}

// unopened says which activity the therapist has not opened, or which is suspended; empty where none keeps the exercise
// closed (rules 17).
func (p *planner) unopened(e *program.Exercise) basis.Said {
	for _, a := range p.plan.Activities {
		asks := a.Activity.ID == e.Activity
		if e.Activity == "" {
			asks = slices.ContainsFunc(a.Activity.Kinds, e.Names)
		}
		if asks && a.State != "open" {
			return basis.Say("{a} is {b}", a.Activity.ID, basis.Said(a.State))
		}
	}
	return ""
}

// LoadsKnee reports whether an exercise is loaded or impact work of the knee.
func LoadsKnee(e *program.Exercise) bool {
	for _, k := range []unit.Kind{unit.LoadedBend, unit.StraighteningUnderLoad, unit.AddedWeight, unit.MaximalEffort} {
		if e.Names(k) {
			return true
		}
	}
	standing := e.Names(unit.WeightBearing) && (e.ResistedBy == program.External || e.ResistedBy == program.Body)
	return standing || isImpact(e) || e.Names(unit.HamstringWork) && e.Work.Rank() >= unit.Resisted.Rank()
}

func isImpact(e *program.Exercise) bool {
	for _, k := range []unit.Kind{unit.Impact, unit.Running, unit.Twisting, unit.Contact} {
		if e.Names(k) {
			return true
		}
	}
	return e.ResistedBy == program.FootContacts
}

// mayDo is what limits, knee and therapist leave of an exercise in a week, or why it may not be done.
func (p *planner) mayDo(e *program.Exercise, side unit.Side, w Week, bound bool) (left permit, why basis.Said) {
	if bound {
		if why := p.heldBack(e, w.Number); why != "" {
			return left, why
		}
	}
	if bound || p.knees.operatedToo(side) {
		if why := p.unopened(e); why != "" {
			return left, why
		}
	}
	left = p.asMeasured(p.knees.permits(e, daysFrom(w.Starts, 7), side), e, side, w.Number)
	switch {
	case !left.allowed:
		return left, cmp.Or(left.because, "closed")
	case p.leftOut(e, side):
		return left, "left out by the therapist"
	}
	return left, ""
}
