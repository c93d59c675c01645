package formula_test

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// adapted is a formula whose inputs are not all numbers: f takes them as numbers, words by their place (see words), and rule
// gives the rule for them with the inputs that its sum counts.
type adapted struct {
	f    func(in []float64) (float64, error)
	rule func(in []float64) (basis.Rule, []float64)
}

// words are the words that a formula takes, as a cell and as an Example write them.
var words = map[string]float64{
	"-":     math.NaN(), // not answered
	"epley": 0, "brzycki": 1, "lombardi": 2, "oconner": 3, "wathen": 4, "mayhew": 5, "lander": 6,
	"Epley": 0, "Brzycki": 1, "Lombardi": 2, "OConner": 3, "Wathen": 4, "Mayhew": 5, "Lander": 6,
	"female": 0, "male": 1, "Female": 0, "Male": 1,
	"kg": 0, "lb": 1, "InKilograms": 0, "InPounds": 1,
	"two-leg-squat": 0, "one-leg-squat": 1, "step-up": 2, "one-leg-heel-raise": 3,
	"TwoLegSquat": 0, "OneLegSquat": 1, "StepUp": 2, "OneLegHeelRaise": 3,
	"load-chart": 0, "range-chart": 1, "LoadChart": 0, "RangeChart": 1,
	"straight": 0, "log-time": 1, "resistant": 2,
}

// unsummed are the formulas that are read off or chosen: their rules have no sum.
var unsummed = map[string]bool{"ShareByChart": true, "StepOfRPE": true, "TwoForTwo": true, "Plates": true, "StudentT": true, "BodyShare": true}

// pick is the word at a place; a place that there is none of gives a word that no formula knows.
func pick[W ~string](of []W, place float64) W {
	if place >= 0 && place < float64(len(of)) && place == math.Floor(place) {
		return of[int(place)]
	}
	return "unknown"
}

func sex(place float64) formula.Sex {
	return pick([]formula.Sex{formula.Female, formula.Male}, place)
}

// yes is a number for a yes or a no.
func yes(v bool, err error) (float64, error) {
	if v {
		return 1, err
	}
	return 0, err
}

// bare is a result without its unit.
func bare[Q ~float64](v Q, err error) (float64, error) { return float64(v), err }

// list gives numbers a unit.
func list[Q ~float64](in []float64) []Q {
	out := make([]Q, len(in))
	for i, x := range in {
		out[i] = Q(x)
	}
	return out
}

var shelfOfTests = map[string]entry{
	"TorqueOff":  {formula.TorqueOff, formula.ByTorqueOff},
	"ForceAtArm": {formula.ForceAtArm, formula.ByForceAtArm},
	"LimbMomentByDeLeva": {adapted{
		func(a []float64) (float64, error) {
			return bare(formula.LimbMomentByDeLeva(unit.Kilograms(a[0]), unit.Metres(a[1]), sex(a[2])))
		},
		func(a []float64) (basis.Rule, []float64) { return formula.LimbMomentByDeLevaRule(sex(a[2])), a[:2] },
	}, formula.ByLimbMomentByDeLeva},
	"LimbMomentWeighed":   {formula.LimbMomentWeighed, formula.ByLimbMomentWeighed},
	"GravityFromWeighed":  {formula.GravityFromWeighed, formula.ByGravityFromWeighed},
	"WorseToBetter":       {formula.WorseToBetter[unit.Metres], formula.ByWorseToBetter},
	"PercentChange":       {formula.PercentChange[unit.Newtons], formula.ByPercentChange},
	"SEM":                 {formula.SEM[unit.Percent], formula.BySEM},
	"MDC":                 {formula.MDC[unit.Percent], formula.ByMDC},
	"MDC90":               {formula.MDC90[unit.Percent], formula.ByMDC90},
	"MDC95":               {formula.MDC95[unit.Percent], formula.ByMDC95},
	"BandLow":             {formula.BandLow[unit.Percent], formula.ByBandLow},
	"BandHigh":            {formula.BandHigh[unit.Percent], formula.ByBandHigh},
	"Proportion":          {formula.Proportion, formula.ByProportion},
	"HopForHeight":        {formula.HopForHeight, formula.ByHopForHeight},
	"HopBattery":          {formula.HopBattery, formula.ByHopBattery},
	"YBalance":            {formula.YBalance, formula.ByYBalance},
	"ReachDifference":     {formula.ReachDifference, formula.ByReachDifference},
	"RiseScore":           {formula.RiseScore, formula.ByRiseScore},
	"RelativeRateLinear":  {formula.RelativeRateLinear, formula.ByRelativeRateLinear},
	"RelativeRate":        {formula.RelativeRate, formula.ByRelativeRate},
	"RelativeRateLow":     {formula.RelativeRateLow, formula.ByRelativeRateLow},
	"RelativeRateHigh":    {formula.RelativeRateHigh, formula.ByRelativeRateHigh},
	"RelativeRateByMonth": {formula.RelativeRateByMonth, formula.ByRelativeRateByMonth},
}

// scored is a questionnaire on the shelf: NaN is an item that was not answered.
func scored(score func(formula.Items) (unit.Points, error), rule func(formula.Items) basis.Rule) adapted {
	return adapted{
		func(in []float64) (float64, error) { return bare(score(items(in))) },
		func(in []float64) (basis.Rule, []float64) { return rule(items(in)), in },
	}
}

func always(by basis.Rule) func(formula.Items) basis.Rule {
	return func(formula.Items) basis.Rule { return by }
}

func items(in []float64) (all formula.Items) {
	for _, x := range in {
		if math.IsNaN(x) {
			all = append(all, formula.Answer{})
		} else {
			all = append(all, formula.Answered(unit.Points(x)))
		}
	}
	return all
}

var shelfOfQuestionnaires = map[string]entry{
	"IKDC":         {scored(formula.IKDC, formula.IKDCRule), formula.ByIKDC},
	"IKDCFromRaw":  {formula.IKDCFromRaw, formula.ByIKDCFromRaw},
	"PediIKDC":     {formula.PediIKDC, formula.ByPediIKDC},
	"KOOSPain":     {scored(formula.KOOSPain, always(formula.ByKOOSPain)), formula.ByKOOSPain},
	"KOOSSymptoms": {scored(formula.KOOSSymptoms, always(formula.ByKOOSSymptoms)), formula.ByKOOSSymptoms},
	"KOOSADL":      {scored(formula.KOOSADL, always(formula.ByKOOSADL)), formula.ByKOOSADL},
	"KOOSSport":    {scored(formula.KOOSSport, always(formula.ByKOOSSport)), formula.ByKOOSSport},
	"KOOSQOL":      {scored(formula.KOOSQOL, always(formula.ByKOOSQOL)), formula.ByKOOSQOL},
	"KOSADLS":      {scored(formula.KOSADLS, always(formula.ByKOSADLS)), formula.ByKOSADLS},
	"ACLRSI":       {scored(formula.ACLRSI, always(formula.ByACLRSI)), formula.ByACLRSI},
	"ACLRSIShort":  {scored(formula.ACLRSIShort, always(formula.ByACLRSIShort)), formula.ByACLRSIShort},
	"LEFS":         {scored(formula.LEFS, always(formula.ByLEFS)), formula.ByLEFS},
	"LEFSPercent":  {formula.LEFSPercent, formula.ByLEFSPercent},
	"TSK11":        {scored(formula.TSK11, always(formula.ByTSK11)), formula.ByTSK11},
	"Tegner":       {scored(formula.Tegner, always(formula.ByTegner)), formula.ByTegner},
}

var chainsOfTests = map[string]func(a []float64) (float64, error){
	"proportion low": func(a []float64) (float64, error) {
		i, err := formula.ProportionInterval(unit.Count(a[0]), unit.Count(a[1]), unit.Percent(a[2]))
		return float64(i.Low), err
	},
	"proportion high": func(a []float64) (float64, error) {
		i, err := formula.ProportionInterval(unit.Count(a[0]), unit.Count(a[1]), unit.Percent(a[2]))
		return float64(i.High), err
	},
	// body mass, shank, sex, angle
	"gravity by de Leva": func(a []float64) (float64, error) {
		return then("GravityAt", a[3])(call("LimbMomentByDeLeva", a[0], a[1], a[2]))
	},
	// body mass, shank, sex, force, arm, angle
	"straightening by de Leva": straighteningByDeLeva,
	"straightening by de Leva per kg": func(a []float64) (float64, error) {
		return then("PerKilogram", a[0])(straighteningByDeLeva(a))
	},
	// the lower seats of the two legs
	"symmetry of rises": func(a []float64) (float64, error) {
		involved, err := call("RiseScore", a[0])
		if err != nil {
			return 0, err
		}
		other, err := call("RiseScore", a[1])
		if err != nil {
			return 0, err
		}
		return call("Symmetry", involved, other)
	},
	"reach flagged": func(a []float64) (float64, error) {
		v, err := formula.ReachDifference(unit.Metres(a[0]), unit.Metres(a[1]))
		if err != nil {
			return 0, err
		}
		return yes(formula.ReachFlagged(v), nil)
	},
	// change, SEM: is it above MDC95?
	"change is real": func(a []float64) (float64, error) {
		mdc, err := call("MDC95", a[1])
		return yes(a[0] > mdc, err)
	},
	"LEFS change": func([]float64) (float64, error) { return float64(formula.LEFSChange), nil },
}

func straighteningByDeLeva(a []float64) (float64, error) {
	torque, err := call("Torque", a[3], a[4])
	if err != nil {
		return 0, err
	}
	g, err := then("GravityAt", a[5])(call("LimbMomentByDeLeva", a[0], a[1], a[2]))
	if err != nil {
		return 0, err
	}
	return call("ExtensionCorrected", torque, g)
}
