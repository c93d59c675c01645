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

// The smallest sensible step, and how much a session asks of a leg in all. Both are for the worksheet and change no dose.

// CoarseStep and TooCoarse are the shares of a load from which one step of a device is coarse, and from which repetitions come
// first. Source: 2 to 10 % a step, ACSM 2009; that 5 % is called coarse is chosen.
const (
	CoarseStep unit.Percent = 5
	TooCoarse  unit.Percent = 10
)

var byFeltStep = basis.Rule{Name: "step of the device, as moved", Sum: "$1 ÷ $2", Source: "mechanics of a pulley"}

// stepMoved is the smallest change of what is moved.
func stepMoved(place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	step := smallestStep(place, d)
	if !d.Ratio.OK() {
		return step
	}
	return basis.Try2(finding.DeviceID(place, d, "step-moved"), byFeltStep, formula.Felt, step, d.Ratio.Named(finding.DeviceID(place, d, "ratio")))
}

// smallestStep is the smallest change of what is put on: the add-on of a stack, where it has a smaller one.
func smallestStep(place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	step := stepOf(place, d)
	if add, ok := d.AddOn.Value(); ok && len(d.Plates) == 0 && add < step.Or(0) {
		return d.AddOn.Named(finding.DeviceID(place, d, "add-on"))
	}
	return step
}

// stepShare is which share of a load one step of its device is.
func (l *loader) stepShare(w *WeekDose) basis.Num[unit.Percent] {
	if !w.Plates.OK() || w.Moved.Or(0) <= 0 {
		return basis.Num[unit.Percent]{}
	}
	return basis.Try2(l.weekID(w.Week, "step-share"), formula.BySensibleStep, func(load, step unit.Kilograms) (unit.Percent, error) {
		return formula.SensibleStep(load, step, math.MaxFloat64)
	}, w.Moved, stepMoved(l.place, l.device))
}

// tonnage is what the sets of one session move in all: load times repetitions, set by set.
func (l *loader) tonnage(w *WeekDose) basis.Num[unit.Kilograms] {
	var lifts []formula.Lift
	var inputs []basis.Input
	for i, s := range w.sets() {
		if s.Reps == nil || s.Moved.Or(0) <= 0 {
			return basis.Num[unit.Kilograms]{}
		}
		reps := l.count("reps", s.Reps)
		if len(w.Each) > 0 {
			reps = basis.Given(l.weekID(w.Week, fmt.Sprintf("set-%d-reps", i+1)), byMethod, unit.Count(*s.Reps), basis.Say("set {a}", i+1))
		}
		if w.Reps.OK() {
			reps = w.Reps
		}
		lifts = append(lifts, formula.Lift{Load: s.Moved.Or(0), Reps: reps.Or(0)})
		inputs = append(inputs, s.Moved, reps)
	}
	if len(lifts) == 0 {
		return basis.Num[unit.Kilograms]{}
	}
	return basis.OfAny(l.weekID(w.Week, "tonnage"), formula.TonnageRule(len(lifts)), func() (unit.Kilograms, error) { return formula.Tonnage(lifts) }, inputs...)
}

var byVolume = basis.Rule{Name: "relative volume", Sum: "100 × $1 ÷ $2", Source: "definition: repetitions times share of the maximum, summed"}

// volume is the relative volume of a session: repetitions times share of the maximum, which is the tonnage as a share of it.
func (l *loader) volume(w *WeekDose, tonnage basis.Num[unit.Kilograms]) basis.Num[unit.Percent] {
	if !tonnage.OK() || !l.max.OK() {
		return basis.Num[unit.Percent]{}
	}
	return basis.Try2(l.weekID(w.Week, "relative-volume"), byVolume, formula.TrueShare, tonnage, l.max)
}

// sets are the sets of a week, one by one: those that differ, or the same one as often as the dose says.
func (w *WeekDose) sets() []SetDose {
	if len(w.Each) > 0 {
		return w.Each
	}
	if w.Dose.Sets == nil || !w.Plates.OK() {
		return nil
	}
	same := make([]SetDose, *w.Dose.Sets)
	for i := range same {
		same[i] = SetDose{Plates: w.Plates, Moved: w.Moved, PerSide: w.PerSide, Reps: w.Dose.Reps}
	}
	return same
}

// flagSteps says where one step of a device is so much of the load that repetitions come first.
func (p *planner) flagSteps() {
	for _, r := range p.plan.Prescriptions {
		if share := r.StepShare.Or(0); share > TooCoarse {
			p.flag("step-too-coarse", r.Exercise.ID+"."+string(r.Side), "one step of the device is {a} % of the load: repetitions first, then a slower tempo, then a smaller plate",
				float64(unit.CutTo(share, 0.1)))
		}
	}
}
