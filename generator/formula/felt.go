package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByFelt is the rule of Felt.
var ByFelt = basis.Rule{Name: "load on the cable", Sum: "$1 ÷ $2", Source: "mechanics of a pulley"}

// Felt returns what the leg moves when a stack hangs on a cable of a ratio (2 for 2:1): stack/ratio.
//
// Source: mechanics of a pulley, without friction.
// Studied: one machine; friction is not in it, so nothing carries from one machine to another.
// Refuses: a ratio of zero or less; a stack below zero or no number.
func Felt(stack unit.Kilograms, ratio unit.Count) (unit.Kilograms, error) {
	switch {
	case !positive(ratio):
		return 0, errors.New("the ratio of the cable is not known")
	case !number(stack) || stack < 0:
		return 0, errors.New("there is no stack on the cable")
	}
	return unit.Kilograms(float64(stack) / float64(ratio)), nil
}
