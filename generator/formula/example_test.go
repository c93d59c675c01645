package formula_test

import (
	"fmt"
	"strings"

	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Examples are named for the source that works them; byHand where only we did.

// show prints a result as a source does, or the reason why there is none.
func show[Q unit.Quantity](digits int, v Q, err error) {
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(strings.TrimSpace(fmt.Sprintf("%.*f %s", digits, float64(v), v.Unit())))
}

// 331 N at 0.31 m.
func ExampleTorque_byHand() {
	show(2, formula.Torque(331, 0.31), nil)
	// Output: 102.61 N·m
}

// A woman of 62 kg, shank 0.39 m: 3.782 kg at 0.23634 m.
func ExampleLimbMoment_byHand() {
	show(4, formula.LimbMoment(62, 0.39), nil)
	// Output: 8.7656 N·m
}

func ExampleGravityAt_byHand() {
	show(4, formula.GravityAt(8.7656, 30), nil)
	show(4, formula.GravityAt(8.7656, 90), nil)
	// Output:
	// 7.5912 N·m
	// 0.0000 N·m
}

func ExampleExtensionCorrected_byHand() {
	show(4, formula.ExtensionCorrected(138.6, 4.3828), nil)
	// Output: 142.9828 N·m
}

// 200 N at 0.33 m and 60°.
func ExampleFlexionCorrected_byHand() {
	show(2, formula.FlexionCorrected(66, 4.3828), nil)
	// Output: 61.62 N·m
}

func ExamplePerKilogram_byHand() {
	v, err := formula.PerKilogram(138.6, 62)
	show(4, v, err)
	// Output: 2.2355 N·m/kg
}

// Quadriceps at 180°/s, 196.1 against 202.3 N·m; worked by us, for the source prints the difference.
func ExampleSymmetry_orthopJSportsMed2017() {
	v, err := formula.Symmetry(unit.NewtonMetres(196.1), 202.3)
	show(2, v, err)
	// Output: 96.94 %
}

func ExampleSymmetry_byHand() {
	v, err := formula.Symmetry(unit.NewtonMetres(180), 200)
	show(1, v, err)
	v, err = formula.Symmetry(unit.NewtonMetres(180), 0) // the other leg was not tested
	show(1, v, err)
	// Output:
	// 90.0 %
	// the other leg has no value above zero: no symmetry
}

// The slower leg comes out below 100, not at 109.38.
func ExampleSymmetryTimed_byHand() {
	v, err := formula.SymmetryTimed(unit.Seconds(2.10), 1.92)
	show(2, v, err)
	// Output: 91.43 %
}

func ExampleDeficit_byHand() {
	show(1, formula.Deficit(90), nil)
	// Output: 10.0 %
}

// Quadriceps at 180°/s, printed −3 under a footnote that promises weaker/stronger × 100.
func ExamplePercentDifference_orthopJSportsMed2017() {
	show(0, formula.PercentDifference(96.94), nil)
	// Output: -3 %
}

// The same leg passes 90 by symmetry (180 of 200) and fails by the other leg before surgery.
func ExamplePreopRatio_byHand() {
	v, err := formula.PreopRatio(unit.NewtonMetres(180), 240)
	show(1, v, err)
	// Output: 75.0 %
}

// Healthy leg at 90°/s, 177.6 and 241.1 N·m, printed .74.
func ExampleHamstringsToQuadriceps_orthopJSportsMed2017() {
	v, err := formula.HamstringsToQuadriceps(unit.NewtonMetres(177.6), 241.1)
	show(0, v, err)
	// Output: 74 %
}

func ExampleBest_byHand() {
	v, err := formula.Best([]unit.Newtons{412, 420, 405})
	show(0, v, err)
	// Output: 420 N
}

func ExampleQuickest_byHand() {
	v, err := formula.Quickest([]unit.Seconds{2.10, 2.04, 2.17})
	show(2, v, err)
	// Output: 2.04 s
}

func ExampleMeanOf_byHand() {
	v, err := formula.MeanOf([]unit.Newtons{412, 420, 405})
	show(3, v, err)
	// Output: 412.333 N
}

func ExampleSampleSD_byHand() {
	v, err := formula.SampleSD([]unit.Newtons{412, 420, 405})
	show(4, v, err)
	// Output: 7.5056 N
}

// The second set of trials is too wide, one more is asked for; a single trial has no spread.
func ExampleSpread_byHand() {
	v, err := formula.Spread([]unit.Newtons{412, 420, 405})
	show(3, v, err)
	v, err = formula.Spread([]unit.Newtons{330, 420, 405})
	show(3, v, err)
	v, err = formula.Spread([]unit.Newtons{412})
	show(3, v, err)
	// Output:
	// 1.820 %
	// 12.524 %
	// one trial only: no spread
}

func ExampleToFailure_byHand() {
	v, err := formula.ToFailure(10, 2)
	show(0, v, err)
	// Output: 12
}

// 40 kg × 8, 60 kg × 5, 25 kg × 12, all to failure.
func ExampleOneRM_byHand() {
	v, err := formula.OneRM(40, 8)
	show(2, v, err)
	v, err = formula.OneRM(60, 5)
	show(2, v, err)
	v, err = formula.OneRM(25, 12)
	show(2, v, err)
	v, err = formula.OneRM(25, 16)
	show(2, v, err)
	// Output:
	// 50.67 kg
	// 70.00 kg
	// 35.00 kg
	// more than 15 repetitions to failure: no estimate of the maximum
}

// A single to failure is the maximum; its rule is BySingle.
func ExampleOneRM_single() {
	v, err := formula.OneRM(70, 1)
	show(2, v, err)
	fmt.Println(formula.OneRMRule(1).Name)
	// Output:
	// 70.00 kg
	// maximum, lifted once
}

// 10 repetitions with 2 in reserve.
func ExampleAllowedShare_byHand() {
	v, err := formula.AllowedShare(12)
	show(2, v, err)
	// Output: 71.43 %
}

// A cell of the reprinted load chart: 95 % of 250.
func ExampleWorkingLoad_loadChart() {
	show(1, formula.WorkingLoad(250, 95), nil)
	// Output: 237.5 kg
}

// 54.29 kg was cut down to 52.5.
func ExampleTrueShare_byHand() {
	v, err := formula.TrueShare(52.5, 76)
	show(1, v, err)
	// Output: 69.1 %
}

func ExampleImpliedToFailure_byHand() {
	v, err := formula.ImpliedToFailure(76, 52.5)
	show(2, v, err)
	// Output: 13.43
}

// After 10 repetitions of the 52.5 kg.
func ExampleImpliedReserve_byHand() {
	show(2, formula.ImpliedReserve(13.43, 10), nil)
	// Output: 3.43
}

// 40 kg, 2.5 % a week, after three weeks.
func ExampleCeiling_byHand() {
	show(2, formula.Ceiling(40, 2.5, 3), nil)
	// Output: 43.08 kg
}

func ExampleMovedLoad_byHand() {
	show(0, formula.MovedLoad(60, 45), nil)
	// Output: 105 kg
}

func ExamplePutOn_byHand() {
	v, err := formula.PutOn(95, 45)
	show(0, v, err)
	v, err = formula.PutOn(40, 45)
	show(0, v, err)
	// Output:
	// 50 kg
	// the empty machine is already heavier than this load
}

// 20 kg pinned, cable 2:1.
func ExampleFelt_byHand() {
	v, err := formula.Felt(20, 2)
	show(0, v, err)
	// Output: 10 kg
}

func ExamplePinned_byHand() {
	v, err := formula.Pinned(10, 2)
	show(0, v, err)
	// Output: 20 kg
}
