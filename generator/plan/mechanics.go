package plan

import (
	"cmp"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Mechanics is what the first load of a prescription is as a force or a torque, for the worksheet: to compare machines. No load
// comes from it.
type Mechanics struct {
	AlongSlope basis.Num[unit.Newtons]      // along the rail of an angled press
	AtPad      basis.Num[unit.Newtons]      // at the pad of a lever machine
	Torque     basis.Num[unit.NewtonMetres] // about the knee: of a lever machine, or of an ankle weight at the straightest allowed bend
	OwnLeg     basis.Num[unit.NewtonMetres] // of the lower leg itself there
}

// mechanics is what can be told of a week's load on its device.
func (l *loader) mechanics(w *WeekDose) (m Mechanics) {
	d := l.device
	if d == nil || !w.Plates.OK() || w.Plates.Or(0) <= 0 {
		return m
	}
	number := func(what string) string { return finding.DeviceID(l.place, d, what) }
	if d.Angle.OK() {
		m.AlongSlope = basis.Try2(l.weekID(w.Week, "along-slope"), formula.ByAngledPress, formula.AngledPress, w.Moved, d.Angle.Named(number("angle")))
	}
	if d.Cam.OK() && d.Pad.OK() {
		pad := d.Pad.Named(number("pad"))
		m.AtPad = basis.Try3(l.weekID(w.Week, "at-pad"), formula.ByLeverMachine, formula.LeverMachine, w.Plates, d.Cam.Named(number("cam")), pad)
		m.Torque = basis.Of2(l.weekID(w.Week, "torque"), formula.ByTorque, formula.Torque, m.AtPad, pad)
	}
	if d.Kind == "ankle-weight" && w.Range != nil {
		l.atAnkle(w, &m)
	}
	return m
}

// atAnkle is the torque of an ankle weight and of the leg that carries it, where the set-up has the lever and the shank.
func (l *loader) atAnkle(w *WeekDose, m *Mechanics) {
	bend := basis.Given(l.weekID(w.Week, "straightest"), byRange, w.Range.Straightest, "the straightest allowed bend of the week")
	setup, test := l.client.Setups[l.e.ID], l.client.Setups[testOf(l.e)]
	arm := firstOK(armOf(setup, l.side), armOf(test, l.side))
	if !arm.OK() {
		return
	}
	m.Torque = basis.Try3(l.weekID(w.Week, "torque"), formula.ByAnkleWeight, formula.AnkleWeight, w.Plates, arm.Named(cmp.Or(arm.ID(), l.e.ID+"."+string(l.side)+".arm")), bend)
	shank, sex := firstOK(setup.Shank, test.Shank), formula.Sex(l.client.Sex)
	if shank.OK() && sex != "" && l.found.NewestMass().OK() {
		m.OwnLeg = basis.Try3(l.weekID(w.Week, "own-leg"), formula.OwnShankRule(sex), func(mass unit.Kilograms, shank unit.Metres, at unit.Degrees) (unit.NewtonMetres, error) {
			return formula.OwnShank(mass, shank, sex, at)
		}, l.found.NewestMass(), shank.Named(l.e.ID+".shank"), bend)
	}
}

var byRange = basis.Rule{Name: "range of the week"}

func armOf(s client.Setup, side unit.Side) basis.Num[unit.Metres] {
	if side == unit.Left {
		return s.Left.Arm
	}
	return s.Right.Arm
}

func firstOK[Q unit.Quantity](a, b basis.Num[Q]) basis.Num[Q] {
	if a.OK() {
		return a
	}
	return b
}
