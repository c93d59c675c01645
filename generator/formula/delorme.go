package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the two schemes: a share of the ten-repetition maximum, 50, 75 and 100 % up or down.
var (
	ByDeLorme = basis.Rule{Name: "DeLorme, a set", Sum: "$1 × (25 + 25 × $2) ÷ 100", Source: "DeLorme & Watkins 1948, second-hand"}
	ByOxford  = basis.Rule{Name: "Oxford, a set", Sum: "$1 × (125 − 25 × $2) ÷ 100", Source: "Zinovieff 1951, second-hand"}
)

// DeLorme returns the load of sets 1 to 3 of ten repetitions each: 50, 75 and 100 % of what can be moved ten times.
//
// Source: DeLorme & Watkins 1948 and 1950, second-hand.
// Studied: 50 people, knee extension, 3 days a week for 9 weeks; no difference from Oxford (Fish 2003, Am J Phys Med Rehabil 82:903–909).
// Refuses: another set than 1, 2 or 3; a load of zero or less.
func DeLorme(tenRM unit.Kilograms, set unit.Count) (unit.Kilograms, error) {
	return ofRepetitionMaximum(tenRM, set, []unit.Percent{50, 75, 100})
}

// Oxford returns the load of sets 1 to 3 of ten repetitions each, heaviest first: 100, 75 and 50 % of what can be moved ten times.
//
// Source: Zinovieff 1951, second-hand (order and shares in reprints).
// Studied: as DeLorme.
// Refuses: as DeLorme.
func Oxford(tenRM unit.Kilograms, set unit.Count) (unit.Kilograms, error) {
	return ofRepetitionMaximum(tenRM, set, []unit.Percent{100, 75, 50})
}
