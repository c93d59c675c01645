package plan

import (
	"fmt"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Repetitions first, then load (rules 23; double progression): a slot of reps to reps_to keeps its load until every set of the
// newest day has reached reps_to with the reserve, on a calm knee. Then the load goes one step of the device up, where that is
// predicted to be done reps times with the reserve, and repetitions begin at reps again. The load is worked out for reps.

// repsFirst holds a load against the logged one: it rises by an earned step or not at all.
func (l *loader) repsFirst(load basis.Num[unit.Kilograms], w *WeekDose) basis.Num[unit.Kilograms] {
	if l.max.ID() == l.logged.max.ID() {
		if step := l.earnedStep(w); step.OK() {
			return step
		}
	}
	return l.asLogged(load, w, basis.Say("repetitions first: no step before every set has reached {a} with {b} in reserve", *w.Dose.RepsTo, *w.Dose.Reserve))
}

// earnedStep is the load one step above that of the newest day; missing where that day has not earned it.
func (l *loader) earnedStep(w *WeekDose) (step basis.Num[unit.Kilograms]) {
	lines := l.lines(l.e, l.side, l.place, l.device)
	if len(lines) == 0 || l.restless(lines[len(lines)-1].Done.On) != "" {
		return step
	}
	t := lines[len(lines)-1]
	fewest := t.toTheTop(w)
	if fewest < 0 || !l.counts(t) || l.beyond(t.dose.Range, w.Range) != "" {
		return step
	}
	name := fmt.Sprintf("set-%d-", fewest+1)
	done := l.estimateFrom(t, t.Reps[fewest].Named(t.id(name+"reps")), name)
	if done == nil {
		return step
	}
	next := nextSetting(l.weekID(w.Week, "next-setting"), t.Load.Named(t.id("plates")).On(t.Done.On), l.place, l.device)
	if !next.OK() {
		return step
	}
	up := finding.Moved(l.weekID(w.Week, "step-earned"), next, l.place, l.device, l.body).Because("every set reached the top with the reserve")
	needed, err := formula.RepsNeeded(done.moved.Or(0), up.Or(0), unit.Count(*w.Dose.Reps+*w.Dose.Reserve))
	if err != nil || needed > min(t.Reps[fewest].Or(0)+t.Reserve.Or(0), formula.OneRMRefusedAbove)+crumbOfCount {
		return step
	}
	l.logged, l.max = done, done.max
	return up
}

// toTheTop is the set of a line with the fewest repetitions, where all that were asked for have reached the top with the reserve;
// below 0 where not.
func (t *told) toTheTop(w *WeekDose) (fewest int) {
	asked := t.dose.Dose
	if len(t.dose.Each) > 0 || asked.Sets == nil || len(t.Reps) < *asked.Sets || t.Reserve.Or(0) < unit.Count(*w.Dose.Reserve) {
		return -1
	}
	for i, r := range t.Reps {
		if r.Or(0) < unit.Count(*w.Dose.RepsTo) {
			return -1
		}
		if r.Or(0) < t.Reps[fewest].Or(0) {
			fewest = i
		}
	}
	return fewest
}

var (
	byNextSetting = basis.Rule{Name: "the next setting of the device", Sum: "$1 + $2", Source: "clinic.toml"}
	byNextPin     = basis.Rule{Name: "the next setting of the device: the next pin without the add-on", Sum: "$1 + $2 − $3", Source: "clinic.toml"}
)

// nextSetting is the next heavier setting of a device above one; missing where the device ends.
func nextSetting(id string, on basis.Num[unit.Kilograms], place *client.Place, d *client.Device) (next basis.Num[unit.Kilograms]) {
	plus := func(a, b unit.Kilograms) unit.Kilograms { return a + b }
	step, add := stepOf(place, d), smallestStep(place, d)
	switch over := float64(on.Or(0)-d.Lightest.Or(0)) / float64(step.Or(0)); {
	case add.Or(0) == step.Or(0):
		next = basis.Of2(id, byNextSetting, plus, on, step)
	case math.Abs(over-math.Round(over)) < float64(crumb):
		next = basis.Of2(id, byNextSetting, plus, on, add)
	default:
		next = basis.Of3(id, byNextPin, func(a, b, c unit.Kilograms) unit.Kilograms { return a + b - c }, on, step, add)
	}
	if heaviest, ok := d.Heaviest.Value(); ok && next.Or(0) > heaviest+crumb {
		return basis.Num[unit.Kilograms]{}
	}
	return next
}
