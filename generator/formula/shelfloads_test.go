package formula_test

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

func equation(place float64) formula.Equation { return pick(formula.Equations, place) }

func marked(place float64) formula.Marked {
	return pick([]formula.Marked{formula.InKilograms, formula.InPounds}, place)
}

func body(place float64) formula.BodyExercise {
	return pick([]formula.BodyExercise{formula.TwoLegSquat, formula.OneLegSquat, formula.StepUp, formula.OneLegHeelRaise}, place)
}

func chart(place float64) formula.Chart {
	switch place {
	case 0:
		return formula.LoadChart
	case 1:
		return formula.RangeChart
	}
	return formula.Chart{Name: "unknown"}
}

var shelfOfLoads = map[string]entry{
	"OneRMBy": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.OneRMBy(equation(a[0]), unit.Kilograms(a[1]), unit.Count(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.OneRMRuleBy(equation(a[0]), unit.Count(a[2])), a[1:]
		},
	}, formula.OneRMRuleBy(formula.Brzycki, 8)},
	"AllowedShareBy": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.AllowedShareBy(equation(a[0]), unit.Count(a[1])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.AllowedShareRuleBy(equation(a[0]), unit.Count(a[1])), a[1:]
		},
	}, formula.AllowedShareRuleBy(formula.Brzycki, 8)},
	"ImpliedToFailureBy": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.ImpliedToFailureBy(equation(a[0]), unit.Kilograms(a[1]), unit.Kilograms(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.ImpliedToFailureRuleBy(equation(a[0])), a[1:]
		},
	}, formula.ImpliedToFailureRuleBy(formula.Brzycki)},
	"ShareByChart": {adapted{
		func(a []float64) (float64, error) { return bare(formula.ShareByChart(chart(a[0]), unit.Count(a[1]))) },
		func(a []float64) (basis.Rule, []float64) { return formula.ShareByChartRule(chart(a[0])), a[1:] },
	}, formula.ByShareByChart},
	"ReynoldsLegPress": {formula.ReynoldsLegPress, formula.ByReynoldsLegPress},
	"EstimateLow":      {formula.EstimateLow, formula.ByEstimateLow},
	"EstimateHigh":     {formula.EstimateHigh, formula.ByEstimateHigh},
	"ReserveOfRPE":     {formula.ReserveOfRPE, formula.ByReserveOfRPE},
	"MostReserveOfRPE": {adapted{
		func(a []float64) (float64, error) { return bare(formula.MostReserveOfRPE(unit.Points(a[0]))) },
		func(a []float64) (basis.Rule, []float64) { return formula.MostReserveOfRPERule(unit.Points(a[0])), a },
	}, formula.ByMostReserveOfRPE},
	"StepOfRPE": {formula.StepOfRPE, formula.ByStepOfRPE},
	"BackEstimate": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.BackEstimate(unit.Kilograms(a[0]), unit.Count(a[1]), unit.Count(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.BackEstimateRule(unit.Count(a[1]), unit.Count(a[2])), a
		},
	}, formula.ByBackEstimate},
	"NextLoad": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.NextLoad(unit.Kilograms(a[0]), unit.Count(a[1]), unit.Count(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.NextLoadRule(unit.Count(a[1]), unit.Count(a[2])), a
		},
	}, formula.ByNextLoad},
	"RepsNeeded":           {formula.RepsNeeded, formula.ByRepsNeeded},
	"SensibleStep":         {formula.SensibleStep, formula.BySensibleStep},
	"LeastForStep":         {formula.LeastForStep, formula.ByLeastForStep},
	"ASide":                {formula.ASide, formula.ByASide},
	"AngledPress":          {formula.AngledPress, formula.ByAngledPress},
	"AngledMass":           {formula.AngledMass, formula.ByAngledMass},
	"LeverMachine":         {formula.LeverMachine, formula.ByLeverMachine},
	"AnkleWeight":          {formula.AnkleWeight, formula.ByAnkleWeight},
	"AnkleMass":            {formula.AnkleMass, formula.ByAnkleMass},
	"EffectiveLoad":        {formula.EffectiveLoad, formula.ByEffectiveLoad},
	"AddedLoad":            {formula.AddedLoad, formula.ByAddedLoad},
	"Stretch":              {formula.Stretch, formula.ByStretch},
	"MaximumFromIsometric": {formula.MaximumFromIsometric, formula.ByMaximumFromIsometric},
	"IsometricLow":         {formula.IsometricLow, formula.ByIsometricLow},
	"IsometricHigh":        {formula.IsometricHigh, formula.ByIsometricHigh},
	"StartFromIsometric":   {formula.StartFromIsometric, formula.ByStartFromIsometric},
	"HoldTarget":           {formula.HoldTarget[unit.Newtons], formula.ByHoldTarget},
	"OwnShank": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.OwnShank(unit.Kilograms(a[0]), unit.Metres(a[1]), sex(a[2]), unit.Degrees(a[3])))
		},
		func(a []float64) (basis.Rule, []float64) {
			return formula.OwnShankRule(sex(a[2])), []float64{a[0], a[1], a[3]}
		},
	}, formula.ByOwnShank},
	"BodyShare": {adapted{
		func(a []float64) (float64, error) { return bare(formula.BodyShare(body(a[0]), sex(a[1]))) },
		func(a []float64) (basis.Rule, []float64) { return formula.BodyShareRule(body(a[0]), sex(a[1])), nil },
	}, formula.ByBodyShare},
	"Elastic": {adapted{f: func(a []float64) (float64, error) {
		return bare(formula.Elastic(pulls(a), pulls(a[2:]), unit.Percent(a[4])))
	}}, formula.ByElastic},
	"StretchFor": {adapted{f: func(a []float64) (float64, error) {
		return bare(formula.StretchFor(pulls(a), pulls(a[2:]), unit.Newtons(a[4])))
	}}, formula.ByStretchFor},
}

func pulls(a []float64) formula.Pull {
	return formula.Pull{Stretch: unit.Percent(a[0]), Force: unit.Newtons(a[1])}
}
