package formula_test

import (
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

func ExampleStartFromIsometric_byHand() {
	v, err := formula.StartFromIsometric(450, 60)
	show(1, v, err)
	v, err = formula.StartFromIsometric(450, 80)
	show(1, v, err)
	// Output:
	// 22.0 kg
	// a first load is at most 60 % of a maximum from an isometric test
}

func ExampleHoldTarget_byHand() {
	v, err := formula.HoldTarget(unit.Newtons(450), 70)
	show(0, v, err)
	// Output: 315 N
}

// Five holds of 45 s, 2 min between.
func ExampleIntervalTime_byHand() {
	v, err := formula.IntervalTime(5, 45, 120)
	show(0, v, err)
	// Output: 705 s
}

func ExampleCuffPressure_byHand() {
	v, err := formula.CuffPressure(180, 80)
	show(0, v, err)
	v, err = formula.CuffPressure(180, 90)
	show(0, v, err)
	// Output:
	// 144 mmHg
	// a cuff is worn at 40 to 80 % of the pressure that stops the flow
}

func ExampleCuffLoad_byHand() {
	v, err := formula.CuffLoad(60, 30)
	show(0, v, err)
	// Output: 18 kg
}

func ExampleCuffTime_byHand() {
	v, err := formula.CuffTime(75, 4, 3, 30)
	show(0, v, err)
	// Output: 390 s
}

func ExampleStimulationTime_nussbaum2017() {
	v, err := formula.StimulationTime(12, 10, 50)
	show(0, v, err)
	// Output: 720 s
}

func ExampleTonnage_byHand() {
	v, err := formula.Tonnage([]formula.Lift{{20, 10}, {30, 6}, {40, 8}, {42.5, 6}})
	show(0, v, err)
	// Output: 955 kg
}

// A 6 for 50 min.
func ExampleSessionLoad_byHand() {
	v, err := formula.SessionLoad(6, 3000)
	show(0, v, err)
	// Output: 300
}

func ExampleWeekLoad_byHand() {
	v, err := formula.WeekLoad([]unit.Points{300, 0, 420, 0, 360, 180, 0})
	show(0, v, err)
	// Output: 1260
}

func ExampleMonotony_byHand() {
	v, err := formula.Monotony([]unit.Points{300, 0, 420, 0, 360, 180, 0})
	show(3, v, err)
	v, err = formula.Monotony([]unit.Points{100, 100, 100, 100, 100, 100, 100})
	show(3, v, err)
	// Output:
	// 0.982
	// seven days alike have no deviation: monotony is not defined
}

func ExampleMonotonyOfPopulation_byHand() {
	v, err := formula.MonotonyOfPopulation([]unit.Points{300, 0, 420, 0, 360, 180, 0})
	show(3, v, err)
	// Output: 1.061
}

func ExampleStrain_byHand() {
	v, err := formula.Strain(1260, 0.982)
	show(1, v, err)
	// Output: 1237.3
}

func ExampleStudentT_byHand() {
	v, err := formula.StudentT(95, 3)
	show(4, v, err)
	v, err = formula.StudentT(95, 0)
	show(4, v, err)
	// Output:
	// 3.1824
	// too few tests: no interval
}

func ExampleRelativeRateLinear_byHand() {
	v, err := formula.RelativeRateLinear(80)
	show(2, v, err)
	// Output: 1.30
}

func ExampleRelativeRate_byHand() {
	v, err := formula.RelativeRate(80)
	show(4, v, err)
	v, err = formula.RelativeRate(50)
	show(4, v, err)
	// Output:
	// 1.3561
	// a symmetry below 60 lies outside what was reckoned: no relative rate
}

func ExampleRelativeRateLow_byHand() {
	v, err := formula.RelativeRateLow(80)
	show(3, v, err)
	// Output: 1.106
}

func ExampleRelativeRateHigh_byHand() {
	v, err := formula.RelativeRateHigh(80)
	show(3, v, err)
	// Output: 1.857
}

func ExampleRelativeRateByMonth_byHand() {
	v, err := formula.RelativeRateByMonth(8)
	show(3, v, err)
	v, err = formula.RelativeRateByMonth(12)
	show(3, v, err)
	v, err = formula.RelativeRateByMonth(4)
	show(3, v, err)
	// Output:
	// 2.041
	// 1.000
	// more than four months before nine lies outside what was studied: no relative rate
}
