package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of what is moved with the body, and of what is added to it.
var (
	ByEffectiveLoad = basis.Rule{Name: "moved with the body", Sum: "$1 × $2 ÷ 100 + $3", Source: "sum of masses"}
	ByAddedLoad     = basis.Rule{Name: "added to the body", Sum: "$3 − $1 × $2 ÷ 100", Source: "difference of masses"}
)

// EffectiveLoad returns what is moved in an exercise of the body: its share of body mass and what is added. Shares of a
// maximum, steps and tonnage are reckoned with this.
//
// Source: sum of masses.
// Studied: as BodyShare.
// Refuses: a body mass of zero or less; a share outside 0 to 100; an added load below zero or no number.
func EffectiveLoad(share unit.Percent, mass, added unit.Kilograms) (unit.Kilograms, error) {
	part, err := bodyPart(share, mass)
	switch {
	case err != nil:
		return 0, err
	case !number(added) || added < 0:
		return 0, errors.New("the added load is not known: write 0 where there is none")
	}
	return part + added, nil
}

// AddedLoad returns what is added to the body for an effective load.
//
// Source: difference of masses.
// Studied: as BodyShare.
// Refuses: as EffectiveLoad; an effective load below what the body alone is: that needs help of hands, a counterweight or two legs.
func AddedLoad(share unit.Percent, mass, effective unit.Kilograms) (unit.Kilograms, error) {
	part, err := bodyPart(share, mass)
	switch {
	case err != nil:
		return 0, err
	case !number(effective):
		return 0, errors.New("there is no load to add to")
	case effective < part:
		return 0, errors.New("the body alone is heavier than this load: help with hands, a counterweight or the other leg")
	}
	return effective - part, nil
}

func bodyPart(share unit.Percent, mass unit.Kilograms) (unit.Kilograms, error) {
	switch {
	case !positive(mass):
		return 0, errors.New("the body mass is not known: nothing is known of what is moved")
	case !positive(share) || share > 100:
		return 0, errors.New("the share of the body lies above 0 and up to 100: nothing is known of what is moved")
	}
	return WorkingLoad(mass, share), nil
}
