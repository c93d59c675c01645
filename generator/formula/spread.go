package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySpread is the rule of Spread.
var BySpread = basis.Rule{Name: "spread of the trials", Sum: "100 × sd($*) ÷ mean($*)", Source: "coefficient of variation, with n − 1"}

// Spread returns the coefficient of variation of the trials of one leg: CV = 100·s/x̄, s with n − 1.
//
// Source: definition of the coefficient of variation.
// Studied: above 10 % one more trial is asked for (a convention, from memory; 5 % is called ideal).
// Refuses: fewer than two trials; a trial that is zero, below zero or no number.
func Spread[Q unit.Quantity](trials []Q) (unit.Percent, error) {
	if err := sound(trials, 2); err != nil {
		return 0, err
	}
	return share(sd(trials), mean(trials)), nil
}
