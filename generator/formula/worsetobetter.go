package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByWorseToBetter is the rule of WorseToBetter.
var ByWorseToBetter = basis.Rule{Name: "worse to better leg", Sum: "100 × min($1, $2) ÷ max($1, $2)", Source: "Markström 2022"}

// WorseToBetter returns the worse leg as a share of the better: 100·min/max, from 0 to 100, whichever leg was operated.
// It is not symmetry, and the two are never compared.
//
// Source: Markström 2022, Sports Health, doi 10.1177/19417381221097949.
// Studied: what is better when higher. Of uninjured people only 24 % reach 90 in every test by it.
// Refuses: a leg that is zero, below zero or no number.
func WorseToBetter[Q unit.Quantity](a, b Q) (unit.Percent, error) {
	if !positive(a) || !positive(b) {
		return 0, errors.New("both legs need a value above zero: no ratio of worse to better")
	}
	return share(min(a, b), max(a, b)), nil
}
