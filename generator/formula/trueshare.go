package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByTrueShare is the rule of TrueShare.
var ByTrueShare = basis.Rule{Name: "true share of the maximum", Sum: "100 × $1 ÷ $2", Source: "definition"}

// TrueShare returns what a load that was cut to the step really is of the maximum: 100·w/1RM, both as moved.
//
// Source: definition.
// Studied: as OneRM.
// Refuses: a maximum of zero or less; a load below zero or no number.
func TrueShare(w, oneRM unit.Kilograms) (unit.Percent, error) {
	switch {
	case !positive(oneRM):
		return 0, errors.New("there is no maximum for this exercise: no share of it")
	case !number(w) || w < 0:
		return 0, errors.New("there is no load: no share of the maximum")
	}
	return share(w, oneRM), nil
}
