package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByLeverMachine is the rule of LeverMachine.
var ByLeverMachine = basis.Rule{Name: "force at the pad of a lever machine", Sum: "$1 × 9.80665 × $2 ÷ $3", Source: "mechanics of a lever"}

// LeverMachine returns the force at the pad of a machine whose stack hangs on a cam: m·g·r_cam/r_pad. Its torque about the knee is
// Torque of this at r_pad, where the axes of machine and knee align.
//
// Source: mechanics of a lever.
// Studied: a round cam, without friction; one machine. Marks of a stack are no kilograms of effort.
// Refuses: a stack, a cam or a pad of zero or less.
func LeverMachine(stack unit.Kilograms, cam, pad unit.Metres) (unit.Newtons, error) {
	if !positive(stack) || !positive(cam) || !positive(pad) {
		return 0, errors.New("a stack, the radius of its cam and the arm of the pad are needed: no force")
	}
	return unit.Newtons(float64(float64(float64(stack)*unit.NewtonsPerKgf)*float64(cam)) / float64(pad)), nil
}
