package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPutOn is the rule of PutOn.
var ByPutOn = basis.Rule{Name: "what is put on", Sum: "$1 − $2", Source: "what is moved, without what moves with it"}

// PutOn returns the plates for a load as moved: moved − carriage. Cut it to the step after this, not before.
//
// Source: difference of masses.
// Studied: one machine.
// Refuses: a carriage that alone is heavier than the load; a load or carriage that is no number.
func PutOn(moved, carriage unit.Kilograms) (unit.Kilograms, error) {
	switch {
	case !number(moved) || !number(carriage):
		return 0, errors.New("there is no load to put on")
	case moved < carriage:
		return 0, errors.New("the empty machine is already heavier than this load")
	}
	return moved - carriage, nil
}
