package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// BodyExercise is an exercise in which the body itself is moved.
type BodyExercise string

const (
	TwoLegSquat     BodyExercise = "two-leg-squat"
	OneLegSquat     BodyExercise = "one-leg-squat"
	StepUp          BodyExercise = "step-up"
	OneLegHeelRaise BodyExercise = "one-leg-heel-raise"
)

// ByBodyShare is the rule of BodyShare; it is worked out from a table of segments, see BodyShareRule.
var ByBodyShare = basis.Rule{Name: "share of the body that is moved", Source: "Plagenhoef 1983; without the parts that stay: Cormie 2007"}

// BodyShare returns the share of body mass that an exercise moves: all but what stays on the ground. Two legs leave both
// shanks and feet, one leg its own, a heel raise its foot.
//
// Source: masses of Plagenhoef 1983, second-hand; leaving out shanks and feet: Cormie 2007 (JSCR 21:1042–1049).
// Studied: adults. By de Leva the squat of two legs moves about 1 % more.
// Refuses: another exercise; another sex than female or male.
func BodyShare(of BodyExercise, sex Sex) (unit.Percent, error) {
	body, known := plagenhoef[sex]
	if !known {
		return 0, errSex
	}
	switch of {
	case TwoLegSquat:
		return unit.Percent(100 - float64(200*(body.shank+body.foot))), nil
	case OneLegSquat, StepUp:
		return unit.Percent(100 - float64(100*(body.shank+body.foot))), nil
	case OneLegHeelRaise:
		return unit.Percent(100 - float64(100*body.foot)), nil
	}
	return 0, errors.New("how much of the body this exercise moves is not known: write " +
		"two-leg-squat, one-leg-squat, step-up or one-leg-heel-raise")
}

// BodyShareRule returns the rule by which BodyShare reckons, without inputs.
func BodyShareRule(of BodyExercise, sex Sex) basis.Rule {
	body, by := plagenhoef[sex], ByBodyShare
	shank, foot := digits(unit.Percent(body.shank)), digits(unit.Percent(body.foot))
	switch of {
	case TwoLegSquat:
		by.Sum = "100 − 200 × (" + shank + " + " + foot + ")"
	case OneLegSquat, StepUp:
		by.Sum = "100 − 100 × (" + shank + " + " + foot + ")"
	case OneLegHeelRaise:
		by.Sum = "100 − 100 × " + foot
	}
	return by
}
