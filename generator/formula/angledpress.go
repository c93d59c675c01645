package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of what a slope leaves of a mass, and the way back.
var (
	ByAngledPress = basis.Rule{Name: "force along a slope", Sum: "$1 × 9.80665 × cos(90 − $2)", Source: "mechanics of a slope, without friction"}
	ByAngledMass  = basis.Rule{Name: "mass for a force along a slope", Sum: "$1 ÷ (9.80665 × cos(90 − $2))", Source: "mechanics of a slope, without friction"}
)

// AngledPress returns the force that moves a carriage and its plates up a slope: m·g·sin θ, θ from the level. On a press
// whose seat moves, the mass of the body is part of m.
//
// Source: mechanics of a slope.
// Studied: without friction, which works against the movement; one machine. Kilograms along the slope are this by 9.80665.
// Refuses: a mass of zero or less; a slope outside 0 to 90°, or none.
func AngledPress(moved unit.Kilograms, θ unit.Degrees) (unit.Newtons, error) {
	switch {
	case !positive(moved):
		return 0, errors.New("nothing was moved: no force")
	case !positive(θ) || θ > 90:
		return 0, errors.New("a slope lies above 0 and up to 90°: no force")
	}
	return unit.Newtons(float64(float64(moved)*unit.NewtonsPerKgf) * sine(θ)), nil
}

// AngledMass returns the mass of carriage and plates that takes a force to move up a slope: F/(g·sin θ).
//
// Source: mechanics of a slope.
// Studied: as AngledPress.
// Refuses: a force of zero or less; a slope outside 0 to 90°, or none.
func AngledMass(F unit.Newtons, θ unit.Degrees) (unit.Kilograms, error) {
	switch {
	case !positive(F):
		return 0, errors.New("there is no force: no mass")
	case !positive(θ) || θ > 90:
		return 0, errors.New("a slope lies above 0 and up to 90°: no mass")
	}
	return unit.Kilograms(float64(F) / float64(unit.NewtonsPerKgf*sine(θ))), nil
}
