package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Marked is the unit that the plates of a machine are marked in. A table of changes has a column for each, and neither is
// worked out from the other.
type Marked string

const (
	InKilograms Marked = "kg"
	InPounds    Marked = "lb"
)

// adjustment is a row of a table that changes a load by the repetitions that were done to failure. least and most are the
// printed change, in kilograms and in pounds.
type adjustment struct {
	from, to        unit.Count
	leastKg, mostKg float64
	leastLb, mostLb float64
	unverified      bool // read nowhere: the row refuses
}

var endless = unit.Count(math.Inf(1))

// stepMost is the largest rise, as a share of the load, that a table may ask for. Source: ACSM 2009, 2 to 10 %.
const stepMost unit.Percent = 10

// careful is the change of a row that is taken: of a rise the smallest that is printed, of a fall the largest.
func (a adjustment) careful(m Marked) float64 {
	least, most := a.leastKg, a.mostKg
	if m == InPounds {
		least, most = a.leastLb, a.mostLb
	}
	if most <= 0 && least < 0 {
		return least
	}
	return math.Max(least, 0)
}

// find returns the row of a table for repetitions done, and refuses what is in none.
func find(table []adjustment, reps unit.Count, name string) (adjustment, error) {
	if !number(reps) || reps < 0 || reps != unit.CutTo(reps, 1) {
		return adjustment{}, errors.New("the repetitions were not counted: no change of load")
	}
	for _, row := range table {
		switch {
		case reps < row.from || reps > row.to:
		case row.unverified:
			return adjustment{}, basis.Say("the row of {a} for this number of repetitions was read nowhere: no change of load", name)
		default:
			return row, nil
		}
	}
	return adjustment{}, basis.Say("the scheme {a} has no row for so few repetitions: find the weight anew", name)
}

// adjusted changes a load by a row.
func adjusted(load unit.Kilograms, table []adjustment, reps unit.Count, m Marked, name string) (unit.Kilograms, error) {
	row, err := find(table, reps, name)
	switch {
	case m != InKilograms && m != InPounds:
		return 0, errors.New("plates are marked in kg or in lb: no change of load")
	case !positive(load):
		return 0, errors.New("there is no load: no change of it")
	case err != nil:
		return 0, err
	}
	change := inKilograms(row.careful(m), m)
	switch {
	case change > 0 && unit.CutTo(share(change, load), 1e-6) > stepMost:
		return 0, basis.Say("the smallest step of {a} is more than 10 % of this load: add repetitions first", name)
	case load+change <= 0:
		return 0, basis.Say("the fall of {a} leaves no load: find the weight anew", name)
	}
	return load + change, nil
}

func inKilograms(change float64, m Marked) unit.Kilograms {
	if m == InPounds {
		return unit.Kilograms(change * unit.KilogramsPerPound)
	}
	return unit.Kilograms(change)
}

// adjustedRule is the rule of adjusted: the change stands in the sum.
func adjustedRule(by basis.Rule, table []adjustment, reps unit.Count, m Marked) basis.Rule {
	row, err := find(table, reps, by.Name.String())
	if err != nil {
		return basis.Rule{Name: by.Name, Source: by.Source}
	}
	change, times := row.careful(m), ""
	if m == InPounds {
		times = " × " + digits(unit.Kilograms(unit.KilogramsPerPound))
	}
	switch {
	case change > 0:
		by.Sum = "$1 + " + digits(unit.Kilograms(change)) + times
	case change < 0:
		by.Sum = "$1 − " + digits(unit.Kilograms(-change)) + times
	default:
		by.Sum = "$1"
	}
	return by
}
