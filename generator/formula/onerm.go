package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

const (
	// OneRMRefusedAbove repetitions to failure there is no estimate; chosen: above 10 every equation was biased
	// (Mayhew 1995), and at 15 the seven in use lie between 131 and 164 % of the load.
	OneRMRefusedAbove unit.Count = 15
	// OneRMDoubtedAbove repetitions to failure the estimate is to be doubted, which the caller says. Source: Mayhew 1995,
	// Reynolds 2006.
	OneRMDoubtedAbove unit.Count = 10
)

// ByOneRM is the rule of OneRM; of a single to failure it is BySingle, see OneRMRule.
var ByOneRM = basis.Rule{Name: "estimated maximum (Epley)", Sum: "$1 × (1 + $2 ÷ 30)", Source: "Epley 1985, second-hand"}

// BySingle is the rule of OneRM where one repetition was all: the load itself is the maximum.
var BySingle = basis.Rule{Name: "maximum, lifted once", Sum: "$1", Source: "definition of the one-repetition maximum"}

// OneRM returns the estimated one-repetition maximum of a load w that was moved, with n repetitions to failure
// (see ToFailure): 1RM = w·(1 + n/30), and w where n is 1. The load is what was moved, not what was put on (see MovedLoad).
//
// Source: Epley 1985, Poundage chart, Boyd Epley Workout; second-hand: reprints give 0.033 or 0.0333, n/30 is in common use.
// Studied: up to 10 repetitions; doubtful above (OneRMDoubtedAbove). It goes with the exercise: on the leg press it is
// 11 to 63 % too high at 90 to 70 % of the maximum (Richens & Cleather 2014), on machines in people of 70 too low (Knutzen 1999).
// Refuses: more than 15 repetitions to failure, less than one, a load of zero or less.
func OneRM(w unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
	switch {
	case !positive(w):
		return 0, errors.New("no load was moved: no estimate of the maximum")
	case !number(n) || n < 1:
		return 0, errors.New("no repetition was done: no estimate of the maximum")
	case n > OneRMRefusedAbove:
		return 0, errors.New("more than 15 repetitions to failure: no estimate of the maximum")
	case n == 1:
		return w, nil
	}
	return unit.Kilograms(float64(w) * (1 + float64(n)/30)), nil
}

// OneRMRule returns the rule by which OneRM reckons n repetitions to failure: a single is no estimate.
func OneRMRule(n unit.Count) basis.Rule {
	if n == 1 {
		return BySingle
	}
	return ByOneRM
}
