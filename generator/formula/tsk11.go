package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var tsk11 = sheet{"TSK-11", 11, 11, 1, upTo(4), 1}

// ByTSK11 is the rule of TSK11.
var ByTSK11 = basis.Rule{Name: "TSK-11", Sum: "sum($*)", Source: "TSK-11 scoring: sum of 11 items, second-hand"}

// TSK11 returns the fear of movement: the sum of 11 items, each 1 to 4; 11 to 44, higher is more fear.
//
// Source: TSK-11 scoring, second-hand; that none of its items is turned round is from memory.
// Studied: pain of all kinds.
// Refuses: another number of items than 11; an answer outside 1 to 4; a missing item, for which no rule was found.
func TSK11(items Items) (unit.Points, error) {
	if err := tsk11.refuse(items); err != nil {
		return 0, err
	}
	return items.sum(), nil
}
