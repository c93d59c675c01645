package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// footBelowAnkle is how far below the ankle bone the centre of the foot is taken; chosen, a rough figure: 1 cm of it moves
// the moment by less than 0.1 N·m.
const footBelowAnkle unit.Metres = 0.04

// ByLimbMomentByDeLeva is the rule of LimbMomentByDeLeva for a woman; see LimbMomentByDeLevaRule.
var ByLimbMomentByDeLeva = basis.Rule{
	Name: "moment of the lower leg (de Leva, women)", Source: "de Leva 1996; the foot's centre 4 cm below the ankle is chosen",
	Sum: "$1 × 9.80665 × (0.0481 × 0.4416 × $2 + 0.0129 × ($2 + 0.04))",
}

// ByLimbMomentOfMan is the rule of LimbMomentByDeLeva for a man.
var ByLimbMomentOfMan = basis.Rule{
	Name: "moment of the lower leg (de Leva, men)", Source: "de Leva 1996; the foot's centre 4 cm below the ankle is chosen",
	Sum: "$1 × 9.80665 × (0.0433 × 0.4459 × $2 + 0.0137 × ($2 + 0.04))",
}

// LimbMomentByDeLeva returns the moment of the weight of shank and foot about the knee, the leg held straight out, with
// segments by sex: m·g·(s·c·l + f·(l + 0.04 m)), l the shank from the knee to the outer ankle bone.
//
// Source: de Leva 1996, J Biomech 29:1223–1230, Table 4, read in an openly published teaching data file.
// Studied: segment tables of young adults. Winter's table, of both sexes, gives 0.36 N·m more for a woman of 62 kg and 0.91
// for a man of 80: good to 1 N·m and no better. A leg weighed on the sensor is worth more.
// Refuses: another sex than female or male; a mass or a shank of zero or less.
func LimbMomentByDeLeva(mass unit.Kilograms, shank unit.Metres, sex Sex) (unit.NewtonMetres, error) {
	body, known := deLeva[sex]
	switch {
	case !known:
		return 0, errSex
	case !positive(mass):
		return 0, errors.New("the body mass is not known: no moment of the lower leg")
	case !positive(shank):
		return 0, errors.New("the length of the shank is not known: no moment of the lower leg")
	}
	arms := float64(body.shank*float64(body.centre*float64(shank))) + float64(body.foot*float64(shank+footBelowAnkle))
	return unit.NewtonMetres(float64(float64(mass)*unit.NewtonsPerKgf) * arms), nil
}

// LimbMomentByDeLevaRule returns the rule by which LimbMomentByDeLeva reckons for a sex.
func LimbMomentByDeLevaRule(sex Sex) basis.Rule {
	if sex == Male {
		return ByLimbMomentOfMan
	}
	return ByLimbMomentByDeLeva
}
