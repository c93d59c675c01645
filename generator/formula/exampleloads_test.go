package formula_test

import (
	"paceleaf/generator/formula"
)

// 2.5 kg are too coarse for 10 kg.
func ExampleSensibleStep_byHand() {
	v, err := formula.SensibleStep(50, 2.5, 10)
	show(1, v, err)
	v, err = formula.SensibleStep(10, 2.5, 10)
	show(1, v, err)
	// Output:
	// 5.0 %
	// one step is more than 10 % of the load: add repetitions first, then slow down, then take a smaller plate
}

func ExampleLeastForStep_byHand() {
	v, err := formula.LeastForStep(2.5, 10)
	show(1, v, err)
	// Output: 25.0 kg
}

func ExampleDAPRESet_reprint() {
	v, err := formula.DAPRESet(40, 1)
	show(1, v, err)
	v, err = formula.DAPRESet(40, 2)
	show(1, v, err)
	v, err = formula.DAPRESet(40, 4)
	show(1, v, err)
	// Output:
	// 20.0 kg
	// 30.0 kg
	// this scheme has sets 1, 2 and 3: no load of another
}

// 40 kg × 8; 40 kg × 2.
func ExampleDAPREFourth_byHand() {
	v, err := formula.DAPREFourth(40, 8, formula.InKilograms)
	show(1, v, err)
	v, err = formula.DAPREFourth(40, 2, formula.InKilograms)
	show(1, v, err)
	v, err = formula.DAPREFourth(10, 8, formula.InKilograms)
	show(1, v, err)
	// Output:
	// 42.5 kg
	// 35.0 kg
	// the smallest step of DAPRE is more than 10 % of this load: add repetitions first
}

func ExampleDAPRENext_byHand() {
	v, err := formula.DAPRENext(42.5, 6, formula.InKilograms)
	show(1, v, err)
	// Output: 45.0 kg
}

// 300 of 3RM: 150, 225, 300.
func ExampleAPRESet_reprint() {
	v, err := formula.APRESet(300, 1)
	show(0, v, err)
	v, err = formula.APRESet(300, 2)
	show(0, v, err)
	// Output:
	// 150 kg
	// 225 kg
}

// Rows that were read nowhere refuse.
func ExampleAPREAdjusted_byHand() {
	v, err := formula.APREAdjusted(100, 3, 7, formula.InKilograms)
	show(1, v, err)
	v, err = formula.APREAdjusted(100, 6, 8, formula.InKilograms)
	show(1, v, err)
	// Output:
	// 105.0 kg
	// the row of APRE-6 for this number of repetitions was read nowhere: no change of load
}

func ExampleDeLorme_byHand() {
	v, err := formula.DeLorme(30, 1)
	show(1, v, err)
	v, err = formula.DeLorme(30, 2)
	show(1, v, err)
	v, err = formula.DeLorme(30, 3)
	show(1, v, err)
	// Output:
	// 15.0 kg
	// 22.5 kg
	// 30.0 kg
}

func ExampleOxford_byHand() {
	v, err := formula.Oxford(30, 1)
	show(1, v, err)
	v, err = formula.Oxford(30, 2)
	show(1, v, err)
	v, err = formula.Oxford(30, 3)
	show(1, v, err)
	// Output:
	// 30.0 kg
	// 22.5 kg
	// 15.0 kg
}

func ExampleASide_byHand() {
	v, err := formula.ASide(52.5, 20)
	show(2, v, err)
	v, err = formula.ASide(15, 20)
	show(2, v, err)
	// Output:
	// 16.25 kg
	// the bar alone is already heavier than this load
}

// A sled of 45 kg and 60 kg of plates at 45°.
func ExampleAngledPress_byHand() {
	v, err := formula.AngledPress(105, 45)
	show(1, v, err)
	// Output: 728.1 N
}

func ExampleAngledMass_byHand() {
	v, err := formula.AngledMass(882.6, 45)
	show(1, v, err)
	// Output: 127.3 kg
}

func ExampleLeverMachine_byHand() {
	v, err := formula.LeverMachine(30, 0.25, 0.40)
	show(1, v, err)
	// Output: 183.9 N
}

func ExampleAnkleWeight_byHand() {
	v, err := formula.AnkleWeight(5, 0.40, 30)
	show(2, v, err)
	// Output: 16.99 N·m
}

func ExampleAnkleMass_byHand() {
	v, err := formula.AnkleMass(17.87, 0.40, 0)
	show(2, v, err)
	// Output: 4.56 kg
}

func ExampleOwnShank_byHand() {
	v, err := formula.OwnShank(80, 0.443, formula.Male, 0)
	show(1, v, err)
	// Output: 12.1 N·m
}

func ExampleBodyShare_byHand() {
	v, err := formula.BodyShare(formula.TwoLegSquat, formula.Male)
	show(2, v, err)
	// Output: 87.64 %
}

func ExampleEffectiveLoad_byHand() {
	v, err := formula.EffectiveLoad(87.64, 80, 20)
	show(1, v, err)
	// Output: 90.1 kg
}

func ExampleAddedLoad_byHand() {
	v, err := formula.AddedLoad(87.64, 80, 90.1)
	show(1, v, err)
	v, err = formula.AddedLoad(87.64, 80, 60)
	show(1, v, err)
	// Output:
	// 20.0 kg
	// the body alone is heavier than this load: help with hands, a counterweight or the other leg
}

func ExampleStretch_byHand() {
	v, err := formula.Stretch(1.49, 0.60)
	show(0, v, err)
	// Output: 148 %
}

func ExampleElastic_byHand() {
	v, err := formula.Elastic(formula.Pull{100, 20.46}, formula.Pull{200, 29.80}, 150)
	show(2, v, err)
	v, err = formula.Elastic(formula.Pull{100, 20.46}, formula.Pull{200, 29.80}, 250)
	show(2, v, err)
	// Output:
	// 25.13 N
	// the stretch lies outside the two measured points: measure a point beyond it
}

func ExampleStretchFor_byHand() {
	v, err := formula.StretchFor(formula.Pull{100, 20.46}, formula.Pull{200, 29.80}, 25)
	show(1, v, err)
	// Output: 148.6 %
}

// 450 N.
func ExampleMaximumFromIsometric_byHand() {
	v, err := formula.MaximumFromIsometric(450)
	show(2, v, err)
	// Output: 36.64 kg
}

func ExampleIsometricLow_byHand() {
	v, err := formula.IsometricLow(36.64)
	show(2, v, err)
	// Output: 16.54 kg
}

func ExampleIsometricHigh_byHand() {
	v, err := formula.IsometricHigh(36.64)
	show(2, v, err)
	// Output: 52.24 kg
}
