package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByRiseScore is the rule of RiseScore.
var ByRiseScore = basis.Rule{Name: "single-leg rise", Sum: "100 − 100 × $1", Source: "transform seen in a BJSM table, 87 people"}

// RiseScore turns the lowest seat, from which one leg alone can rise, into what is better when higher: 100 less its
// centimetres. Symmetry is reckoned from two scores, never from two heights.
//
// Source: a table in BJSM (87 people) that takes 100 − height before the ratio.
// Studied: seats below 1 m.
// Refuses: a seat of zero or less, of 1 m or more, or no number.
func RiseScore(seat unit.Metres) (unit.Points, error) {
	if !positive(seat) || seat >= 1 {
		return 0, errors.New("a seat is above 0 and below 100 cm: no score of the rise")
	}
	return unit.Points(100 - float64(100*float64(seat))), nil
}
