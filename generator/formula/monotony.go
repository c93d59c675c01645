package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of monotony by either standard deviation.
var (
	ByMonotony             = basis.Rule{Name: "monotony", Sum: "mean($*) ÷ sd($*)", Source: "Foster 1998; n − 1 is chosen"}
	ByMonotonyOfPopulation = basis.Rule{Name: "monotony, SD with n", Sum: "mean($*) ÷ (sd($*) × sqrt(6 ÷ 7))", Source: "Foster 1998; with n"}
)

// Monotony returns how alike the days of a week were: their mean by their standard deviation. Foster does not say which
// deviation; n − 1 is chosen, as for the trials of a test. With n it is 8 % higher (MonotonyOfPopulation): the two are no series.
//
// Source: Foster 1998, Med Sci Sports Exerc 30:1164–1168.
// Studied: athletes; illness followed thresholds that each had of their own. It is for a talk, and stops nothing.
// Refuses: another number of days than 7; a day below zero or no number; seven days alike, for they have no deviation.
func Monotony(days []unit.Points) (Ratio, error) {
	if err := week(days); err != nil {
		return 0, err
	}
	s := sd(days)
	if !positive(s) {
		return 0, errors.New("seven days alike have no deviation: monotony is not defined")
	}
	return Ratio(float64(mean(days)) / float64(s)), nil
}

// MonotonyOfPopulation returns monotony with the standard deviation of n: for a comparison with a source that reckons so.
//
// Source: as Monotony.
// Studied: as Monotony.
// Refuses: as Monotony.
func MonotonyOfPopulation(days []unit.Points) (Ratio, error) {
	m, err := Monotony(days)
	return Ratio(float64(m) * math.Sqrt(7.0/6)), err
}
