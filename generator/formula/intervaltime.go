package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByIntervalTime is the rule of IntervalTime.
var ByIntervalTime = basis.Rule{Name: "time of work and rest", Sum: "$1 × $2 + ($1 − 1) × $3", Source: "sum of times"}

// IntervalTime returns how long a number of bouts takes with rests between them: n·work + (n − 1)·rest. Five holds of 45 s
// with 2 min between take 705 s.
//
// Source: sum of times.
// Studied: exact.
// Refuses: no bout, or one that is not whole; a work of zero or less; a rest below zero or no number.
func IntervalTime(n unit.Count, work, rest unit.Seconds) (unit.Seconds, error) {
	switch {
	case !positive(n) || n != unit.CutTo(n, 1):
		return 0, errors.New("a whole number of bouts is needed: no time")
	case !positive(work):
		return 0, errors.New("a bout takes time: no time of all")
	case !number(rest) || rest < 0:
		return 0, errors.New("the rest is not known: write 0 where there is none")
	}
	return unit.Seconds(float64(n)*float64(work)) + unit.Seconds(float64(n-1)*float64(rest)), nil
}
