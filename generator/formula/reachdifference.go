package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByReachDifference is the rule of ReachDifference.
var ByReachDifference = basis.Rule{Name: "difference between the legs", Sum: "max($1, $2) − min($1, $2)", Source: "definition"}

// ReachDifference returns by how much the legs differ in a reach, whichever is ahead: |a − b|.
//
// Source: definition; Plisky 2006 for the reach to the front.
// Studied: as YBalance. See ReachFlagged for the mark.
// Refuses: a reach that is zero, below zero or no number.
func ReachDifference(a, b unit.Metres) (unit.Metres, error) {
	if !positive(a) || !positive(b) {
		return 0, errors.New("both legs need a reach: no difference")
	}
	return max(a, b) - min(a, b), nil
}

// ReachFlagged reports whether a difference is above AnteriorFlaggedAbove; 62 and 58 cm differ by 4 and are not flagged.
// It is judged in whole tenths of a millimetre, for a float of 0.62 less one of 0.58 is a hair above 0.04.
func ReachFlagged(difference unit.Metres) bool {
	return unit.CutTo(difference, 0.0001) > AnteriorFlaggedAbove
}
