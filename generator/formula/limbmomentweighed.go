package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// weighedRefusedAbove degrees of bend a hanging leg is not weighed; chosen: at 75° the sensor sees a quarter of the weight,
// so its error counts fourfold.
const weighedRefusedAbove unit.Degrees = 75

// ByLimbMomentWeighed is the rule of LimbMomentWeighed.
var ByLimbMomentWeighed = basis.Rule{Name: "moment of the weighed leg", Sum: "$1 × $2 ÷ cos($3)", Source: "moment of a weight"}

// LimbMomentWeighed returns the moment of the lower leg held straight out, from what the sensor showed while the relaxed leg
// hung on it at a bend: W·L/cos θ. It takes the place of LimbMoment.
//
// Source: moment of a weight about the knee.
// Studied: sitting, thigh level, muscles at rest. Model and measured weight agree best near 50° (La Trobe record, 1996) and
// may differ by up to 50 N elsewhere.
// Refuses: a weight or an arm of zero or less; a bend above 75° or below zero.
func LimbMomentWeighed(W unit.Newtons, L unit.Metres, at unit.Degrees) (unit.NewtonMetres, error) {
	switch {
	case !positive(W):
		return 0, errors.New("the leg was not weighed: no moment of the lower leg")
	case !positive(L):
		return 0, errors.New("the arm is not known: no moment of the lower leg")
	case !number(at) || at < 0 || at > weighedRefusedAbove:
		return 0, errors.New("a leg is weighed at 0 to 75° of bend, best near 50°: no moment of the lower leg")
	}
	return unit.NewtonMetres(float64(float64(W)*float64(L)) / cosine(at)), nil
}
