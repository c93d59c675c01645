package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Doubt says why a number that could be worked out is not to be believed yet; "" where there is no reason. A doubtful number
// opens nothing.
type Doubt = basis.Said

const (
	// SymmetryDoubtedBelow and SymmetryDoubtedAbove ask for unit and side; tool rules, no source.
	SymmetryDoubtedBelow unit.Percent = 10
	SymmetryDoubtedAbove unit.Percent = 150
	// SpreadDoubtedAbove asks for one more trial; a convention, from memory.
	SpreadDoubtedAbove unit.Percent = 10
	// ForceDoubtedBelow, straightening, an adult's newtons may be kilograms of force; tool rule, no source.
	ForceDoubtedBelow unit.Newtons = 100
)

// DoubtOfSymmetry doubts a ratio of the legs that a swap of sides or of units makes more often than a knee.
func DoubtOfSymmetry(LSI unit.Percent) Doubt {
	switch {
	case !number(LSI):
		return "the symmetry is no number"
	case LSI < SymmetryDoubtedBelow:
		return "symmetry below 10: are unit and side right?"
	case LSI > SymmetryDoubtedAbove:
		return "symmetry above 150: are unit and side right? Were the legs swapped?"
	}
	return ""
}

// DoubtOfTrials doubts the trials of one leg: a single one, all alike to the last digit, or too far apart.
func DoubtOfTrials[Q unit.Quantity](trials []Q) Doubt {
	switch spread, err := Spread(trials); {
	case len(trials) == 1 && err != nil:
		return "one trial only: add a trial"
	case err != nil:
		return basis.SaidBy(err)
	case spread == 0 && len(trials) > 2:
		return "all trials are alike to the last digit: were they typed once and copied?"
	case spread > SpreadDoubtedAbove:
		return "the trials spread by more than 10 %: add a trial"
	}
	return ""
}

// DoubtOfForce doubts a peak of an adult's straightening that may have been read in kilograms of force.
func DoubtOfForce(peak unit.Newtons) Doubt {
	if positive(peak) && peak < ForceDoubtedBelow {
		return "below 100 N: was it read in kilograms of force (peak_kgf)?"
	}
	return ""
}

// DoubtOfMaximum doubts an estimate from more than 10 repetitions to failure.
func DoubtOfMaximum(n unit.Count) Doubt {
	if !(n <= OneRMDoubtedAbove) {
		return "more than 10 repetitions to failure: every equation was biased there"
	}
	return ""
}
