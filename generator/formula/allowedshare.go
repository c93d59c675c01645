package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// shareRefusedAbove is the most repetitions to failure that a share is given for; chosen: the longest row of the older
// range chart ends there (60 % for 16 to 20 repetitions, second-hand; Epley gives 60.0 % at 20).
const shareRefusedAbove unit.Count = 20

// ByAllowedShare is the rule of AllowedShare; of a single with none in reserve it is ByWhole, see AllowedShareRule.
var ByAllowedShare = basis.Rule{Name: "share of the maximum (Epley, turned round)", Sum: "100 ÷ (1 + $1 ÷ 30)", Source: "Epley 1985, second-hand"}

// ByWhole is the rule of AllowedShare for one repetition with none in reserve: the maximum itself.
var ByWhole = basis.Rule{Name: "share of the maximum: all of it", Sum: "100", Source: "definition of the one-repetition maximum"}

// AllowedShare returns the share of the maximum that n repetitions to failure allow: 100/(1 + n/30), and 100 where n is 1.
// For a planned set n is repetitions and reserve together (see ToFailure).
//
// Source: Epley 1985 turned round, read in reprints.
// Studied: as OneRM. A target more than 4 repetitions from the tested zone is to be doubted, which the caller says.
// Refuses: more than 20 repetitions to failure, less than one.
func AllowedShare(n unit.Count) (unit.Percent, error) {
	switch {
	case !number(n) || n < 1:
		return 0, errors.New("no repetition is planned: no share of the maximum")
	case n > shareRefusedAbove:
		return 0, errors.New("more than 20 repetitions to failure: no share of the maximum")
	case n == 1:
		return 100, nil
	}
	return unit.Percent(100 / (1 + float64(n)/30)), nil
}

// AllowedShareRule returns the rule by which AllowedShare reckons n repetitions to failure.
func AllowedShareRule(n unit.Count) basis.Rule {
	if n == 1 {
		return ByWhole
	}
	return ByAllowedShare
}
