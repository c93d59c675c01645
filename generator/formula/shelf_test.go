package formula_test

import (
	"fmt"
	"maps"
	"reflect"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// A formula as the tests call it: the function and its rule. A new formula gets a line here; the test of the table says so.
type entry struct {
	f  any
	by basis.Rule
}

var shelf = together(shelfOfBefore, shelfOfTests, shelfOfQuestionnaires, shelfOfLoads, shelfOfSets, shelfOfTrends)

func together(parts ...map[string]entry) map[string]entry {
	all := map[string]entry{}
	for _, part := range parts {
		maps.Copy(all, part)
	}
	return all
}

var shelfOfBefore = map[string]entry{
	"Torque":                 {formula.Torque, formula.ByTorque},
	"LimbMoment":             {formula.LimbMoment, formula.ByLimbMoment},
	"GravityAt":              {formula.GravityAt, formula.ByGravityAt},
	"ExtensionCorrected":     {formula.ExtensionCorrected, formula.ByExtensionCorrected},
	"FlexionCorrected":       {formula.FlexionCorrected, formula.ByFlexionCorrected},
	"PerKilogram":            {formula.PerKilogram, formula.ByPerKilogram},
	"Symmetry":               {formula.Symmetry[unit.NewtonMetres], formula.BySymmetry},
	"SymmetryTimed":          {formula.SymmetryTimed[unit.Seconds], formula.BySymmetryTimed},
	"Deficit":                {formula.Deficit, formula.ByDeficit},
	"PercentDifference":      {formula.PercentDifference, formula.ByPercentDifference},
	"PreopRatio":             {formula.PreopRatio[unit.NewtonMetres], formula.ByPreopRatio},
	"HamstringsToQuadriceps": {formula.HamstringsToQuadriceps[unit.NewtonMetres], formula.ByHamstringsToQuadriceps},
	"Best":                   {formula.Best[unit.Newtons], formula.ByBest},
	"Quickest":               {formula.Quickest[unit.Seconds], formula.ByQuickest},
	"MeanOf":                 {formula.MeanOf[unit.Newtons], formula.ByMeanOf},
	"SampleSD":               {formula.SampleSD[unit.Newtons], formula.BySampleSD},
	"Spread":                 {formula.Spread[unit.Newtons], formula.BySpread},
	"ToFailure":              {formula.ToFailure, formula.ByToFailure},
	"OneRM":                  {formula.OneRM, formula.ByOneRM},
	"AllowedShare":           {formula.AllowedShare, formula.ByAllowedShare},
	"WorkingLoad":            {formula.WorkingLoad, formula.ByWorkingLoad},
	"TrueShare":              {formula.TrueShare, formula.ByTrueShare},
	"ImpliedToFailure":       {formula.ImpliedToFailure, formula.ByImpliedToFailure},
	"ImpliedReserve":         {formula.ImpliedReserve, formula.ByImpliedReserve},
	"Ceiling":                {formula.Ceiling, formula.ByCeiling},
	"MovedLoad":              {formula.MovedLoad, formula.ByMovedLoad},
	"PutOn":                  {formula.PutOn, formula.ByPutOn},
	"Felt":                   {formula.Felt, formula.ByFelt},
	"Pinned":                 {formula.Pinned, formula.ByPinned},
}

// ruleOf is the rule of a formula for these inputs, and the inputs as the rule counts them.
func ruleOf(name string, in []float64) (basis.Rule, []float64) {
	switch name {
	case "OneRM":
		return formula.OneRMRule(unit.Count(in[1])), in
	case "AllowedShare":
		return formula.AllowedShareRule(unit.Count(in[0])), in
	}
	if a, ok := shelf[name].f.(adapted); ok && a.rule != nil {
		return a.rule(in)
	}
	return shelf[name].by, in
}

// call calls a formula of the shelf with bare numbers.
func call(name string, in ...float64) (float64, error) {
	e, ok := shelf[name]
	if !ok {
		return 0, fmt.Errorf("%s is not on the shelf", name)
	}
	if a, ok := e.f.(adapted); ok {
		return a.f(in)
	}
	f := reflect.ValueOf(e.f)
	var args []reflect.Value
	if first := f.Type().In(0); first.Kind() == reflect.Slice {
		list := reflect.MakeSlice(first, len(in), len(in))
		for i, x := range in {
			list.Index(i).SetFloat(x)
		}
		args = append(args, list)
	} else {
		if len(in) != f.Type().NumIn() {
			return 0, fmt.Errorf("%s wants %d inputs, not %d", name, f.Type().NumIn(), len(in))
		}
		for i, x := range in {
			args = append(args, reflect.ValueOf(x).Convert(f.Type().In(i)))
		}
	}
	out := f.Call(args)
	if len(out) == 2 && !out[1].IsNil() {
		return 0, out[1].Interface().(error)
	}
	return out[0].Float(), nil
}

// chains are sums of several formulas, as a worked example goes through them.
var chains = func() map[string]func(a []float64) (float64, error) {
	all := maps.Clone(chainsOfBefore)
	maps.Copy(all, chainsOfTests)
	maps.Copy(all, chainsOfLoads)
	maps.Copy(all, chainsOfTrends)
	return all
}()

var chainsOfBefore = map[string]func(a []float64) (float64, error){
	"difference of": func(a []float64) (float64, error) { return after(a[:2], "Symmetry", "PercentDifference") },
	"symmetry cut":  func(a []float64) (float64, error) { return tenth(call("Symmetry", a...)) },
	"maximum":       func(a []float64) (float64, error) { return maximum(a[0], a[1], a[2]) },
	"allowed":       func(a []float64) (float64, error) { return after(a, "ToFailure", "AllowedShare") },
	"load":          func(a []float64) (float64, error) { return next(a[0], a[1], 0, a[2], a[3]) },
	"next load":     func(a []float64) (float64, error) { return next(a[0], a[1], a[2], a[3], a[4]) },
	"cut to step":   func(a []float64) (float64, error) { return unit.CutTo(a[0], a[1]), nil },
	"ceiling cut": func(a []float64) (float64, error) {
		v, err := call("Ceiling", a[:3]...)
		return unit.CutTo(v, a[3]), err
	},
	"reserve left": func(a []float64) (float64, error) {
		return then("ImpliedReserve", a[2])(call("ImpliedToFailure", a[:2]...))
	},
	"needed":        needed,
	"gravity":       func(a []float64) (float64, error) { return gravity(a[0], a[1], a[2]) },
	"straightening": func(a []float64) (float64, error) { return corrected("ExtensionCorrected", a) },
	"bending":       func(a []float64) (float64, error) { return corrected("FlexionCorrected", a) },
	"straightening per kg": func(a []float64) (float64, error) {
		return then("PerKilogram", a[0])(corrected("ExtensionCorrected", a))
	},
	"symmetry of straightening": symmetryOfStraightening,
}

// after calls the second formula with the result of the first.
func after(in []float64, first, second string) (float64, error) {
	return then(second)(call(first, in...))
}

// then calls a formula with a result and further inputs.
func then(name string, more ...float64) func(float64, error) (float64, error) {
	return func(v float64, err error) (float64, error) {
		if err != nil {
			return 0, err
		}
		return call(name, append([]float64{v}, more...)...)
	}
}

func tenth(v float64, err error) (float64, error) {
	return float64(unit.CutTo(unit.Percent(v), 0.1)), err
}

func maximum(w, r, q float64) (float64, error) {
	n, err := call("ToFailure", r, q)
	if err != nil {
		return 0, err
	}
	return call("OneRM", w, n)
}

func next(w, r, q, r2, q2 float64) (float64, error) {
	oneRM, err := maximum(w, r, q)
	if err != nil {
		return 0, err
	}
	allowed, err := after([]float64{r2, q2}, "ToFailure", "AllowedShare")
	if err != nil {
		return 0, err
	}
	return call("WorkingLoad", oneRM, allowed)
}

// needed is how many repetitions to failure the old load must allow before the new one allows its own.
func needed(a []float64) (float64, error) {
	oneRM, err := maximum(a[1], a[2], a[3])
	if err != nil {
		return 0, err
	}
	return call("ImpliedToFailure", oneRM, a[0])
}

func gravity(mass, shank, θ float64) (float64, error) {
	return then("GravityAt", θ)(call("LimbMoment", mass, shank))
}

func corrected(name string, a []float64) (float64, error) {
	t, err := call("Torque", a[2], a[3])
	if err != nil {
		return 0, err
	}
	g, err := gravity(a[0], a[1], a[4])
	if err != nil {
		return 0, err
	}
	return call(name, t, g)
}

func symmetryOfStraightening(a []float64) (float64, error) {
	mass, shank, involved, other, arm, θ := a[0], a[1], a[2], a[3], a[4], a[5]
	t, err := corrected("ExtensionCorrected", []float64{mass, shank, involved, arm, θ})
	if err != nil {
		return 0, err
	}
	o, err := corrected("ExtensionCorrected", []float64{mass, shank, other, arm, θ})
	if err != nil {
		return 0, err
	}
	return call("Symmetry", t, o)
}
