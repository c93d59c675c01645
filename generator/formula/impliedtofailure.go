package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByImpliedToFailure is the rule of ImpliedToFailure.
var ByImpliedToFailure = basis.Rule{Name: "repetitions to failure at this load (Epley, turned round)", Sum: "max(1, 30 × ($1 ÷ $2 − 1))", Source: "Epley 1985, second-hand"}

// ImpliedToFailure returns how many repetitions a maximum lets one do with a load w: n = 30·(1RM/w − 1), and never less
// than the one that makes a maximum. The number is not whole: cut it down before it is promised.
//
// Source: Epley 1985 turned round, read in reprints.
// Studied: as OneRM; above 15 it is a direction and no number.
// Refuses: a load of zero or less, or above the maximum; a maximum of zero or less.
func ImpliedToFailure(oneRM, w unit.Kilograms) (unit.Count, error) {
	switch {
	case !positive(oneRM):
		return 0, errors.New("there is no maximum for this exercise: no number of repetitions")
	case !positive(w):
		return 0, errors.New("there is no load: no number of repetitions")
	case w > oneRM:
		return 0, errors.New("the load is above the maximum: no repetition")
	}
	return unit.Count(max(1, float64(30*(float64(oneRM)/float64(w)-1)))), nil
}
