package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

const (
	// shankAndFoot is the mass of shank and foot as a share of body mass; measured (Dempster), both sexes. Source: Winter 2009.
	shankAndFoot = 0.061
	// centreOfMass is where their common centre lies, as a share of the shank from knee to ankle; measured. Source: Winter 2009.
	centreOfMass = 0.606
)

// ByLimbMoment is the rule of LimbMoment.
var ByLimbMoment = basis.Rule{Name: "moment of the lower leg", Sum: "0.061 × $1 × 9.80665 × 0.606 × $2", Source: "Winter 2009, after Dempster"}

// LimbMoment returns the moment of the weight of shank and foot about the knee, the leg held straight out: m·g·r, where
// m is 0.061 of body mass, r is 0.606 of the shank from knee to ankle, g is 9.80665 m/s².
//
// Source: Winter 2009 (Biomechanics and Motor Control of Human Movement), after Dempster: shank and foot together.
// Studied: segment tables of adults. Against de Leva 1996 it is 0.36 N·m more for a woman of 62 kg and 0.91 for a man
// of 80: good to 1 N·m and no better. A leg weighed on the sensor is worth more than this estimate.
// Refuses: nothing; what may be typed is judged where it is read.
func LimbMoment(mass unit.Kilograms, shank unit.Metres) unit.NewtonMetres {
	m := float64(shankAndFoot * float64(mass))
	r := float64(centreOfMass * float64(shank))
	return unit.NewtonMetres(float64(m*unit.NewtonsPerKgf) * r)
}
