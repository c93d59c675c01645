package formula

import (
	"errors"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of what hangs on one side of a bar, and of which plates make it. The second is a choice and has no sum.
var (
	ByASide  = basis.Rule{Name: "on each side of the bar", Sum: "($1 − $2) ÷ 2", Source: "half of what is not the bar"}
	ByPlates = basis.Rule{Name: "plates of one side", Source: "heaviest first, none left over"}
)

// Bounds against a slip of units; chosen: the lightest plates in use have 125 g.
const (
	lightestPlate unit.Kilograms = 0.1
	heaviestSide  unit.Kilograms = 500
)

// ASide returns what hangs on each side of a bar: (load − bar)/2.
//
// Source: half of what is not the bar.
// Studied: plates alike on both sides, collars counted with the bar.
// Refuses: a bar of zero or less; a load below the bar, or no number.
func ASide(load, bar unit.Kilograms) (unit.Kilograms, error) {
	switch {
	case !positive(bar):
		return 0, errors.New("the mass of the bar is not known: no plates")
	case !number(load) || load < bar:
		return 0, errors.New("the bar alone is already heavier than this load")
	}
	return (load - bar) / 2, nil
}

// Plates returns the plates of one side, heaviest first, from the sizes that a place has, each in pairs without end.
// 16.25 kg of 25, 20, 15, 10, 5, 2.5 and 1.25 are 15 and 1.25.
//
// Source: heaviest first.
// Studied: sizes of which each is made of smaller ones; of others it may find none where there is one.
// Refuses: a side below zero, above 500 kg or no number; no sizes, or one below 100 g; a rest that no plate makes: cut the load to the step first.
func Plates(side unit.Kilograms, sizes []unit.Kilograms) ([]unit.Kilograms, error) {
	switch {
	case !number(side) || side < 0 || len(sizes) == 0:
		return nil, errors.New("a side of a bar and the sizes of plates are needed: no plates")
	case side > heaviestSide:
		return nil, errors.New("a side of a bar bears no more than 500 kg: look at the unit")
	}
	sorted := slices.Clone(sizes)
	slices.Sort(sorted)
	slices.Reverse(sorted)
	var hung []unit.Kilograms
	for _, size := range sorted {
		if !positive(size) || size < lightestPlate {
			return nil, errors.New("a plate is lighter than 100 g: no plates")
		}
		for unit.CutTo(side, size) >= size {
			hung, side = append(hung, size), side-size
		}
	}
	if side > 1e-9 {
		return nil, errors.New("no plates make this load: cut it to the step first")
	}
	return hung, nil
}
