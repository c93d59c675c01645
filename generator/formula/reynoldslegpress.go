package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// reynoldsLeast is the lightest five-repetition maximum it is used for; chosen: below it the fixed 14 kg would be more than
// a fifth of the estimate.
const reynoldsLeast unit.Kilograms = 52

// ByReynoldsLegPress is the rule of ReynoldsLegPress.
var ByReynoldsLegPress = basis.Rule{Name: "maximum of the leg press (Reynolds)", Sum: "1.0970 × $1 + 14.2546", Source: "Reynolds 2006"}

// ReynoldsLegPress returns the maximum of a leg press with both legs from the load that can be moved five times: 1.0970·5RM + 14.2546 kg.
//
// Source: Reynolds, Gordon & Robergs 2006, JSCR 20(3):584–592.
// Studied: 34 men and 36 women of 18 to 69 on one machine, both legs; standard error 16.16 kg, R² 0.974.
// Refuses: a load below 52 kg or no number: the fixed part cannot be used for a light load of one leg.
func ReynoldsLegPress(fiveRM unit.Kilograms) (unit.Kilograms, error) {
	if !positive(fiveRM) || fiveRM < reynoldsLeast {
		return 0, errors.New("this equation is for a leg press of 52 kg or more with both legs: no estimate")
	}
	return unit.Kilograms(float64(1.0970*float64(fiveRM)) + 14.2546), nil
}
