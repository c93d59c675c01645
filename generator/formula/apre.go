package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// apre are the verified rows of the three tables, by how often the working weight can be moved. Rows that are only
// remembered refuse; they stand among the known gaps.
var apre = map[unit.Count][]adjustment{
	3: {
		{from: 1, to: 2, leastKg: -5, mostKg: -2.5, leastLb: -10, mostLb: -5},
		{from: 3, to: 4},
		{from: 5, to: 6, leastKg: 2.5, mostKg: 5, leastLb: 5, mostLb: 10},
		{from: 7, to: endless, leastKg: 5, mostKg: 7.5, leastLb: 10, mostLb: 15},
	},
	6: {
		{from: 0, to: 2, leastKg: -5, mostKg: -2.5, leastLb: -10, mostLb: -5},
		{from: 3, to: 4, leastKg: -2.5, mostKg: 0, leastLb: -5, mostLb: 0},
		{from: 5, to: endless, unverified: true},
	},
	10: {
		{from: 4, to: 6, leastKg: -5, mostKg: -2.5, leastLb: -10, mostLb: -5},
		{from: 7, to: 8, leastKg: -2.5, mostKg: 0, leastLb: -5, mostLb: 0},
		{from: 9, to: 11},
		{from: 12, to: endless, unverified: true},
	},
}

// The rules of a set and of the adjusted load where nothing changes; see APREAdjustedRule.
var (
	ByAPRESet      = basis.Rule{Name: "APRE, a set", Sum: "$1 × (25 + 25 × $2) ÷ 100", Source: "APRE, Mann 2010, second-hand"}
	ByAPREAdjusted = basis.Rule{Name: "APRE, adjusted load", Sum: "$1", Source: "APRE, Mann 2010, second-hand"}
)

// APRERepetitions are those of sets 1 and 2 by repetition maximum; sets 3 and 4 are as many as can be done. Source: second-hand.
var APRERepetitions = map[unit.Count][]unit.Count{3: {6, 3}, 6: {10, 6}, 10: {12, 10}}

// APRESet returns the load of sets 1 to 3 of a session: 50, 75 and 100 % of what can be moved 3, 6 or 10 times.
//
// Source: Siff, Supertraining; Mann 2010 (JSCR 24:1718–1723), both second-hand.
// Studied: college football players; one case after reconstruction, from week 20 (Horschig 2014). Its sets go to failure.
// Refuses: another set than 1, 2 or 3; a load of zero or less.
func APRESet(rm unit.Kilograms, set unit.Count) (unit.Kilograms, error) {
	return ofRepetitionMaximum(rm, set, []unit.Percent{50, 75, 100})
}

// APREAdjusted returns the load after a set to failure: of set 4 from set 3, of the next session from set 4. of is the
// scheme: 3, 6 or 10. Of a printed range the careful end is taken.
//
// Source: Siff, Supertraining; Mann 2010, both second-hand.
// Studied: as APRESet.
// Refuses: another scheme; rows that were read nowhere (6: 5 and more; 10: 12 and more); too few repetitions for a row; a rise
// of more than 10 %; a load of zero or less.
func APREAdjusted(load unit.Kilograms, of, reps unit.Count, m Marked) (unit.Kilograms, error) {
	table, known := apre[of]
	if !known {
		return 0, errors.New("the scheme APRE is known for 3, 6 and 10 repetitions: no change of load")
	}
	return adjusted(load, table, reps, m, "APRE-"+digits(of))
}

// APREAdjustedRule returns the rule by which APREAdjusted reckons.
func APREAdjustedRule(of, reps unit.Count, m Marked) basis.Rule {
	return adjustedRule(ByAPREAdjusted, apre[of], reps, m)
}
