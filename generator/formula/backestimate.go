package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByBackEstimate is the rule of BackEstimate; of a single with none in reserve it is BySingle, see BackEstimateRule.
var ByBackEstimate = basis.Rule{Name: "maximum from a logged set (Epley)", Sum: "$1 × (1 + ($2 + $3) ÷ 30)", Source: "Epley 1985, second-hand; reserve: Zourdos 2016"}

// BackEstimate returns the maximum that a logged set tells of: OneRM of what was moved, with the repetitions done and those in
// reserve together.
//
// Source: Epley 1985, second-hand, with repetitions in reserve (Zourdos 2016).
// Studied: as OneRM and ToFailure. One repetition of error in the reserve moves it by 2.5 % at 10 to failure.
// Refuses: as OneRM and ToFailure.
func BackEstimate(w unit.Kilograms, reps, reserve unit.Count) (unit.Kilograms, error) {
	n, err := ToFailure(reps, reserve)
	if err != nil {
		return 0, err
	}
	return OneRM(w, n)
}

// BackEstimateRule returns the rule by which BackEstimate reckons: a single to failure is the maximum itself.
func BackEstimateRule(reps, reserve unit.Count) basis.Rule {
	if reps+reserve == 1 {
		return BySingle
	}
	return ByBackEstimate
}
