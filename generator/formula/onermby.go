package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// OneRMBy returns the estimated one-repetition maximum by an equation, of a load w that was moved, with n repetitions to
// failure; and w where n is 1, whatever the equation would say. By Epley it is OneRM.
//
// Source: of each equation, see Equation; all second-hand.
// Studied: up to 10 repetitions; there Brzycki came closest in 220 men at the bench (Mayhew 1995). The machine lifts of people of 70
// are underestimated by six of them by 1 to 10 kg (Knutzen 1999). No estimate is better than about 10 % (see EstimateLow).
// Refuses: an unknown equation; more than 15 repetitions to failure, less than one; a load of zero or less.
func OneRMBy(e Equation, w unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
	q, err := e.find()
	switch {
	case err != nil:
		return 0, err
	case !positive(w):
		return 0, errors.New("no load was moved: no estimate of the maximum")
	}
	if err := repeated(n, OneRMRefusedAbove, "no estimate of the maximum"); err != nil {
		return 0, err
	}
	if n == 1 {
		return w, nil
	}
	return unit.Kilograms(float64(w) * q.maximum(float64(n))), nil
}

// OneRMRuleBy returns the rule by which OneRMBy reckons n repetitions to failure: a single is no estimate.
func OneRMRuleBy(e Equation, n unit.Count) basis.Rule {
	if n == 1 {
		return BySingle
	}
	return e.rule("estimated maximum", func(q equation) string { return q.maxSum })
}
