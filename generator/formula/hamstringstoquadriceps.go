package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByHamstringsToQuadriceps is the rule of HamstringsToQuadriceps.
var ByHamstringsToQuadriceps = basis.Rule{Name: "hamstrings to quadriceps", Sum: "100 × $1 ÷ $2", Source: "definition; in hundredths as in Gokeler 2017"}

// HamstringsToQuadriceps returns the bending muscles of one leg as a share of its straightening muscles: 100·H/Q.
// Many papers print H/Q itself: .74 is 74 %.
//
// Source: definition; in hundredths as in Gokeler 2017 (KSSTA).
// Studied: one leg, one mode, one speed: it rises with speed (Rosene 2001), so both torques must have been taken at the same.
// Elite women 0.58 to 0.60 at 60°/s (Risberg 2018).
// Refuses: quadriceps that are zero, below zero or no number; hamstrings below zero or no number.
func HamstringsToQuadriceps[Q unit.Quantity](hamstrings, quadriceps Q) (unit.Percent, error) {
	switch {
	case !positive(quadriceps):
		return 0, errors.New("straightening has no value above zero: no ratio")
	case !number(hamstrings) || hamstrings < 0:
		return 0, errors.New("bending has no value: no ratio")
	}
	return share(hamstrings, quadriceps), nil
}
