package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByBandLow is the rule of BandLow.
var ByBandLow = basis.Rule{Name: "low end of the band of one score", Sum: "$1 − 1.96 × $2", Source: "±1.96 standard errors of measurement"}

// ByBandHigh is the rule of BandHigh.
var ByBandHigh = basis.Rule{Name: "high end of the band of one score", Sum: "$1 + 1.96 × $2", Source: "±1.96 standard errors of measurement"}

// Band returns the 95 % band of one score, from BandLow to BandHigh.
func Band[Q unit.Quantity](score, SEM Q) (Interval[Q], error) {
	low, err := BandLow(score, SEM)
	if err != nil {
		return Interval[Q]{}, err
	}
	high, err := BandHigh(score, SEM)
	return Interval[Q]{low, high}, err
}

// BandLow returns the low end of the 95 % band of one score: x − 1.96·SEM.
//
// Source: definition; ±1.96 standard errors of measurement.
// Studied: as the SEM that goes in; the band of one score, narrower than the change between two (MDC95).
// Refuses: a score that is no number; a SEM of zero or less.
func BandLow[Q unit.Quantity](score, SEM Q) (Q, error) { return beside(score, -1, SEM) }

// BandHigh returns the high end of the 95 % band of one score: x + 1.96·SEM.
//
// Source: definition; ±1.96 standard errors of measurement.
// Studied: as BandLow.
// Refuses: a score that is no number; a SEM of zero or less.
func BandHigh[Q unit.Quantity](score, SEM Q) (Q, error) { return beside(score, 1, SEM) }

func beside[Q unit.Quantity](score Q, side float64, SEM Q) (Q, error) {
	switch {
	case !number(score):
		return 0, errors.New("there is no score: no band")
	case !positive(SEM):
		return 0, errors.New("the error of this test is not known: no band")
	}
	return score + Q(side*float64(float64(z95)*float64(SEM))), nil
}
