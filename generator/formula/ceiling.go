package formula

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByCeiling is the rule of Ceiling.
var ByCeiling = basis.Rule{Name: "ceiling of a later week", Sum: "$1 × pow(1 + $2 ÷ 100, $3)", Source: "compound growth; 2 to 10 % a step: ACSM 2009"}

// Ceiling returns the most that a load may have become after some weeks: w·(1 + p/100)^k. The load that goes in is not
// cut to a step, nor is what comes out; k is 0 in the first week.
//
// Source: compound growth; ACSM 2009 (Ratamess, Med Sci Sports Exerc 41:687–708) raises by 2 to 10 %.
// Studied: as an upper bound only; whether the step is earned is not settled here.
// Refuses: nothing.
func Ceiling(w unit.Kilograms, p unit.Percent, k unit.Weeks) unit.Kilograms {
	return unit.Kilograms(float64(w) * math.Pow(1+float64(p)/100, float64(k)))
}
