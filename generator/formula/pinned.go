package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPinned is the rule of Pinned.
var ByPinned = basis.Rule{Name: "what is pinned", Sum: "$1 × $2", Source: "mechanics of a pulley"}

// Pinned returns the stack for a load on a cable, the way back from Felt: felt·ratio. Cut it to the step after this.
//
// Source: mechanics of a pulley, without friction.
// Studied: one machine.
// Refuses: a ratio of zero or less; a load below zero or no number.
func Pinned(felt unit.Kilograms, ratio unit.Count) (unit.Kilograms, error) {
	switch {
	case !positive(ratio):
		return 0, errors.New("the ratio of the cable is not known")
	case !number(felt) || felt < 0:
		return 0, errors.New("there is no load on the cable")
	}
	return unit.Kilograms(float64(felt) * float64(ratio)), nil
}
