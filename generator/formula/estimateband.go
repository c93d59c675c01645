package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the two ends.
var (
	ByEstimateLow  = basis.Rule{Name: "low end of an estimated maximum", Sum: "0.9 × $1", Source: "±10 %, after Hutchins 2010 and Knutzen 1999"}
	ByEstimateHigh = basis.Rule{Name: "high end of an estimated maximum", Sum: "1.1 × $1", Source: "±10 %, after Hutchins 2010 and Knutzen 1999"}
)

// EstimateLow returns the low end of the band of an estimated maximum: 10 % below.
//
// Source: chosen at 10 %, after total errors of 10.6 to 13.5 % of the mean (Hutchins & Gearhart 2010) and of 1 to 10 kg (Knutzen 1999).
// Studied: 27 trained men at 85 %; 51 people of about 70 on machines. No study after reconstruction.
// Refuses: a maximum of zero or less, or no number.
func EstimateLow(oneRM unit.Kilograms) (unit.Kilograms, error) { return ofEstimate(oneRM, 0.9) }

// EstimateHigh returns the high end of the band of an estimated maximum: 10 % above.
//
// Source: as EstimateLow.
// Studied: as EstimateLow.
// Refuses: a maximum of zero or less, or no number.
func EstimateHigh(oneRM unit.Kilograms) (unit.Kilograms, error) { return ofEstimate(oneRM, 1.1) }

func ofEstimate(oneRM unit.Kilograms, times float64) (unit.Kilograms, error) {
	if !positive(oneRM) {
		return 0, errors.New("there is no maximum for this exercise: no band")
	}
	return unit.Kilograms(times * float64(oneRM)), nil
}
