package formula_test

import (
	"fmt"

	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// A symmetry of five tests. It comes to 90 in week 33.6, in 19 of 20 such series between weeks 31.0 and 37.5.
func ExampleStraightLine_byHand() {
	l, err := formula.StraightLine([]formula.Point[unit.Percent]{{12, 58}, {16, 66}, {20, 71}, {24, 77}, {28, 81}})
	show(3, l.Slope, err)
	w, err := l.Crosses(90)
	show(3, w, err)
	i, err := l.CrossingInterval(90, 95)
	fmt.Printf("%.2f to %.2f, %v\n", i.Low, i.High, err)
	_, err = formula.StraightLine([]formula.Point[unit.Percent]{{12, 58}, {16, 66}})
	fmt.Println(err)
	// Output:
	// 1.425 %
	// 33.614 weeks
	// 31.00 to 37.50, <nil>
	// fewer than 3 tests: no line
}

// The same tests, with a gain that slows: 5.6 weeks later, which is told as what could be.
func ExampleLogTime_byHand() {
	l, err := formula.LogTime([]formula.Point[unit.Percent]{{12, 58}, {16, 66}, {20, 71}, {24, 77}, {28, 81}})
	show(6, l.Slope, err)
	w, err := l.Crosses(90)
	show(3, w, err)
	// Output:
	// 27.077934 %
	// 39.218 weeks
}

// Sen's example: slope 4, intercept 4 by med(y) − b·med(x), interval 3.71 to 4.38 at 93.
func ExampleTheilSen_sen1968() {
	l, err := formula.TheilSen([]formula.Point[unit.Points]{{1, 9}, {2, 15}, {3, 19}, {4, 20}, {10, 45}, {12, 55}, {18, 78}})
	show(0, l.Slope, err)
	show(1, l.Intercept, err)
	i, err := l.SlopeInterval(93)
	fmt.Printf("%.2f to %.2f, %v\n", i.Low, i.High, err)
	// Output:
	// 4
	// 4.0
	// 3.71 to 4.38, <nil>
}

// 90.55 ± 5.93 in week 34.
func ExamplePredictionMargin_byHand() {
	show(2, formula.PredictionMargin(3.182446, 1.197219, 5, 34, 20, 160), nil)
	// Output: 5.93
}

func ExampleTwoForTwo_reprint() {
	fmt.Println(formula.TwoForTwo(10, 12, 12))
	fmt.Println(formula.TwoForTwo(10, 12, 11))
	// Output:
	// true <nil>
	// false <nil>
}

func ExamplePlates_byHand() {
	fmt.Println(formula.Plates(16.25, []unit.Kilograms{25, 20, 15, 10, 5, 2.5, 1.25}))
	fmt.Println(formula.Plates(16.5, []unit.Kilograms{25, 20, 15, 10, 5, 2.5, 1.25}))
	// Output:
	// [15 1.25] <nil>
	// [] no plates make this load: cut it to the step first
}
