package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByQuickest is the rule of Quickest.
var ByQuickest = basis.Rule{Name: "quickest trial", Sum: "min($*)", Source: "the best of what is better when lower"}

// Quickest returns the lowest of the trials of one leg: for what is better when lower, such as a timed hop.
//
// Source: the best of what is better when lower (common practice: best of three).
// Studied: hop tests with two or three recorded trials; others take the mean (both from memory).
// Refuses: no trial; a trial that is zero, below zero or no number.
func Quickest[Q unit.Quantity](trials []Q) (Q, error) {
	if err := sound(trials, 1); err != nil {
		return 0, err
	}
	best := trials[0]
	for _, x := range trials {
		best = min(best, x)
	}
	return best, nil
}
