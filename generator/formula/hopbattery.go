package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByHopBattery is the rule of HopBattery.
var ByHopBattery = basis.Rule{Name: "lowest of the hop battery", Sum: "min($*)", Source: "90 on every test: Grindem 2016"}

// HopBattery returns the symmetry that a battery of hops is judged by: the lowest of them, for each has to reach the mark.
// A mean would let one good hop hide a bad one.
//
// Source: Grindem 2016 (BJSM 50:804): 90 on every test.
// Studied: single, triple, crossover, 6-m timed. More than two horizontal hops add little, and hop distance overestimates
// recovery (Davies 2020).
// Refuses: fewer than two hops; one that has no symmetry.
func HopBattery(LSIs []unit.Percent) (unit.Percent, error) {
	if len(LSIs) < 2 {
		return 0, errors.New("a battery has two hops or more")
	}
	lowest := LSIs[0]
	for _, x := range LSIs {
		if !number(x) || x < 0 {
			return 0, errors.New("one hop of the battery has no symmetry")
		}
		lowest = min(lowest, x)
	}
	return lowest, nil
}
