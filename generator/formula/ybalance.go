package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// AnteriorFlaggedAbove is the difference between the legs that flags; second-hand. Source: Plisky 2006, JOSPT 36:911, where
// it went with 2.5 times the injuries of girls who play basketball. Of healthy soldiers 31.3 % are above it (Shaffer 2013).
const AnteriorFlaggedAbove unit.Metres = 0.04

// ByYBalance is the rule of YBalance.
var ByYBalance = basis.Rule{Name: "Y-balance composite", Sum: "100 × ($1 + $2 + $3) ÷ (3 × $4)", Source: "Plisky 2006, second-hand"}

// YBalance returns the three reaches of one leg as a share of its length: 100·(ANT + PM + PL)/(3·leg), the leg measured from
// the front of the hip bone to the inner ankle bone.
//
// Source: Plisky 2006, JOSPT 36:911, second-hand.
// Studied: girls who play basketball. One test of a reach is good to 3.1 to 4.2 cm (SEM; Shaffer 2013).
// Refuses: a reach or a length that is zero, below zero or no number; a reach of more than one and a half legs.
func YBalance(anterior, posteromedial, posterolateral, leg unit.Metres) (unit.Percent, error) {
	if !positive(leg) {
		return 0, errors.New("the length of the leg is not known: no composite")
	}
	for _, reach := range []unit.Metres{anterior, posteromedial, posterolateral} {
		switch {
		case !positive(reach):
			return 0, errors.New("one of the three reaches is missing: no composite")
		case reach > 1.5*leg:
			return 0, errors.New("a reach is more than one and a half legs long: look at the unit")
		}
	}
	return share(anterior+posteromedial+posterolateral, 3*leg), nil
}
