package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Loads (rules 19 to 25). A load comes from a lift of that exercise on that device: estimated maximum × what repetitions
// and reserve allow, grown by the week, less what moves with it, cut down to the step. Logged sets take the place of a lift
// that is older than the block before (logged.go). Without either the client finds the weight. Nothing carries across machines.

// loader computes the loads of one exercise, device and leg.
type loader struct {
	*planner
	thing  string // of the ids: the exercise, with the slot where it stands in two
	e      *program.Exercise
	slot   *program.Slot
	side   unit.Side
	place  *client.Place
	device *client.Device
	lift   *finding.LiftTest
	logged *loggedLoad // in the place of an older lift
	way    finding.Way
	body   *finding.Body // what moves of the body; nil: none
	max    basis.Num[unit.Kilograms]
	whyNot basis.Said // no lift that counts
	weeksEarned
}

var byNoLift = basis.Rule{Name: "estimated maximum"}

// newLoader finds the lift behind a load.
func (p *planner) newLoader(thing string, e *program.Exercise, slot *program.Slot, side unit.Side, place *client.Place, device *client.Device) *loader {
	l := &loader{planner: p, thing: thing, e: e, slot: slot, side: side, place: place, device: device, way: wayOf(p.program, e), body: p.plan.body(e)}
	l.lift = p.newestLift(e.ID, place, device)
	l.logged = p.loggedFor(e, side, place, device)
	switch {
	case device == nil || !weighs(device):
		l.whyNot = "no weight can be set on the device"
	case e.Side == program.BothLegs:
		l.max, l.whyNot = p.bothMax(l)
	default:
		l.max, l.whyNot = l.source()
	}
	if l.whyNot != "" {
		l.max = basis.Refused[unit.Kilograms](l.id("one-rm-missing"), byNoLift, l.whyNot)
	}
	return l
}

// id names a number that holds for all weeks on one device.
func (l *loader) id(quantity string) string {
	where := "no-device"
	if l.device != nil {
		where = l.device.ID
	}
	return l.thing + "." + string(l.side) + "." + l.place.ID + "-" + where + "." + quantity
}

func (l *loader) weekID(week int, quantity string) string {
	return fmt.Sprintf("%s.%s.w%d.%s", l.thing, l.side, week, quantity)
}

// newestLift is the newest lift of an exercise on a device, after the event.
func (p *planner) newestLift(exercise string, place *client.Place, device *client.Device) (found *finding.LiftTest) {
	for i := range p.found.Lifts {
		t := &p.found.Lifts[i]
		if t.Exercise == exercise && device != nil && t.Device == device.ID && t.Place == place.ID && !t.On.Before(p.event.Date) {
			found = t
		}
	}
	return found
}

// ByBothCap is the cap of a lift with both legs.
var (
	ByBothCap = basis.Rule{Name: "both legs: at most twice the weaker leg's own", Sum: "min($1, 2 × $2)", Source: "tool default; until symmetry reaches 90"}
	byWeaker  = basis.Rule{Name: "the weaker leg", Sum: "min($1, $2)"}
)

// evenEnough is the symmetry from which a lift with both legs is no longer capped by the weaker one. Tool default.
const evenEnough unit.Percent = 90

// bothMax is the maximum behind a lift with both legs: its own test, capped by twice the weaker leg's own maximum on the
// same device until the legs are even. Without its own test there is none, for nothing else says how deep it was gone (rules
// 24); without a test of each leg there is none either: the strong leg would do the work.
func (p *planner) bothMax(l *loader) (basis.Num[unit.Kilograms], basis.Said) {
	single := p.singleLift(l.e, l.place, l.device)
	own, why := l.source()
	switch {
	case !own.OK():
		return own, why
	case single == nil || !single.Left.OneRM.OK() || !single.Right.OneRM.OK():
		return own, "no lift of each leg alone on this machine"
	}
	// above finding.TooStrong the other leg is the weaker one by far: then it is its maximum that caps
	if lsi, ok := single.LSI.Value(); ok && lsi >= evenEnough && lsi <= finding.TooStrong {
		return own, ""
	}
	weaker := basis.Of2(l.id("weaker-one-rm"), byWeaker, func(a, b unit.Kilograms) unit.Kilograms { return min(a, b) }, single.Left.OneRM, single.Right.OneRM)
	return basis.Of2(l.id("one-rm"), ByBothCap, func(own, w unit.Kilograms) unit.Kilograms {
		return min(own, unit.Kilograms(2*float64(w)))
	}, own, weaker), ""
}

// singleLift is the newest lift of one leg at a time on a device that works the same muscle first: hand weights serve many exercises.
func (p *planner) singleLift(both *program.Exercise, place *client.Place, device *client.Device) (found *finding.LiftTest) {
	for i := range p.found.Lifts {
		t := &p.found.Lifts[i]
		e := p.program.Exercises[t.Exercise]
		if e != nil && e.Side == program.OneLeg && e.Trains[0] == both.Trains[0] && t.Device == device.ID && t.Place == place.ID && !t.On.Before(p.event.Date) {
			found = t
		}
	}
	return found
}

var byDose = basis.Rule{Name: "dose of the program", Source: "program"}

// fill computes the load of one week into a dose; where there is none it says to find the weight. It returns a reason
// to pass the exercise over: the machine cannot be set so low.
func (l *loader) fill(w *WeekDose, growth int) (passOver basis.Said) {
	if l.e.ResistedBy != program.External && !l.onBand() {
		return ""
	}
	if why := l.allOutClosed(w); why != "" {
		return why
	}
	switch l.slot.Method {
	case program.CuffedMethod:
		return l.cuffed(w)
	case program.DailyAdjusted:
		return l.daily(w)
	}
	if why := l.missing(w); why != "" {
		w.FindYourWeight, w.Why = !l.onBand(), why
		return ""
	}
	load := l.planned(w, growth)
	switch {
	case !load.OK():
		w.FindYourWeight, w.Why = !l.onBand(), load.Why()
		return ""
	case l.onBand():
		l.stretched(w, l.lightened(load, w.Week))
		return ""
	}
	w.Plates, load = l.putLightened(load, w.Week)
	if !w.Plates.OK() {
		return w.Plates.Why()
	}
	l.moved(w)
	l.afterCut(w)
	l.moreReps(w, load)
	l.sharesOf(w, load)
	return ""
}

// planned is the load of a week as moved, before the cut: the share that the dose allows, grown by the weeks earned, held down where
// a log or symptoms ask for it. It is missing where the equation knows no share for so many repetitions.
func (l *loader) planned(w *WeekDose, growth int) basis.Num[unit.Kilograms] {
	load := l.stepUp(l.allowed(w), w)
	return l.steppedBack(load, l.steppedLower(l.grown(load, w.Week, growth), w.Week), w)
}

// allowed is the share of the maximum that repetitions and reserve allow; where a logged set was done as asked with more than that,
// of its maximum (asdone.go).
func (l *loader) allowed(w *WeekDose) basis.Num[unit.Kilograms] {
	n := basis.Try2(l.weekID(w.Week, "to-failure"), formula.ByToFailure, formula.ToFailure, l.count("reps", w.Dose.Reps), l.count("reserve", w.Dose.Reserve))
	share := l.way.Share(l.weekID(w.Week, "planned-share"), n)
	of := func(max basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
		return basis.Of2(l.weekID(w.Week, "working-load"), formula.ByWorkingLoad, formula.WorkingLoad, max, share)
	}
	load := of(l.max)
	if done := l.doneAsAsked(w); done != nil && load.Or(0) < done.moved.Or(0) {
		l.logged, l.max = done, done.max
		load = of(l.max)
	}
	return load
}

// moved is all that moves with what is put on.
func (l *loader) moved(w *WeekDose) {
	w.Moved = finding.Moved(l.weekID(w.Week, "moved"), w.Plates, l.place, l.device, l.body)
	w.PerSide = perSide(w.Plates.Or(0), l.device)
}

// missing says why there is no load.
func (l *loader) missing(w *WeekDose) basis.Said {
	if l.whyNot == "" && (w.Dose.Reps == nil || w.Dose.Reserve == nil) {
		return "the dose has no repetitions in reserve"
	}
	return l.whyFind(w)
}

// whyFind says why no load of any dose can be told: no lift, or one that says nothing of this range.
func (l *loader) whyFind(w *WeekDose) basis.Said {
	tested, ok := l.tested()
	switch {
	case l.whyNot != "":
		return l.whyNot
	case !ok:
		return ""
	}
	return l.beyond(tested, w.Range)
}

// beyond says how work goes further than was tested; empty where it does not.
func (l *loader) beyond(tested, work *unit.Reach) basis.Said {
	switch {
	case work == nil:
		return ""
	case tested == nil:
		return "the lift does not say through which range"
	case work.MostBent > tested.MostBent:
		return basis.Say("the work goes deeper ({a}°) than was tested ({b}°)", float64(work.MostBent), float64(tested.MostBent))
	case work.Straightest < tested.Straightest && l.e.Names(unit.StraighteningUnderLoad):
		return basis.Say("the work goes straighter ({a}°) than was tested ({b}°)", float64(work.Straightest), float64(tested.Straightest))
	}
	return ""
}

func (l *loader) count(what string, n *int) basis.Num[unit.Count] {
	return basis.Given(fmt.Sprintf("%s.%d.%s", l.slot.ID, *n, what), byDose, unit.Count(*n), basis.Say("{a} of slot {b}", basis.Said(what), l.slot.ID))
}

// grown adds the weekly growth of earned weeks: the unrounded load is compounded.
func (l *loader) grown(load basis.Num[unit.Kilograms], week, growth int) basis.Num[unit.Kilograms] {
	if growth <= 0 || l.slot.WeeklyPercent <= 0 {
		return load
	}
	percent := basis.Given(l.slot.ID+".weekly-percent", byDose, l.slot.WeeklyPercent, basis.Say("weekly growth of slot {a}", l.slot.ID))
	weeks := basis.Given(fmt.Sprintf("%s.%d.growth-weeks", l.slot.ID, growth), byDose, unit.Weeks(growth), "weeks earned before this one")
	return basis.Of3(l.weekID(week, "ceiling"), formula.ByCeiling, formula.Ceiling, load, percent, weeks)
}

// afterCut says what the cut load really asks: its share of the maximum and the repetitions left (rules 21).
func (l *loader) afterCut(w *WeekDose) {
	w.Share = basis.Try2(l.weekID(w.Week, "share"), formula.ByTrueShare, formula.TrueShare, w.Moved, l.max)
	toFailure := l.way.ToFailureAt(l.weekID(w.Week, "implied-to-failure"), l.max, w.Moved)
	w.Implied = basis.Of2(l.weekID(w.Week, "implied-reserve"), formula.ByImpliedReserve, formula.ImpliedReserve, toFailure, l.count("reps", w.Dose.Reps))
}
