package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySymmetryTimed is the rule of SymmetryTimed.
var BySymmetryTimed = basis.Rule{Name: "symmetry of times", Sum: "100 × $2 ÷ $1", Source: "convention of Noyes 1991"}

// SymmetryTimed returns the limb symmetry index of what is better when lower (a timed hop): LSI = 100·other/involved,
// so that a slower leg comes out below 100.
//
// Source: Noyes 1991 (convention; from memory, the paper was not opened).
// Studied: 6-m timed hop.
// Refuses: a time that is zero, below zero or no number, on either leg.
func SymmetryTimed[Q unit.Quantity](involved, other Q) (unit.Percent, error) {
	switch {
	case !positive(other):
		return 0, errors.New("the other leg has no time above zero: no symmetry")
	case !positive(involved):
		return 0, errors.New("this leg has no time above zero: no symmetry")
	}
	return share(other, involved), nil
}
