package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of the slope and of the level of a line of logarithms; inputs are week and value, point by point.
var (
	ByLogTime  = basis.Rule{Name: "gain a unit of log-time", Sum: "slopeln($*)", Source: "least squares on the logarithm of the weeks"}
	ByLogLevel = basis.Rule{Name: "level of week 1, log-time", Sum: "interceptln($*)", Source: "least squares on the logarithm of the weeks"}
)

// LogTime lays the line of least squares through the tests on the natural logarithm of their weeks: y = a + b·ln(week). Gain
// slows with time, so it comes to a mark later than a straight line; the later of the two is told as what could be.
//
// Source: least squares, by gonum/stat. That gain slows: Brown's review of 21 studies, Curran 2018, Welling 2018.
// Studied: as a description of months 3 to 12 after reconstruction.
// Refuses: as StraightLine; a test before week 1 (a logarithm of nothing).
func LogTime[Q unit.Quantity](points []Point[Q]) (Line[Q], error) {
	return leastSquares(points, Logarithmic)
}
