package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPercentChange is the rule of PercentChange.
var ByPercentChange = basis.Rule{Name: "change since the test before", Sum: "100 × ($2 − $1) ÷ $1", Source: "definition"}

// PercentChange returns by how much a value of one leg has changed: 100·(now − before)/before.
//
// Source: definition; recomputed from the gains printed in J Clin Med 2024;13:5288, Table 3.
// Studied: one leg, one device, one set of conditions. Whether a change is more than the error of the test, MDC95 says.
// Refuses: a value before that is zero, below zero or no number; a value now below zero or no number.
func PercentChange[Q unit.Quantity](before, now Q) (unit.Percent, error) {
	switch {
	case !positive(before):
		return 0, errors.New("there is no value from before: no change")
	case !number(now) || now < 0:
		return 0, errors.New("there is no value now: no change")
	}
	return unit.Percent(float64(100*float64(now-before)) / float64(before)), nil
}
