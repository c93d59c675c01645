package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// dapreFourth and dapreNext are the two columns: repetitions of set 3 give set 4, those of set 4 the next session.
var (
	dapreFourth = []adjustment{
		{from: 0, to: 2, leastKg: -5, mostKg: -2.5, leastLb: -10, mostLb: -5},
		{from: 3, to: 4, leastKg: -2.5, mostKg: 0, leastLb: -5, mostLb: 0},
		{from: 5, to: 6},
		{from: 7, to: 10, leastKg: 2.5, mostKg: 5, leastLb: 5, mostLb: 10},
		{from: 11, to: endless, leastKg: 5, mostKg: 7.5, leastLb: 10, mostLb: 15},
	}
	dapreNext = []adjustment{
		{from: 0, to: 2, leastKg: -5, mostKg: -2.5, leastLb: -10, mostLb: -5},
		{from: 3, to: 4},
		{from: 5, to: 6, leastKg: 2.5, mostKg: 5, leastLb: 5, mostLb: 10},
		{from: 7, to: 10, leastKg: 2.5, mostKg: 7.5, leastLb: 5, mostLb: 15},
		{from: 11, to: endless, leastKg: 5, mostKg: 10, leastLb: 10, mostLb: 20},
	}
)

// The rules of the three loads of a session in kilograms where nothing changes; see their …Rule.
var (
	ByDAPRESet    = basis.Rule{Name: "DAPRE, a set", Sum: "$1 × (25 + 25 × $2) ÷ 100", Source: "DAPRE, Knight 1979, second-hand"}
	ByDAPREFourth = basis.Rule{Name: "DAPRE, set 4", Sum: "$1", Source: "DAPRE, Knight 1979, second-hand"}
	ByDAPRENext   = basis.Rule{Name: "DAPRE, next session", Sum: "$1", Source: "DAPRE, Knight 1979, second-hand"}
)

// DAPRERepetitions are those of sets 1 and 2; sets 3 and 4 are as many as can be done. Source: second-hand.
var DAPRERepetitions = []unit.Count{10, 6}

// DAPRESet returns the load of sets 1 to 3 of a session: 50, 75 and 100 % of the working weight, about what can be moved six times.
//
// Source: Knight 1979 (Am J Sports Med 7:336–337) and 1985, second-hand.
// Studied: knees after injury. Its sets go to failure: not before maximal effort is allowed.
// Refuses: another set than 1, 2 or 3; a working weight of zero or less.
func DAPRESet(working unit.Kilograms, set unit.Count) (unit.Kilograms, error) {
	return ofRepetitionMaximum(working, set, []unit.Percent{50, 75, 100})
}

// DAPREFourth returns the load of set 4 after the repetitions of set 3. Of a printed range the careful end is taken: the
// smallest rise, the largest fall. 40 kg × 8 gives 42.5, × 2 gives 35.
//
// Source: Knight 1979 and 1985, second-hand.
// Studied: as DAPRESet; steps in whole kilograms are large for a light load.
// Refuses: a load of zero or less; repetitions that were not counted; a rise of more than 10 %; a fall to nothing.
func DAPREFourth(working unit.Kilograms, reps3 unit.Count, m Marked) (unit.Kilograms, error) {
	return adjusted(working, dapreFourth, reps3, m, "DAPRE")
}

// DAPREFourthRule returns the rule by which DAPREFourth reckons.
func DAPREFourthRule(reps3 unit.Count, m Marked) basis.Rule {
	return adjustedRule(ByDAPREFourth, dapreFourth, reps3, m)
}

// DAPRENext returns the working weight of the next session from the load and the repetitions of set 4.
//
// Source: Knight 1979 and 1985, second-hand; that set 4 drives the next session: a textbook chapter. That the change is put on the
// load of set 4 is from memory.
// Studied: as DAPREFourth.
// Refuses: as DAPREFourth.
func DAPRENext(fourth unit.Kilograms, reps4 unit.Count, m Marked) (unit.Kilograms, error) {
	return adjusted(fourth, dapreNext, reps4, m, "DAPRE")
}

// DAPRENextRule returns the rule by which DAPRENext reckons.
func DAPRENextRule(reps4 unit.Count, m Marked) basis.Rule {
	return adjustedRule(ByDAPRENext, dapreNext, reps4, m)
}

// ofRepetitionMaximum is the load of a set as a share of what can be moved a set number of times.
func ofRepetitionMaximum(load unit.Kilograms, set unit.Count, shares []unit.Percent) (unit.Kilograms, error) {
	switch {
	case !positive(load):
		return 0, errors.New("there is no working weight: no load of a set")
	case set != unit.CutTo(set, 1) || set < 1 || set > unit.Count(len(shares)):
		return 0, errors.New("this scheme has sets 1, 2 and 3: no load of another")
	}
	return WorkingLoad(load, shares[int(set)-1]), nil
}
