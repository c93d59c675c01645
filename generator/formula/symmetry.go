package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BySymmetry is the rule of Symmetry.
var BySymmetry = basis.Rule{Name: "symmetry", Sum: "100 × $1 ÷ $2", Source: "definition in Gokeler 2017"}

// Symmetry returns the limb symmetry index of what is better when higher (torque, force, distance, repetitions):
// LSI = 100·involved/other, both of the same day and the same device.
//
// Source: Gokeler 2017 (KSSTA), definition.
// Studied: 90 is the usual mark (Grindem 2016, Cristiani 2019). It flatters where the other leg has lost strength too
// (Wellsandt 2017: 57 % passed at 90 by symmetry, 29 % by the other leg's value before surgery). It is not the
// worse/better index of Markström 2022, which never exceeds 100 and by which three of four uninjured people miss 90 in some test.
// Refuses: another leg that is zero, below zero or no number; an involved leg below zero or no number.
func Symmetry[Q unit.Quantity](involved, other Q) (unit.Percent, error) {
	switch {
	case !positive(other):
		return 0, errors.New("the other leg has no value above zero: no symmetry")
	case !number(involved) || involved < 0:
		return 0, errors.New("this leg has no value: no symmetry")
	}
	return share(involved, other), nil
}

// share is a in hundredths of b.
func share[Q ~float64](a, b Q) unit.Percent {
	return unit.Percent(float64(100*float64(a)) / float64(b))
}
