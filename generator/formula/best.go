package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByBest is the rule of Best.
var ByBest = basis.Rule{Name: "best trial", Sum: "max($*)", Source: "maximum of the trials, as in Kim 2014"}

// Best returns the highest of the trials of one leg: for what is better when higher.
//
// Source: Kim 2014, Ann Rehabil Med 38:84, doi 10.5535/arm.2014.38.1.84 (three trials, the maximum used).
// Studied: three to five trials. A best and a mean are not one series: never compare across the two.
// Refuses: no trial; a trial that is zero, below zero or no number.
func Best[Q unit.Quantity](trials []Q) (Q, error) {
	if err := sound(trials, 1); err != nil {
		return 0, err
	}
	best := trials[0]
	for _, x := range trials {
		best = max(best, x)
	}
	return best, nil
}
