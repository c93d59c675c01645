package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var kosADLS = sheet{"KOS-ADLS", 14, 14, 0, upTo(5), 1}

// ByKOSADLS is the rule of KOSADLS.
var ByKOSADLS = basis.Rule{Name: "KOS-ADLS", Sum: "100 × sum($*) ÷ 70", Source: "KOS-ADLS scoring: sum of 14 items ÷ 70"}

// KOSADLS returns the score of the scale of daily living: 100·Σ/70 of 14 items, each 0 (worst) to 5; 0 to 100, higher is better.
//
// Source: KOS-ADLS scoring. The smallest change that matters is 7.1 (second-hand); a mark of 90 is in use.
// Studied: knees of all kinds.
// Refuses: another number of items than 14; an answer outside 0 to 5; a missing item, for which no rule was found.
func KOSADLS(items Items) (unit.Points, error) {
	if err := kosADLS.refuse(items); err != nil {
		return 0, err
	}
	return unit.Points(float64(100*float64(items.sum())) / 70), nil
}
