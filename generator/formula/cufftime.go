package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByCuffTime is the rule of CuffTime.
var ByCuffTime = basis.Rule{Name: "time under the cuff", Sum: "$1 × $2 + $3 × $4", Source: "sum of times"}

// CuffTime returns how long the cuff is worn: repetitions·seconds each + rests·rest. 75 of 4 s with three rests of 30 s take 390 s;
// 5 to 10 min an exercise is in use (Patterson 2019, second-hand).
//
// Source: sum of times.
// Studied: exact.
// Refuses: no repetition; a repetition that takes no time; rests or a rest below zero or no number.
func CuffTime(repetitions unit.Count, each unit.Seconds, rests unit.Count, rest unit.Seconds) (unit.Seconds, error) {
	switch {
	case !positive(repetitions) || !positive(each):
		return 0, errors.New("repetitions and their time are needed: no time under the cuff")
	case !number(rests) || rests < 0 || !number(rest) || rest < 0:
		return 0, errors.New("the rests are not known: write 0 where there is none")
	}
	return unit.Seconds(float64(repetitions)*float64(each)) + unit.Seconds(float64(rests)*float64(rest)), nil
}
