package formula_test

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

var shelfOfSets = map[string]entry{
	"TwoForTwo": {adapted{f: func(a []float64) (float64, error) {
		return yes(formula.TwoForTwo(unit.Count(a[0]), unit.Count(a[1]), unit.Count(a[2])))
	}}, formula.ByTwoForTwo},
	"Plates": {adapted{f: func(a []float64) (float64, error) { // how many
		v, err := formula.Plates(unit.Kilograms(a[0]), list[unit.Kilograms](a[1:]))
		return float64(len(v)), err
	}}, formula.ByPlates},
	"DAPRESet": {formula.DAPRESet, formula.ByDAPRESet},
	"DAPREFourth": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.DAPREFourth(unit.Kilograms(a[0]), unit.Count(a[1]), marked(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.DAPREFourthRule(unit.Count(a[1]), marked(a[2])), a
		},
	}, formula.ByDAPREFourth},
	"DAPRENext": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.DAPRENext(unit.Kilograms(a[0]), unit.Count(a[1]), marked(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.DAPRENextRule(unit.Count(a[1]), marked(a[2])), a
		},
	}, formula.ByDAPRENext},
	"APRESet": {formula.APRESet, formula.ByAPRESet},
	"APREAdjusted": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.APREAdjusted(unit.Kilograms(a[0]), unit.Count(a[1]), unit.Count(a[2]), marked(a[3])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.APREAdjustedRule(unit.Count(a[1]), unit.Count(a[2]), marked(a[3])), a
		},
	}, formula.ByAPREAdjusted},
	"DeLorme":         {formula.DeLorme, formula.ByDeLorme},
	"Oxford":          {formula.Oxford, formula.ByOxford},
	"CuffPressure":    {formula.CuffPressure, formula.ByCuffPressure},
	"CuffLoad":        {formula.CuffLoad, formula.ByCuffLoad},
	"CuffTime":        {formula.CuffTime, formula.ByCuffTime},
	"StimulationTime": {formula.StimulationTime, formula.ByStimulationTime},
	"IntervalTime":    {formula.IntervalTime, formula.ByIntervalTime},
	"Tonnage": {adapted{
		func(a []float64) (float64, error) { return bare(formula.Tonnage(lifts(a))) },
		func(a []float64) (basis.Rule, []float64) { return formula.TonnageRule(len(a) / 2), a },
	}, formula.ByTonnage},
	"SessionLoad":          {formula.SessionLoad, formula.BySessionLoad},
	"WeekLoad":             {formula.WeekLoad, formula.ByWeekLoad},
	"Monotony":             {formula.Monotony, formula.ByMonotony},
	"MonotonyOfPopulation": {formula.MonotonyOfPopulation, formula.ByMonotonyOfPopulation},
	"Strain":               {formula.Strain, formula.ByStrain},
}

func lifts(a []float64) (sets []formula.Lift) {
	for i := 0; i+1 < len(a); i += 2 {
		sets = append(sets, formula.Lift{Load: unit.Kilograms(a[i]), Reps: unit.Count(a[i+1])})
	}
	return sets
}
