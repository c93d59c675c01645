package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByLEFSPercent is the rule of LEFSPercent.
var ByLEFSPercent = basis.Rule{Name: "LEFS in hundredths", Sum: "100 × $1 ÷ 80", Source: "definition"}

// LEFSPercent returns a LEFS score in hundredths of its highest: 100·score/80.
//
// Source: definition.
// Studied: as LEFS.
// Refuses: a score outside 0 to 80 or no number.
func LEFSPercent(score unit.Points) (unit.Percent, error) {
	if !number(score) || score < 0 || score > 80 {
		return 0, errors.New("a LEFS score lies between 0 and 80: no share of it")
	}
	return share(score, 80), nil
}
