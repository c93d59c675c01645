package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByStrain is the rule of Strain.
var ByStrain = basis.Rule{Name: "strain", Sum: "$1 × $2", Source: "Foster 1998"}

// Strain returns the load of a week times its monotony.
//
// Source: Foster 1998, Med Sci Sports Exerc 30:1164–1168.
// Studied: as Monotony.
// Refuses: a load or a monotony below zero or no number; a monotony of zero beside a load, which no week has.
func Strain(week unit.Points, monotony Ratio) (unit.Points, error) {
	if !number(week) || week < 0 || !number(monotony) || monotony < 0 || (monotony == 0 && week > 0) {
		return 0, errors.New("the load of a week and its monotony are needed: no strain")
	}
	return unit.Points(float64(week) * float64(monotony)), nil
}
