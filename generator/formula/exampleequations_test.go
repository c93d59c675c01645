package formula_test

import (
	"paceleaf/generator/formula"
)

// 40 kg × 8 to failure.
func ExampleOneRMBy_byHand() {
	v, err := formula.OneRMBy(formula.Epley, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.Brzycki, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.Lombardi, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.OConner, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.Wathen, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.Mayhew, 40, 8)
	show(2, v, err)
	v, err = formula.OneRMBy(formula.Lander, 40, 8)
	show(2, v, err)
	// Output:
	// 50.67 kg
	// 49.66 kg
	// 49.25 kg
	// 48.00 kg
	// 51.07 kg
	// 50.51 kg
	// 50.04 kg
}

func ExampleAllowedShareBy_byHand() {
	v, err := formula.AllowedShareBy(formula.Brzycki, 12)
	show(1, v, err)
	v, err = formula.AllowedShareBy(formula.Brzycki, 16)
	show(1, v, err)
	// Output:
	// 69.4 %
	// more than 15 repetitions to failure: no share of the maximum
}

func ExampleImpliedToFailureBy_byHand() {
	v, err := formula.ImpliedToFailureBy(formula.Brzycki, 49.66, 40)
	show(2, v, err)
	v, err = formula.ImpliedToFailureBy(formula.Wathen, 100, 48)
	show(2, v, err)
	// Output:
	// 8.00
	// the load is so light that this equation knows no end of repetitions
}

// No row, no number.
func ExampleShareByChart_reprint() {
	v, err := formula.ShareByChart(formula.LoadChart, 8)
	show(0, v, err)
	v, err = formula.ShareByChart(formula.LoadChart, 11)
	show(0, v, err)
	// Output:
	// 80 %
	// the chart load-chart (reprint, rows 1 to 10) has no row for this number of repetitions
}

func ExampleReynoldsLegPress_byHand() {
	v, err := formula.ReynoldsLegPress(120)
	show(2, v, err)
	v, err = formula.ReynoldsLegPress(30)
	show(2, v, err)
	// Output:
	// 145.89 kg
	// this equation is for a leg press of 52 kg or more with both legs: no estimate
}

func ExampleEstimateLow_byHand() {
	v, err := formula.EstimateLow(76)
	show(1, v, err)
	// Output: 68.4 kg
}

func ExampleEstimateHigh_byHand() {
	v, err := formula.EstimateHigh(76)
	show(1, v, err)
	// Output: 83.6 kg
}

func ExampleReserveOfRPE_zourdos2016() {
	v, err := formula.ReserveOfRPE(8.5)
	show(0, v, err)
	v, err = formula.ReserveOfRPE(4)
	show(0, v, err)
	// Output:
	// 1
	// a rating below 5 tells of light effort and of no number in reserve
}

func ExampleMostReserveOfRPE_zourdos2016() {
	v, err := formula.MostReserveOfRPE(8.5)
	show(0, v, err)
	v, err = formula.MostReserveOfRPE(6)
	show(0, v, err)
	// Output:
	// 2
	// 6
}

func ExampleStepOfRPE_jHumKinet2024() {
	v, err := formula.StepOfRPE(9)
	show(1, v, err)
	v, err = formula.StepOfRPE(7.5)
	show(1, v, err)
	// Output:
	// -2.5 kg
	// the table has rows for ratings of 5, 6, 7, 8, 9 and 10: no change of load
}

// 60 kg × 10 with 2 in reserve.
func ExampleBackEstimate_byHand() {
	v, err := formula.BackEstimate(60, 10, 2)
	show(1, v, err)
	v, err = formula.BackEstimate(60, 10, 6)
	show(1, v, err)
	// Output:
	// 84.0 kg
	// more than 15 repetitions to failure: no estimate of the maximum
}

// 40 kg × 8 with 2 in reserve; 6 with 1 to come.
func ExampleNextLoad_byHand() {
	v, err := formula.NextLoad(40, 10, 7)
	show(2, v, err)
	// Output: 43.24 kg
}

// From 50 to 52.5 kg, 8 with 2 in reserve: 10 with 2.
func ExampleRepsNeeded_byHand() {
	v, err := formula.RepsNeeded(50, 52.5, 10)
	show(1, v, err)
	// Output: 12.0
}
