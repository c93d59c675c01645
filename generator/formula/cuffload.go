package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByCuffLoad is the rule of CuffLoad.
var ByCuffLoad = basis.Rule{Name: "load under the cuff", Sum: "$1 × $2 ÷ 100", Source: "Patterson 2019, second-hand; after reconstruction: Hughes 2019"}

// CuffLoad returns the load of an exercise under a cuff: 1RM·share/100, for 30, 15, 15 and 15 repetitions with 30 s between.
//
// Source: Patterson 2019, second-hand (20 to 40 %); Hughes 2019 used 30 % on the single-leg press after reconstruction.
// Studied: as CuffPressure. The maximum is the estimate of the same leg on the same machine.
// Refuses: a maximum of zero or less; a share outside 20 to 40 %.
func CuffLoad(oneRM unit.Kilograms, share unit.Percent) (unit.Kilograms, error) {
	switch {
	case !positive(oneRM):
		return 0, errors.New("there is no maximum for this exercise: no load under the cuff")
	case !number(share) || share < cuffLoadLeast || share > cuffLoadMost:
		return 0, errors.New("under a cuff 20 to 40 % of the maximum are moved")
	}
	return WorkingLoad(oneRM, share), nil
}
