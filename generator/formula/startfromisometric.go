package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The limits of agreement of a maximum that was told from an isometric test: by so much may it be too low or too high.
// Source: Lesnak 2020, doi 10.1123/jsr.2018-0396: −15.6 to +20.1 kg, 20 healthy adults, with an equation of its own.
const (
	isometricTooHigh unit.Kilograms = 20.1
	isometricTooLow  unit.Kilograms = 15.6
)

// startMost is the largest share of such a maximum that a first load may be; chosen.
const startMost unit.Percent = 60

// The rules of the maximum, of its two limits and of the load to start with.
var (
	ByMaximumFromIsometric = basis.Rule{Name: "maximum from an isometric test (Kanada)", Sum: "0.714 + 0.783 × $1 ÷ 9.80665", Source: "Kanada 2017"}
	ByIsometricLow         = basis.Rule{Name: "lowest that this maximum may be", Sum: "max(0, $1 − 20.1)", Source: "limits of agreement, Lesnak 2020"}
	ByIsometricHigh        = basis.Rule{Name: "highest that this maximum may be", Sum: "$1 + 15.6", Source: "limits of agreement, Lesnak 2020"}
	ByStartFromIsometric   = basis.Rule{Name: "load to start with, from an isometric test", Sum: "(0.714 + 0.783 × $1 ÷ 9.80665) × $2 ÷ 100", Source: "Kanada 2017; at most 60 % of it is chosen"}
)

// MaximumFromIsometric returns the maximum of knee extension on a machine that an isometric peak tells of: 0.714 + 0.783·F, F in kgf.
//
// Source: Kanada 2017, J Phys Ther Sci 29:2013–2017, doi 10.1589/jpts.29.2013.
// Studied: 21 healthy men of 20 to 39, a hand-held dynamometer, their machine. No group after reconstruction, no other machine, no
// exercise of several joints. It may be 20 kg too high (see IsometricLow).
// Refuses: a peak of zero or less, or no number.
func MaximumFromIsometric(peak unit.Newtons) (unit.Kilograms, error) {
	if !positive(peak) {
		return 0, errors.New("there is no isometric peak: no maximum from it")
	}
	return unit.Kilograms(0.714 + float64(0.783*float64(float64(peak)/unit.NewtonsPerKgf))), nil
}

// IsometricLow returns the lowest that a maximum from an isometric test may truly be: 20.1 kg below, never below nothing.
//
// Source: limits of agreement of Lesnak 2020: the estimate less what was lifted lay between −15.6 and +20.1 kg.
// Studied: 20 healthy adults, with an equation that was not seen; authors advise caution.
// Refuses: a maximum of zero or less, or no number.
func IsometricLow(oneRM unit.Kilograms) (unit.Kilograms, error) {
	if !positive(oneRM) {
		return 0, errors.New("there is no maximum from an isometric test: no limits")
	}
	return max(0, oneRM-isometricTooHigh), nil
}

// IsometricHigh returns the highest that a maximum from an isometric test may truly be: 15.6 kg above.
//
// Source: as IsometricLow.
// Studied: as IsometricLow.
// Refuses: as IsometricLow.
func IsometricHigh(oneRM unit.Kilograms) (unit.Kilograms, error) {
	if !positive(oneRM) {
		return 0, errors.New("there is no maximum from an isometric test: no limits")
	}
	return oneRM + isometricTooLow, nil
}

// StartFromIsometric returns a load to start with on the knee extension, as a share of MaximumFromIsometric. It is given up
// for the first logged set (BackEstimate). Its limits are as wide as an early load: they are printed beside it.
//
// Source: Kanada 2017; the share is the caller's, at most 60 % is chosen.
// Studied: as MaximumFromIsometric.
// Refuses: as MaximumFromIsometric; a share of zero or less, or above 60 %.
func StartFromIsometric(peak unit.Newtons, share unit.Percent) (unit.Kilograms, error) {
	oneRM, err := MaximumFromIsometric(peak)
	switch {
	case err != nil:
		return 0, err
	case !positive(share) || share > startMost:
		return 0, errors.New("a first load is at most 60 % of a maximum from an isometric test")
	}
	return WorkingLoad(oneRM, share), nil
}
