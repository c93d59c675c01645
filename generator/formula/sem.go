package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySEM is the rule of SEM.
var BySEM = basis.Rule{Name: "standard error of measurement", Sum: "$1 × sqrt(1 − $2)", Source: "definition"}

// SEM returns the standard error of measurement of a test: SD·√(1 − ICC), from a study that repeated it.
//
// Source: definition; a SEM that a study prints is to be preferred over one worked out.
// Studied: people, device and rater of the study the two come from, and no others.
// Refuses: a deviation below zero or no number; an ICC outside 0 to 1.
func SEM[Q unit.Quantity](SD Q, ICC Ratio) (Q, error) {
	switch {
	case !number(SD) || SD < 0:
		return 0, errors.New("there is no standard deviation: no error of the test")
	case !number(ICC) || ICC < 0 || ICC > 1:
		return 0, errors.New("an ICC lies between 0 and 1: no error of the test")
	}
	return Q(float64(SD) * math.Sqrt(1-float64(ICC))), nil
}
