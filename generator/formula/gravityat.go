package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByGravityAt is the rule of GravityAt.
var ByGravityAt = basis.Rule{Name: "gravity at the angle of the test", Sum: "$1 × cos($2)", Source: "moment of a weight; sitting, thigh level"}

// GravityAt returns what is left of the moment of the lower leg at a bend of the knee: G = m·g·r·cos θ.
// The person sits, the thigh is level, so the shank hangs θ below it; at 90° nothing is left.
//
// Source: moment of a weight about the knee.
// Studied: holds for sitting with a level thigh only. Model and measured weight of a relaxed leg may differ by up to 50 N;
// they agree best near 50° (La Trobe record, 1996).
// Refuses: nothing. It is not for a sensor that was set to zero with the leg hanging on it, nor for a device that corrects by itself.
func GravityAt(moment unit.NewtonMetres, θ unit.Degrees) unit.NewtonMetres {
	return unit.NewtonMetres(float64(moment) * cosine(θ))
}
