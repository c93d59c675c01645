package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByForceAtArm is the rule of ForceAtArm.
var ByForceAtArm = basis.Rule{Name: "force at another arm", Sum: "$1 ÷ $2", Source: "definition of the moment of a force"}

// ForceAtArm returns the force that makes a torque at an arm: F = M/r. It carries a test to another strap or pad.
//
// Source: definition of the moment of a force.
// Studied: exact for a pull at a right angle.
// Refuses: an arm of zero or less; a torque below zero or no number.
func ForceAtArm(M unit.NewtonMetres, r unit.Metres) (unit.Newtons, error) {
	switch {
	case !positive(r):
		return 0, errors.New("the arm is not known: no force")
	case !number(M) || M < 0:
		return 0, errors.New("there is no torque: no force")
	}
	return unit.Newtons(float64(M) / float64(r)), nil
}
