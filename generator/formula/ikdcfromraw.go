package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByIKDCFromRaw is the rule of IKDCFromRaw.
var ByIKDCFromRaw = basis.Rule{Name: "IKDC of a raw sum", Sum: "100 × ($1 − 18) ÷ 87", Source: "form of 2000; constants from memory"}

// IKDCFromRaw returns the score of a sum of all 18 items coded from 1, as the form adds them: 100·(raw − 18)/87.
//
// Source: form of 2000, which works a sum of 60 to 48.3; constants from memory.
// Studied: as IKDC; every item answered.
// Refuses: a sum below 18 or above 105, or no number.
func IKDCFromRaw(raw unit.Points) (unit.Points, error) {
	if !number(raw) || raw < 18 || raw > 105 {
		return 0, errors.New("a raw IKDC sum lies between 18 and 105: no score")
	}
	return unit.Points(float64(100*float64(raw-18)) / 87), nil
}
