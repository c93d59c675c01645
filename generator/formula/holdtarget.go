package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByHoldTarget is the rule of HoldTarget.
var ByHoldTarget = basis.Rule{Name: "target of a hold", Sum: "$1 × $2 ÷ 100", Source: "share of the best isometric trial"}

// HoldTarget returns the force or torque of a hold as a share of the best isometric trial: best·share/100.
//
// Source: share of the maximum; 70 % and 80 % in a trial's protocol (BMC Musculoskelet Disord 2019, doi 10.1186/s12891-019-2993-2, Table 1).
// Studied: patellar tendons, holds of 45 s at 60°. At the angle and on the strap of the test only.
// Refuses: a trial of zero or less; a share of zero or less or above 100.
func HoldTarget[Q unit.Quantity](best Q, share unit.Percent) (Q, error) {
	switch {
	case !positive(best):
		return 0, errors.New("there is no isometric trial: no target of a hold")
	case !positive(share) || share > 100:
		return 0, errors.New("a target lies above 0 and up to 100 % of the best trial")
	}
	return Q(float64(float64(best)*float64(share)) / 100), nil
}
