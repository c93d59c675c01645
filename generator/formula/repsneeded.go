package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByRepsNeeded is the rule of RepsNeeded.
var ByRepsNeeded = basis.Rule{Name: "repetitions to failure that earn a load (Epley)", Sum: "30 × ($2 ÷ $1 × (1 + $3 ÷ 30) − 1)", Source: "Epley 1985, second-hand"}

// RepsNeeded returns how many repetitions to failure the load from must allow, before the load to allows n of them:
// 30·[(to/from)·(1 + n/30) − 1]. The number is not whole: it is rounded up before a step is given. A number above 15 says
// that the step is too coarse.
//
// Source: Epley 1985, second-hand, turned round.
// Studied: as OneRM; 5 % more at 10 to failure needs 2 more, 10 % needs 4.
// Refuses: a load of zero or less; fewer than one repetition to failure or more than 15; a load to that is lighter than from.
func RepsNeeded(from, to unit.Kilograms, n unit.Count) (unit.Count, error) {
	switch {
	case !positive(from) || !positive(to):
		return 0, errors.New("there is no load: no number of repetitions")
	case to < from:
		return 0, errors.New("the next load is lighter: nothing has to be earned")
	}
	if err := repeated(n, OneRMRefusedAbove, "no number of repetitions"); err != nil {
		return 0, err
	}
	return unit.Count(30 * (float64(float64(to)/float64(from)*(1+float64(n)/30)) - 1)), nil
}
