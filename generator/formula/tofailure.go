package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByToFailure is the rule of ToFailure.
var ByToFailure = basis.Rule{Name: "repetitions to failure", Sum: "$1 + $2", Source: "repetitions in reserve, Zourdos 2016"}

// ToFailure returns how many repetitions the muscle had in it: n = r + q, done and in reserve.
//
// Source: repetitions in reserve, Zourdos 2016, JSCR 30(1):267–275.
// Studied: people tell about one repetition too few (0.95, 95 % interval 0.17 to 1.73; Halperin 2022, Sports Med
// 52:377–390), best near failure and in sets of 12 or fewer.
// Refuses: fewer than one repetition done; a reserve below zero or no number.
func ToFailure(r, q unit.Count) (unit.Count, error) {
	switch {
	case !number(r) || r < 1:
		return 0, errors.New("no repetition was done")
	case !number(q) || q < 0:
		return 0, errors.New("the repetitions in reserve are not known")
	}
	return r + q, nil
}
