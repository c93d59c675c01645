package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Pull is one measured point of a band: how far it was stretched, in hundredths of its length at rest, and its force.
type Pull struct {
	Stretch unit.Percent
	Force   unit.Newtons
}

// The rules of a stretch, of the force of a band and of the way back. Inputs of the last two: the two points, stretch
// before force, then what is asked for.
var (
	ByStretch    = basis.Rule{Name: "stretch of a band", Sum: "100 × ($1 − $2) ÷ $2", Source: "definition"}
	ByElastic    = basis.Rule{Name: "force of a band", Sum: "$2 + ($4 − $2) × ($5 − $1) ÷ ($3 − $1)", Source: "straight line between two measured points"}
	ByStretchFor = basis.Rule{Name: "stretch for a force", Sum: "$1 + ($3 − $1) × ($5 − $2) ÷ ($4 − $2)", Source: "straight line between two measured points"}
)

// Stretch returns how far a band is stretched: 100·(L − L₀)/L₀.
//
// Source: definition.
// Studied: every band.
// Refuses: a length at rest of zero or less; a length shorter than that, or no number.
func Stretch(L, rest unit.Metres) (unit.Percent, error) {
	if !positive(rest) || !number(L) || L < rest {
		return 0, errors.New("the length at rest and a longer one are needed: no stretch")
	}
	return unit.Percent(float64(100*float64(L-rest)) / float64(rest)), nil
}

// Elastic returns the force of a band at a stretch, on the straight line between two points that were measured on it.
//
// Source: straight line; over the usual range force is close to linear in the stretch, wide-range tubing is not.
// Studied: between the two points only. Makers' values were too high in five of eight grades (Uchida 2016), so each band is measured.
// Refuses: two points of one stretch, or of a force that does not rise; a stretch outside the two points; values below zero or no numbers.
func Elastic(a, b Pull, at unit.Percent) (unit.Newtons, error) {
	a, b, err := measured(a, b)
	switch {
	case err != nil:
		return 0, err
	case !number(at) || at < a.Stretch || at > b.Stretch:
		return 0, errors.New("the stretch lies outside the two measured points: measure a point beyond it")
	}
	rise := float64(b.Force-a.Force) * float64(at-a.Stretch)
	return a.Force + unit.Newtons(rise/float64(b.Stretch-a.Stretch)), nil
}

// StretchFor returns how far a band is stretched for a force: Elastic, turned round.
//
// Source: straight line.
// Studied: as Elastic.
// Refuses: as Elastic; a force outside the two points.
func StretchFor(a, b Pull, F unit.Newtons) (unit.Percent, error) {
	a, b, err := measured(a, b)
	switch {
	case err != nil:
		return 0, err
	case !number(F) || F < a.Force || F > b.Force:
		return 0, errors.New("the force lies outside the two measured points: measure a point beyond it, or take another band")
	}
	run := float64(b.Stretch-a.Stretch) * float64(F-a.Force)
	return a.Stretch + unit.Percent(run/float64(b.Force-a.Force)), nil
}

// measured orders the two points of a band, and refuses those that make no line.
func measured(a, b Pull) (lower, upper Pull, err error) {
	for _, p := range []Pull{a, b} {
		if !number(p.Stretch) || p.Stretch < 0 || !positive(p.Force) {
			return a, b, errors.New("a point of a band has a stretch and a force above zero: no line")
		}
	}
	if a.Stretch > b.Stretch {
		a, b = b, a
	}
	if a.Stretch == b.Stretch || a.Force >= b.Force {
		return a, b, errors.New("the force of a band rises from its first point to its second: measure both again")
	}
	return a, b, nil
}
