package formula_test

import (
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// 100 N at 1 m, 10° off the right angle.
func ExampleTorqueOff_byHand() {
	v, err := formula.TorqueOff(100, 1, 10)
	show(2, v, err)
	v, err = formula.TorqueOff(100, 1, 45)
	show(2, v, err)
	// Output:
	// 98.48 N·m
	// the pull is 45° or more off the right angle: place the strap anew
}

func ExampleForceAtArm_byHand() {
	v, err := formula.ForceAtArm(157.5, 0.40)
	show(2, v, err)
	v, err = formula.ForceAtArm(157.5, 0)
	show(2, v, err)
	// Output:
	// 393.75 N
	// the arm is not known: no force
}

func ExampleLimbMomentByDeLeva_byHand() {
	v, err := formula.LimbMomentByDeLeva(62, 0.39, formula.Female)
	show(4, v, err)
	v, err = formula.LimbMomentByDeLeva(80, 0.43, formula.Male)
	show(4, v, err)
	// Output:
	// 8.4094 N·m
	// 11.5650 N·m
}

// The relaxed leg hung with 17.15 N on the sensor at 50°.
func ExampleLimbMomentWeighed_byHand() {
	v, err := formula.LimbMomentWeighed(17.15, 0.33, 50)
	show(2, v, err)
	v, err = formula.LimbMomentWeighed(17.15, 0.33, 90)
	show(2, v, err)
	// Output:
	// 8.80 N·m
	// a leg is weighed at 0 to 75° of bend, best near 50°: no moment of the lower leg
}

func ExampleGravityFromWeighed_byHand() {
	v, err := formula.GravityFromWeighed(17.15, 0.33, 50, 60)
	show(2, v, err)
	// Output: 4.40 N·m
}

// Whichever leg was operated.
func ExampleWorseToBetter_byHand() {
	v, err := formula.WorseToBetter(unit.Metres(1.80), 2.00)
	show(1, v, err)
	v, err = formula.WorseToBetter(unit.Metres(2.00), 1.80)
	show(1, v, err)
	// Output:
	// 90.0 %
	// 90.0 %
}

// Smith at 0°, 32.1 to 57.9 N, printed 80.4.
func ExamplePercentChange_jClinMed2024() {
	v, err := formula.PercentChange(unit.Newtons(32.1), 57.9)
	show(1, v, err)
	// Output: 80.4 %
}

func ExampleSEM_byHand() {
	v, err := formula.SEM(unit.Percent(10), 0.91)
	show(0, v, err)
	// Output: 3 %
}

// Hop symmetry, lowest and highest of the battery, with z = 1.64: printed 7.05 and 12.96.
func ExampleMDC_reid2007() {
	v, err := formula.MDC(unit.Percent(3.04), 1.64)
	show(2, v, err)
	v, err = formula.MDC(unit.Percent(5.59), 1.64)
	show(2, v, err)
	// Output:
	// 7.05 %
	// 12.96 %
}

func ExampleMDC90_byHand() {
	v, err := formula.MDC90(unit.Percent(3.04))
	show(2, v, err)
	// Output: 7.07 %
}

// Printed 7.04 %.
func ExampleMDC95_kambic2020() {
	v, err := formula.MDC95(unit.Percent(2.54))
	show(2, v, err)
	v, err = formula.MDC95(unit.Percent(0))
	show(2, v, err)
	// Output:
	// 7.04 %
	// the error of this test is not known: no smallest real change
}

// A single hop of 91, SEM 3.49: at the mark, and the band holds 90.
func ExampleBandLow_byHand() {
	v, err := formula.BandLow(unit.Percent(91), 3.49)
	show(1, v, err)
	// Output: 84.2 %
}

func ExampleBandHigh_byHand() {
	v, err := formula.BandHigh(unit.Percent(91), 3.49)
	show(1, v, err)
	// Output: 97.8 %
}

// 40 of 70 passed by symmetry, 20 by the other leg before surgery: printed 57.1 and 28.6.
func ExampleProportion_wellsandt2017() {
	v, err := formula.Proportion(40, 70)
	show(1, v, err)
	v, err = formula.Proportion(20, 70)
	show(1, v, err)
	// Output:
	// 57.1 %
	// 28.6 %
}

func ExampleHopForHeight_byHand() {
	v, err := formula.HopForHeight(1.52, 1.68)
	show(2, v, err)
	// Output: 90.48 %
}

func ExampleHopBattery_byHand() {
	v, err := formula.HopBattery([]unit.Percent{92.1, 88.4, 95})
	show(1, v, err)
	// Output: 88.4 %
}

// Leg of 88 cm.
func ExampleYBalance_byHand() {
	v, err := formula.YBalance(0.62, 1.04, 0.98, 0.88)
	show(2, v, err)
	v, err = formula.YBalance(0.58, 1.01, 0.95, 0.88)
	show(2, v, err)
	// Output:
	// 100.00 %
	// 96.21 %
}

// 4 cm, which is not flagged.
func ExampleReachDifference_byHand() {
	v, err := formula.ReachDifference(0.58, 0.62)
	show(2, v, err)
	// Output: 0.04 m
}

func ExampleRiseScore_byHand() {
	v, err := formula.RiseScore(0.30)
	show(0, v, err)
	v, err = formula.RiseScore(1.2)
	show(0, v, err)
	// Output:
	// 70
	// a seat is above 0 and below 100 cm: no score of the rise
}
