package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByMovedLoad is the rule of MovedLoad.
var ByMovedLoad = basis.Rule{Name: "moved load", Sum: "$1 + $2", Source: "sum of what is put on and what moves with it"}

// MovedLoad returns what is moved: plates + carriage. Formulas reckon with it, for leaving out a carriage of 45 kg makes the legs
// look less alike than they are.
//
// Source: sum of masses.
// Studied: one machine. A sloping rail does not scale kilograms: the slope is the same for both legs and all loads.
// Refuses: nothing; what may be typed is judged where it is read.
func MovedLoad(plates, carriage unit.Kilograms) unit.Kilograms { return plates + carriage }
