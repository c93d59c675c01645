package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByTorque is the rule of Torque.
var ByTorque = basis.Rule{Name: "torque", Sum: "$1 × $2", Source: "definition of the moment of a force"}

// Torque returns the moment of a force that pulls at a right angle to its arm: M = F·r.
// The arm r goes from the axis of the knee to the centre of the strap or pad, measured on each leg.
//
// Source: definition of the moment of a force.
// Studied: exact for a pull at a right angle; a pull that is off by φ gives cos φ of it (10° off: 98.5 %).
// Refuses: nothing; what may be typed is judged where it is read.
func Torque(F unit.Newtons, r unit.Metres) unit.NewtonMetres {
	return unit.NewtonMetres(float64(F) * float64(r))
}
