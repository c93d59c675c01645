package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByStepOfRPE is the rule of StepOfRPE. It is read off and has no sum.
var ByStepOfRPE = basis.Rule{Name: "change of load for a rating, target 8", Source: "J Hum Kinet 2024;91:87–103, Table 1D"}

// StepOfRPE returns by how much the load of an accessory lift changes after a set of which the effort was rated, where 8 was
// the target (2 in reserve): 5 and 6 up by 5 kg, 7 up by 2.5, 8 none, 9 down by 2.5, 10 down by 5.
//
// Source: J Hum Kinet 2024;91:87–103, doi 10.5114/jhk/185637, Table 1D.
// Studied: lifters without injury; of a light load it is a large step (see SensibleStep).
// Refuses: any other rating.
func StepOfRPE(rating unit.Points) (unit.Kilograms, error) {
	change, printed := map[unit.Points]unit.Kilograms{5: 5, 6: 5, 7: 2.5, 8: 0, 9: -2.5, 10: -5}[rating]
	if !printed {
		return 0, errors.New("the table has rows for ratings of 5, 6, 7, 8, 9 and 10: no change of load")
	}
	return change, nil
}
