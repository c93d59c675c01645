package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var lefs = sheet{"LEFS", 20, 20, 0, upTo(4), 1}

// ByLEFS is the rule of LEFS.
var ByLEFS = basis.Rule{Name: "LEFS", Sum: "sum($*)", Source: "Binkley 1999: sum of 20 items"}

// LEFS returns the score of the scale of the lower limb: the sum of 20 items, each 0 (worst) to 4; 0 to 80, higher is better.
//
// Source: Binkley 1999. See LEFSChange for what is a real change.
// Studied: complaints of the lower limb. The median of 1014 people of all kinds is 77: it cannot tell the good from the very good.
// Refuses: another number of items than 20; an answer outside 0 to 4; a missing item, for which no rule was found.
func LEFS(items Items) (unit.Points, error) {
	if err := lefs.refuse(items); err != nil {
		return 0, err
	}
	return items.sum(), nil
}

const (
	// LEFSChange is the change beyond error, at 90 %. Source: Binkley 1999, as printed. It is not 5.3·√2: the two come from
	// different samples.
	LEFSChange unit.Points = 9
	// LEFSBand is the error of one score to either side. Source: Binkley 1999, as printed.
	LEFSBand unit.Points = 5.3
)
