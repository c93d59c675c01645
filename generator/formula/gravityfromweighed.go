package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByGravityFromWeighed is the rule of GravityFromWeighed.
var ByGravityFromWeighed = basis.Rule{Name: "gravity of the weighed leg", Sum: "$1 × $2 ÷ cos($3) × cos($4)", Source: "moment of a weight; sitting, thigh level"}

// GravityFromWeighed returns the moment of the lower leg at the bend θ of a test, from its weight W on the sensor at the arm L
// and another bend: G = W·L·cos θ/cos θ_weighed. It is GravityAt of LimbMomentWeighed.
//
// Source: moment of a weight about the knee.
// Studied: as LimbMomentWeighed; the input to be preferred over any table of segments.
// Refuses: as LimbMomentWeighed; a bend of the test that is no number.
func GravityFromWeighed(W unit.Newtons, L unit.Metres, weighed, θ unit.Degrees) (unit.NewtonMetres, error) {
	moment, err := LimbMomentWeighed(W, L, weighed)
	switch {
	case err != nil:
		return 0, err
	case !number(θ):
		return 0, errors.New("the bend of the test is not known: no gravity")
	}
	return GravityAt(moment, θ), nil
}
