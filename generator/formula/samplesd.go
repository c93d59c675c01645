package formula

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySampleSD is the rule of SampleSD.
var BySampleSD = basis.Rule{Name: "standard deviation of the trials", Sum: "sd($*)", Source: "definition, with n − 1"}

// SampleSD returns the sample standard deviation of the trials: s = √(Σ(x − x̄)²/(n − 1)).
//
// Source: definition, with n − 1.
// Studied: of two or three trials it is a rough guess; it serves to ask for one more trial, not to state an error.
// Refuses: fewer than two trials; a trial that is zero, below zero or no number.
func SampleSD[Q unit.Quantity](trials []Q) (Q, error) {
	if err := sound(trials, 2); err != nil {
		return 0, err
	}
	return sd(trials), nil
}

func sd[Q ~float64](trials []Q) Q {
	middle, sum := mean(trials), 0.0
	for _, x := range trials {
		d := float64(x - middle)
		sum += float64(d * d)
	}
	return Q(math.Sqrt(sum / float64(len(trials)-1)))
}
