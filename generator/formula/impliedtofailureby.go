package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ImpliedToFailureBy returns how many repetitions a maximum lets one do with a load w by an equation, and never less than the
// one that makes a maximum: the exact inverse of OneRMBy. The number is not whole: cut it down before it is promised.
//
// Source: of each equation turned round, see Equation; all second-hand.
// Studied: as OneRMBy; above 15 it is a direction and no number.
// Refuses: an unknown equation; a load of zero or less, or above the maximum; a maximum of zero or less; a load so light that
// the equation knows no end of repetitions (Wathen at or below 48.8 %, Mayhew at or below 52.2 %).
func ImpliedToFailureBy(e Equation, oneRM, w unit.Kilograms) (unit.Count, error) {
	q, err := e.find()
	switch {
	case err != nil:
		return 0, err
	case !positive(oneRM):
		return 0, errors.New("there is no maximum for this exercise: no number of repetitions")
	case !positive(w):
		return 0, errors.New("there is no load: no number of repetitions")
	case w > oneRM:
		return 0, errors.New("the load is above the maximum: no repetition")
	}
	n := q.toFailure(float64(100*float64(w)) / float64(oneRM))
	if !number(n) {
		return 0, errors.New("the load is so light that this equation knows no end of repetitions")
	}
	return unit.Count(max(1, n)), nil
}

// ImpliedToFailureRuleBy returns the rule by which ImpliedToFailureBy reckons.
func ImpliedToFailureRuleBy(e Equation) basis.Rule {
	return e.rule("repetitions to failure at this load", func(q equation) string { return q.nSum })
}
