package formula

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/stat"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the slope and of the level of a straight line; inputs are week and value, point by point.
var (
	ByStraightLine  = basis.Rule{Name: "gain a week, straight line", Sum: "slope($*)", Source: "least squares"}
	ByStraightLevel = basis.Rule{Name: "level of week 0, straight line", Sum: "intercept($*)", Source: "least squares"}
)

// StraightLine lays the straight line of least squares through the tests: b = Sxy/Sxx, a = ȳ − b·x̄.
//
// Source: least squares, by gonum/stat; checked against NIST StRD Norris and R's cars.
// Studied: as a description. Gain slows with time, so a straight line comes to a mark too early: see LogTime.
// Refuses: fewer than 3 points; all in one week; a week or a value that is no number.
func StraightLine[Q unit.Quantity](points []Point[Q]) (Line[Q], error) {
	return leastSquares(points, Straight)
}

// leastSquares fits Straight and Logarithmic lines.
func leastSquares[Q unit.Quantity](points []Point[Q], shape Shape) (Line[Q], error) {
	if err := series(points); err != nil {
		return Line[Q]{}, err
	}
	l := Line[Q]{Shape: shape}.spanned(points)
	x, y := make([]float64, len(points)), make([]float64, len(points))
	for i, p := range points {
		if shape == Logarithmic && p.Week <= 0 {
			return Line[Q]{}, errors.New("a test before week 1 has no place on a line of logarithms")
		}
		x[i], y[i] = l.x(p.Week), float64(p.Value)
	}
	a, b := stat.LinearRegression(x, y, nil, false)
	l.Intercept, l.Slope = Q(a), Q(b)
	l.MeanX = stat.Mean(x, nil)
	l.Sxx = stat.Variance(x, nil) * float64(len(x)-1)
	var rss float64
	for i := range x {
		r := y[i] - (a + float64(b*x[i]))
		rss += float64(r * r)
	}
	l.Residual = Q(math.Sqrt(rss / float64(len(x)-2)))
	if total := stat.Variance(y, nil) * float64(len(y)-1); total > 0 {
		l.Explained = Ratio(1 - rss/total)
	}
	return l, nil
}

// spanned counts the points and finds the first and the last week.
func (l Line[Q]) spanned(points []Point[Q]) Line[Q] {
	l.N, l.First, l.Last = unit.Count(len(points)), points[0].Week, points[0].Week
	for _, p := range points {
		l.First, l.Last = min(l.First, p.Week), max(l.Last, p.Week)
	}
	return l
}

// series refuses points through which no line can be laid.
func series[Q unit.Quantity](points []Point[Q]) error {
	if len(points) < 3 {
		return errors.New("fewer than 3 tests: no line")
	}
	apart := false
	for _, p := range points {
		if !number(p.Week) || !number(p.Value) {
			return errors.New("a test has no week or no value: no line")
		}
		apart = apart || p.Week != points[0].Week
	}
	if !apart {
		return errors.New("all tests lie in one week: no line")
	}
	return nil
}
