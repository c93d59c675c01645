package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of an ankle weight and of the way back.
var (
	ByAnkleWeight = basis.Rule{Name: "moment of an ankle weight", Sum: "$1 × 9.80665 × $2 × cos($3)", Source: "moment of a weight; sitting, thigh level"}
	ByAnkleMass   = basis.Rule{Name: "ankle weight for a moment", Sum: "$1 ÷ (9.80665 × $2 × cos($3))", Source: "moment of a weight; sitting, thigh level"}
)

// AnkleWeight returns the moment of a weight at the ankle about the knee, sitting: m·g·L·cos φ, φ the bend, 0 straight. It is
// greatest where the knee is straight and nothing where it hangs.
//
// Source: moment of a weight about the knee.
// Studied: sitting, thigh level.
// Refuses: a weight or an arm of zero or less; a bend that is no number.
func AnkleWeight(m unit.Kilograms, L unit.Metres, φ unit.Degrees) (unit.NewtonMetres, error) {
	if !positive(m) || !positive(L) || !number(φ) {
		return 0, errors.New("a weight, its arm and the bend are needed: no moment")
	}
	return unit.NewtonMetres(float64(float64(float64(m)*unit.NewtonsPerKgf)*float64(L)) * cosine(φ)), nil
}

// AnkleMass returns the weight at the ankle that makes a moment: M/(g·L·cos φ). The leg's own moment (OwnShank) is taken off M before.
//
// Source: moment of a weight about the knee.
// Studied: as AnkleWeight.
// Refuses: a moment or an arm of zero or less; a bend outside 0 to 75°: near the hanging leg no weight makes it.
func AnkleMass(M unit.NewtonMetres, L unit.Metres, φ unit.Degrees) (unit.Kilograms, error) {
	switch {
	case !positive(M) || !positive(L):
		return 0, errors.New("a moment and an arm are needed: no ankle weight")
	case !number(φ) || φ < 0 || φ > weighedRefusedAbove:
		return 0, errors.New("an ankle weight works at 0 to 75° of bend: no ankle weight")
	}
	return unit.Kilograms(float64(M) / float64(float64(unit.NewtonsPerKgf*float64(L))*cosine(φ))), nil
}
