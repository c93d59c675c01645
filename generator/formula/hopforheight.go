package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByHopForHeight is the rule of HopForHeight.
var ByHopForHeight = basis.Rule{Name: "hop as a share of height", Sum: "100 × $1 ÷ $2", Source: "IJSPT 2021, PMC7872464"}

// HopForHeight returns the distance of a single hop as a share of body height: 100·distance/height.
//
// Source: IJSPT 2021, PMC7872464 (marks there: 80 for women, 90 for men).
// Studied: 48 people after reconstruction; nearly 90 % failed at least one of its marks.
// Refuses: a height that is zero, below 1 m or above 2.5 m (a unit slip); a distance below zero or no number, or above three heights.
func HopForHeight(distance, height unit.Metres) (unit.Percent, error) {
	switch {
	case !number(height) || height < 1 || height > 2.5:
		return 0, errors.New("the body height is not known: no hop as a share of it")
	case !number(distance) || distance < 0:
		return 0, errors.New("there is no hop: no share of the height")
	case distance > 3*height:
		return 0, errors.New("a hop of more than three body heights: look at the unit")
	}
	return share(distance, height), nil
}
