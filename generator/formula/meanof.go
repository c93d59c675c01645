package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByMeanOf is the rule of MeanOf.
var ByMeanOf = basis.Rule{Name: "mean of the trials", Sum: "mean($*)", Source: "definition"}

// MeanOf returns the arithmetic mean of the trials of one leg: Σx/n.
//
// Source: definition; used for hops by Reid 2007 (two recorded trials; from memory).
// Studied: two or more trials of one day. A best and a mean are not one series: never compare across the two.
// Refuses: no trial; a trial that is zero, below zero or no number.
func MeanOf[Q unit.Quantity](trials []Q) (Q, error) {
	if err := sound(trials, 1); err != nil {
		return 0, err
	}
	return mean(trials), nil
}

func mean[Q ~float64](trials []Q) Q {
	var sum Q
	for _, x := range trials {
		sum += x
	}
	return sum / Q(len(trials))
}

// sound refuses trials that cannot be reckoned with: fewer than least, or one that was not tested.
func sound[Q ~float64](trials []Q, least int) error {
	switch {
	case len(trials) == 0:
		return errors.New("no trial was made")
	case len(trials) < least:
		return errors.New("one trial only: no spread")
	}
	for _, x := range trials {
		if !positive(x) {
			return errors.New("a trial has no value above zero")
		}
	}
	return nil
}
