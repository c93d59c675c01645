package formula

import (
	"errors"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Lift is one set: what was moved, and how often.
type Lift struct {
	Load unit.Kilograms
	Reps unit.Count
}

// ByTonnage is the rule of Tonnage of one set; see TonnageRule.
var ByTonnage = basis.Rule{Name: "tonnage", Sum: "$1 × $2", Source: "definition"}

// Tonnage returns what one leg moved in all: Σ load·repetitions, of effective loads where the body is moved (EffectiveLoad).
//
// Source: definition.
// Studied: one leg, one exercise, one machine: sums across machines say little.
// Refuses: no set; a load of zero or less; repetitions below zero, not whole or no number.
func Tonnage(sets []Lift) (unit.Kilograms, error) {
	if len(sets) == 0 {
		return 0, errors.New("no set was logged: no tonnage")
	}
	var total unit.Kilograms
	for _, s := range sets {
		if !positive(s.Load) || !number(s.Reps) || s.Reps < 0 || s.Reps != unit.CutTo(s.Reps, 1) {
			return 0, errors.New("a set has no load or no count of repetitions: no tonnage")
		}
		total += unit.Kilograms(float64(s.Load) * float64(s.Reps))
	}
	return total, nil
}

// TonnageRule returns the rule by which Tonnage reckons so many sets; its inputs are load and repetitions, set by set.
func TonnageRule(sets int) basis.Rule {
	parts, by := make([]string, sets), ByTonnage
	for i := range parts {
		parts[i] = "$" + strconv.Itoa(2*i+1) + " × $" + strconv.Itoa(2*i+2)
	}
	by.Sum = strings.Join(parts, " + ")
	return by
}
