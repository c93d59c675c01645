package formula_test

import (
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// inPounds runs a formula on a machine marked in pounds and gives pounds back.
func inPounds(name string, place int, a []float64) (float64, error) {
	in := append([]float64{}, a...)
	in[0] *= unit.KilogramsPerPound
	v, err := call(name, append(in[:place:place], 1)...)
	return v / unit.KilogramsPerPound, err
}

var chainsOfLoads = map[string]func(a []float64) (float64, error){
	"DAPRE set 4 in pounds": func(a []float64) (float64, error) { return inPounds("DAPREFourth", 2, a) },
	"DAPRE next in pounds":  func(a []float64) (float64, error) { return inPounds("DAPRENext", 2, a) },
	"APRE in pounds":        func(a []float64) (float64, error) { return inPounds("APREAdjusted", 3, a) },
	// equation, load, repetitions, reserve, repetitions to come, their reserve
	"next load by": func(a []float64) (float64, error) {
		oneRM, err := call("OneRMBy", a[0], a[1], a[2]+a[3])
		if err != nil {
			return 0, err
		}
		allowed, err := call("AllowedShareBy", a[0], a[4]+a[5])
		return float64(oneRM * allowed / 100), err
	},
	"chart load": func(a []float64) (float64, error) {
		allowed, err := call("ShareByChart", a[1], a[2])
		if err != nil {
			return 0, err
		}
		return call("WorkingLoad", a[0], allowed)
	},
	"chart maximum": func(a []float64) (float64, error) {
		allowed, err := call("ShareByChart", a[1], a[2])
		return 100 * a[0] / allowed, err
	},
	"kilograms of force": func(a []float64) (float64, error) { return a[0] / unit.NewtonsPerKgf, nil },
	"angled in kgf": func(a []float64) (float64, error) {
		v, err := call("AngledPress", a...)
		return v / unit.NewtonsPerKgf, err
	},
	"angled mass of kgf": func(a []float64) (float64, error) { return call("AngledMass", a[0]*unit.NewtonsPerKgf, a[1]) },
	"lever in kgf": func(a []float64) (float64, error) {
		v, err := call("LeverMachine", a...)
		return v / unit.NewtonsPerKgf, err
	},
	"lever torque": func(a []float64) (float64, error) { return then("Torque", a[2])(call("LeverMachine", a...)) },
	"kanada":       func(a []float64) (float64, error) { return call("MaximumFromIsometric", a[0]*unit.NewtonsPerKgf) },
	// moment wanted, arm of the ankle weight, body mass, shank, sex, bend
	"ankle weight beside the leg": func(a []float64) (float64, error) {
		own, err := call("OwnShank", a[2], a[3], a[4], a[5])
		if err != nil {
			return 0, err
		}
		return call("AnkleMass", a[0]-own, a[1], a[5])
	},
	// body exercise, sex, body mass, added
	"moved with the body": func(a []float64) (float64, error) {
		part, err := call("BodyShare", a[0], a[1])
		if err != nil {
			return 0, err
		}
		return call("EffectiveLoad", part, a[2], a[3])
	},
	"strain of days":        func(a []float64) (float64, error) { return strainBy("Monotony", a) },
	"strain of days with n": func(a []float64) (float64, error) { return strainBy("MonotonyOfPopulation", a) },
	"heaviest plate":        func(a []float64) (float64, error) { return plate(a, 0) },
	"second plate":          func(a []float64) (float64, error) { return plate(a, 1) },
	"error of a rep in reserve": func(a []float64) (float64, error) {
		v, err := call("BackEstimate", a[0], a[1], a[2])
		if err != nil {
			return 0, err
		}
		return then2("PercentChange", v)(call("BackEstimate", a[0], a[1], a[2]+1))
	},
}

// then2 puts a result behind an input.
func then2(name string, first float64) func(float64, error) (float64, error) {
	return func(v float64, err error) (float64, error) {
		if err != nil {
			return 0, err
		}
		return call(name, first, v)
	}
}

func strainBy(name string, days []float64) (float64, error) {
	m, err := call(name, days...)
	if err != nil {
		return 0, err
	}
	w, err := call("WeekLoad", days...)
	if err != nil {
		return 0, err
	}
	return call("Strain", w, m)
}

// plate is a plate of one side: load, bar, sizes.
func plate(a []float64, place int) (float64, error) {
	side, err := call("ASide", a[0], a[1])
	if err != nil {
		return 0, err
	}
	hung, err := formula.Plates(unit.Kilograms(side), list[unit.Kilograms](a[2:]))
	if err != nil || place >= len(hung) {
		return 0, err
	}
	return float64(hung[place]), nil
}
