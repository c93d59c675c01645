package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPediIKDC is the rule of PediIKDC.
var ByPediIKDC = basis.Rule{Name: "Pedi-IKDC", Sum: "100 × $1 ÷ 92", Source: "scoring instructions of the Pedi-IKDC"}

// PediIKDC returns the score of the form for children from the sum of its items, coded from 0: 100·Σ/92.
//
// Source: scoring instructions of the Pedi-IKDC, which work a sum of 60 to 65.2.
// Studied: children and adolescents; every item answered, for no rule of missing items was found.
// Refuses: a sum below 0 or above 92, or no number.
func PediIKDC(sum unit.Points) (unit.Points, error) {
	if !number(sum) || sum < 0 || sum > 92 {
		return 0, errors.New("a Pedi-IKDC sum lies between 0 and 92: no score")
	}
	return unit.Points(float64(100*float64(sum)) / 92), nil
}
