package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPerKilogram is the rule of PerKilogram.
var ByPerKilogram = basis.Rule{Name: "torque per kilogram", Sum: "$1 ÷ $2", Source: "definition; used by Gokeler 2017, Šarabon 2021"}

// PerKilogram returns a torque per kilogram of body mass: M/m. The mass is the one of the day of the test.
//
// Source: definition; used so by Gokeler 2017 (KSSTA) and Šarabon 2021 (Front Physiol 12:767941).
// Studied: adults. The mark of 3.0 N·m/kg lies above the pooled mean of healthy women at every angle (Šarabon 2021):
// the mark belongs to a program, with sex, mode and angle, and not here.
// Refuses: a body mass of zero or less; a torque that is no number.
func PerKilogram(M unit.NewtonMetres, m unit.Kilograms) (unit.NmPerKg, error) {
	switch {
	case !positive(m):
		return 0, errors.New("the body mass is not known: no torque per kilogram")
	case !number(M):
		return 0, errors.New("there is no torque: no torque per kilogram")
	}
	return unit.NmPerKg(float64(M) / float64(m)), nil
}
