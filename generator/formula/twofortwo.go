package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByTwoForTwo is the rule of TwoForTwo. It is a yes or a no, and has no sum.
var ByTwoForTwo = basis.Rule{Name: "two more in two sessions", Source: "Graves & Baechle, second-hand"}

// TwoForTwo reports whether a load may rise: two repetitions or more above the goal in the last set of two sessions one after
// the other. It earns a step and sets none (see SensibleStep), and what the knee says comes first.
//
// Source: Graves & Baechle, second-hand; ACSM 2009 asks for one or two above the target on two consecutive sessions.
// Studied: adults without injury.
// Refuses: a goal of less than one repetition; a set that was not counted.
func TwoForTwo(goal, before, last unit.Count) (bool, error) {
	switch {
	case !number(goal) || goal < 1:
		return false, errors.New("there is no goal of repetitions: no step is earned")
	case !number(before) || !number(last) || before < 0 || last < 0:
		return false, errors.New("the last sets of two sessions are needed: no step is earned")
	}
	return before >= goal+2 && last >= goal+2, nil
}
