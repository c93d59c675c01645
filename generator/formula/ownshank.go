package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the leg's own weight, by sex.
var (
	ByOwnShank = basis.Rule{Name: "moment of the own leg (Plagenhoef, women)", Source: "Plagenhoef 1983; foot at the ankle",
		Sum: "$1 × 9.80665 × $2 × (0.0535 × 0.419 + 0.0133) × cos($3)"}
	ByOwnShankOfMan = basis.Rule{Name: "moment of the own leg (Plagenhoef, men)", Source: "Plagenhoef 1983; foot at the ankle",
		Sum: "$1 × 9.80665 × $2 × (0.0475 × 0.434 + 0.0143) × cos($3)"}
)

// OwnShank returns what the lower leg itself asks of the knee when it is straightened, sitting: (m_shank·c + m_foot)·g·l·cos φ.
//
// Source: Plagenhoef 1983, read in an openly published teaching data file; the foot is taken at the ankle.
// Studied: as LimbMoment.
// Refuses: another sex than female or male; a mass or a shank of zero or less; a bend that is no number.
func OwnShank(mass unit.Kilograms, shank unit.Metres, sex Sex, φ unit.Degrees) (unit.NewtonMetres, error) {
	body, known := plagenhoef[sex]
	switch {
	case !known:
		return 0, errSex
	case !positive(mass) || !positive(shank) || !number(φ):
		return 0, errors.New("the body mass, the shank and the bend are needed: no moment of the own leg")
	}
	arms := float64(shank) * (float64(body.shank*body.centre) + body.foot)
	return unit.NewtonMetres(float64(float64(float64(mass)*unit.NewtonsPerKgf)*arms) * cosine(φ)), nil
}

// OwnShankRule returns the rule by which OwnShank reckons for a sex; its inputs are the mass, the shank and the bend.
func OwnShankRule(sex Sex) basis.Rule {
	if sex == Male {
		return ByOwnShankOfMan
	}
	return ByOwnShank
}
