package formula

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The rules of what a line gives in a week, straight and of logarithms, and of the margin of one new test.
var (
	ByLineAt           = basis.Rule{Name: "on the line", Sum: "$1 + $2 × $3", Source: "least squares"}
	ByLogAt            = basis.Rule{Name: "on the line of log-time", Sum: "$1 + $2 × ln($3)", Source: "least squares on the logarithm of the weeks"}
	ByPredictionMargin = basis.Rule{Name: "margin of one new test", Source: "prediction interval of least squares",
		Sum: "$1 × $2 × sqrt(1 + 1 ÷ $3 + pow($4 − $5, 2) ÷ $6)"}
)

// PredictionMargin returns by how much one new test may lie off a line of least squares, to either side:
// t·s·√(1 + 1/n + (x − x̄)²/Sxx).
//
// Source: prediction interval of least squares; checked against R's cars.
// Studied: exact where the errors are normal, alike and independent; tests of one knee are hardly that, so it is a rough guess.
// Refuses: nothing; Line.Margin has refused before.
func PredictionMargin(t, s Ratio, n unit.Count, x, mean, Sxx Ratio) Ratio {
	d := float64(x - mean)
	return t * Ratio(float64(s)*math.Sqrt(1+1/float64(n)+float64(d*d)/float64(Sxx)))
}
