package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

const (
	// hazardPerMonth is per month of delay until nine. Source: Grindem 2016: the rate falls by 51 % a month; its interval was not read.
	hazardPerMonth Ratio = 0.49
	// delayEnds is the month after which no further fall was seen. Source: Grindem 2016.
	delayEnds unit.Months = 9
	// earliestMonth is the earliest return that a rate is told for; chosen: k = 4 is 17 times, an extrapolation already.
	earliestMonth unit.Months = 5
)

// ByRelativeRateByMonth is the rule of RelativeRateByMonth.
var ByRelativeRateByMonth = basis.Rule{Name: "relative rate of an early return", Sum: "pow(1 ÷ 0.49, max(0, 9 − $1))", Source: "Grindem 2016"}

// RelativeRateByMonth returns how many times the rate of a new injury was that of a return at nine months: 0.49^−k, k the months
// before nine. From nine months on it is 1: no further fall was seen.
//
// Source: Grindem 2016, BJSM 50:804: 51 % less a month until nine; the interval was not read, so none is given.
// Studied: 106 people after reconstruction. It is never multiplied with RelativeRate. No probability follows from it.
// Refuses: a return before five months: four months early is an extrapolation already; no number.
func RelativeRateByMonth(months unit.Months) (Ratio, error) {
	switch {
	case !number(months):
		return 0, errors.New("there is no month of return: no relative rate")
	case months < earliestMonth:
		return 0, errors.New("more than four months before nine lies outside what was studied: no relative rate")
	}
	return Ratio(math.Pow(1/float64(hazardPerMonth), float64(max(0, delayEnds-months)))), nil
}
