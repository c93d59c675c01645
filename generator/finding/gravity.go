package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// gravity is what the weight of the shank does at the angle of the test: from the leg as it was weighed on the sensor, else from
// a table of body segments.
func (p pull) gravity(name func(string) string, side unit.Side, arm basis.Num[unit.Metres]) basis.Num[unit.NewtonMetres] {
	if p.f.weighed(p.s) {
		return p.asWeighed(name, side, arm)
	}
	shank := p.have.Shank.Named(p.ids.id("", "shank"))
	moment := p.moment(p.f.mass(p.d), shank)
	return basis.Of2(p.ids.id("", "gravity"), formula.ByGravityAt, formula.GravityAt, moment, p.angle)
}

// moment is the moment of the shank held straight out, by the table that the set-up names.
func (p pull) moment(mass basis.Num[unit.Kilograms], shank basis.Num[unit.Metres]) basis.Num[unit.NewtonMetres] {
	id := p.ids.id("", "limb-moment")
	if p.have.Model != client.DeLeva {
		return basis.Of2(id, formula.ByLimbMoment, formula.LimbMoment, mass, shank)
	}
	sex := formula.Sex(p.f.c.Sex)
	return basis.Try2(id, formula.LimbMomentByDeLevaRule(sex), func(m unit.Kilograms, l unit.Metres) (unit.NewtonMetres, error) {
		return formula.LimbMomentByDeLeva(m, l, sex)
	}, mass, shank)
}

// asWeighed takes the leg's own weight; where one leg was weighed, the other must have been too, or their torques would not be alike.
func (p pull) asWeighed(name func(string) string, side unit.Side, arm basis.Num[unit.Metres]) basis.Num[unit.NewtonMetres] {
	weight := p.f.c.LimbWeight(p.s, side)
	if !weight.OK() {
		return basis.Refused[unit.NewtonMetres](name("gravity"), formula.ByGravityFromWeighed, "the other leg was weighed on the sensor, this one was not")
	}
	return basis.Try4(name("gravity"), formula.ByGravityFromWeighed, formula.GravityFromWeighed,
		weight.Named(name("limb-weight")), arm, p.have.WeighedAt.Named(p.ids.id("", "weighed-at")), p.angle)
}

// weighed reports whether a leg was weighed on the sensor.
func (f *finder) weighed(s *client.Strength) bool {
	return f.c.LimbWeight(s, unit.Left).OK() || f.c.LimbWeight(s, unit.Right).OK()
}

// gravityBy names the way with the weight of the shank; empty where none is needed.
func (f *finder) gravityBy(s *client.Strength, have client.Conditions) string {
	switch angle, ok := have.Angle.Value(); {
	case !ok || angle == 90 || have.Mode != client.IsometricMode:
		return ""
	case !have.Untared():
		return "tared"
	case f.weighed(s):
		return "weighed"
	case have.Model == client.DeLeva:
		return string(client.DeLeva)
	}
	return string(client.Winter)
}
