package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of a step's share and of the lightest load that it suits.
var (
	BySensibleStep = basis.Rule{Name: "share of one step", Sum: "100 × $2 ÷ $1", Source: "definition; 2 to 10 % a step: ACSM 2009"}
	ByLeastForStep = basis.Rule{Name: "lightest load for a step", Sum: "100 × $1 ÷ $2", Source: "definition; 2 to 10 % a step: ACSM 2009"}
)

// SensibleStep returns what one step of a machine is of a load, where it is no more than most in hundredths: 100·step/load.
// Where it is more, repetitions are added first.
//
// Source: definition; ACSM 2009 (Med Sci Sports Exerc 41:687–708) raises by 2 to 10 %.
// Studied: adults without injury.
// Refuses: a step above most of the load; a load, a step or a most of zero or less.
func SensibleStep(load, step unit.Kilograms, most unit.Percent) (unit.Percent, error) {
	switch {
	case !positive(load) || !positive(step) || !positive(most):
		return 0, errors.New("a load, its step and the most of a step are needed: no step")
	case unit.CutTo(share(step, load), 1e-6) > most:
		return 0, basis.Say("one step is more than {a} % of the load: add repetitions first, then slow down, then take a smaller plate", float64(most))
	}
	return share(step, load), nil
}

// LeastForStep returns the lightest load of which one step is no more than most in hundredths: 100·step/most.
//
// Source: definition.
// Studied: as SensibleStep.
// Refuses: a step or a most of zero or less.
func LeastForStep(step unit.Kilograms, most unit.Percent) (unit.Kilograms, error) {
	if !positive(step) || !positive(most) {
		return 0, errors.New("a step and the most of it are needed: no lightest load")
	}
	return unit.Kilograms(float64(100*float64(step)) / float64(most)), nil
}
