package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Hazard ratios per point of quadriceps symmetry. Source: Grindem 2016, BJSM 50:804, 106 people; the direction was read, the
// numbers are from memory.
const (
	hazardPerPoint     Ratio = 0.97
	hazardPerPointLow  Ratio = 0.94
	hazardPerPointHigh Ratio = 0.99
	// rateMark is the symmetry that a rate is relative to.
	rateMark unit.Percent = 90
	// rateLeast is the lowest symmetry that a rate is told for; chosen: the table of the evidence ends there.
	rateLeast unit.Percent = 60
)

// RelativeRateCaution stands wherever a relative rate does.
const RelativeRateCaution = "Seen in small groups that were only watched (106 people, wide intervals). It predicts nothing for one person, and " +
	"does not show that a higher score lowers the rate. Larger groups found no link between alike legs and a new injury. " +
	"Passing tests is no clearance: the person, the surgeon and the therapist decide."

// The rules of the rule of thumb, of the multiplicative form, and of its interval.
var (
	ByRelativeRateLinear = basis.Rule{Name: "relative rate, rule of thumb", Sum: "1 + 0.03 × max(0, 90 − $1)", Source: "after Grindem 2016; numbers from memory"}
	ByRelativeRate       = basis.Rule{Name: "relative rate", Sum: "pow(1 ÷ 0.97, max(0, 90 − $1))", Source: "Grindem 2016; numbers from memory"}
	ByRelativeRateLow    = basis.Rule{Name: "relative rate, low end", Sum: "pow(1 ÷ 0.99, max(0, 90 − $1))", Source: "Grindem 2016; numbers from memory"}
	ByRelativeRateHigh   = basis.Rule{Name: "relative rate, high end", Sum: "pow(1 ÷ 0.94, max(0, 90 − $1))", Source: "Grindem 2016; numbers from memory"}
)

// RelativeRateLinear returns the rule of thumb for how many times the rate of a new injury was that of a group at 90: 1 + 0.03·d, d the
// points of quadriceps symmetry below 90. It is the first step of RelativeRate, and the lower.
//
// Source: first-order form of Grindem 2016, BJSM 50:804; direction read, numbers from memory.
// Studied: as RelativeRate. No probability follows from it, for anyone.
// Refuses: as RelativeRate.
func RelativeRateLinear(LSI unit.Percent) (Ratio, error) {
	d, err := belowMark(LSI)
	return Ratio(when(err, 1+float64(0.03*d))), err
}

// RelativeRate returns how many times the rate of a new injury was that of a group at 90, by quadriceps symmetry: (1/0.97)^d.
// At 90 and above it is 1. It goes nowhere without RelativeRateCaution, RelativeRateLow and RelativeRateHigh, and is never multiplied
// with RelativeRateByMonth: they were not one model.
//
// Source: Grindem 2016, BJSM 50:804, doi 10.1136/bjsports-2016-096031; direction read, 0.97 (0.94 to 0.99) from memory.
// Studied: 106 people after reconstruction, watched for two years. Project ACL 2023 (835 people) found more injuries in stronger legs.
// Refuses: a symmetry below 60, further than the table of the source's arithmetic goes; above 150; no number.
func RelativeRate(LSI unit.Percent) (Ratio, error) { return hazard(LSI, hazardPerPoint) }

// RelativeRateLow returns the low end of RelativeRate: (1/0.99)^d.
//
// Source: as RelativeRate.
// Studied: as RelativeRate.
// Refuses: as RelativeRate.
func RelativeRateLow(LSI unit.Percent) (Ratio, error) { return hazard(LSI, hazardPerPointHigh) }

// RelativeRateHigh returns the high end of RelativeRate: (1/0.94)^d.
//
// Source: as RelativeRate.
// Studied: as RelativeRate.
// Refuses: as RelativeRate.
func RelativeRateHigh(LSI unit.Percent) (Ratio, error) { return hazard(LSI, hazardPerPointLow) }

func hazard(LSI unit.Percent, perPoint Ratio) (Ratio, error) {
	d, err := belowMark(LSI)
	return Ratio(when(err, math.Pow(1/float64(perPoint), d))), err
}

func belowMark(LSI unit.Percent) (float64, error) {
	switch {
	case !number(LSI) || LSI > SymmetryDoubtedAbove:
		return 0, errors.New("there is no symmetry: no relative rate")
	case LSI < rateLeast:
		return 0, errors.New("a symmetry below 60 lies outside what was reckoned: no relative rate")
	}
	return float64(max(0, rateMark-LSI)), nil
}

// when is v where there is no error, else 0.
func when(err error, v float64) float64 {
	if err != nil {
		return 0
	}
	return v
}
