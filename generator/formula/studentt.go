package formula

import (
	"errors"

	"gonum.org/v1/gonum/stat/distuv"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// freedomMost is a bound against a slip; chosen.
const freedomMost unit.Count = 100_000

// ByStudentT is the rule of StudentT. It is read off a table of the distribution and has no sum.
var ByStudentT = basis.Rule{Name: "Student's t, both sides", Source: "table of Student's distribution"}

// StudentT returns how many standard errors a line reaches to either side at a level such as 95, with so many degrees of freedom.
//
// Source: Student's distribution, by gonum/stat/distuv.
// Studied: exact.
// Refuses: a level outside 50 to 99.9 %; fewer than one degree of freedom, or more than 100 000.
func StudentT(level unit.Percent, freedom unit.Count) (Ratio, error) {
	if err := leveled(level); err != nil {
		return 0, err
	}
	switch {
	case !positive(freedom) || freedom < 1:
		return 0, errors.New("too few tests: no interval")
	case freedom > freedomMost:
		return 0, errors.New("more tests than anyone has: no interval")
	}
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(freedom)}
	return Ratio(t.Quantile(1 - (1-float64(level)/100)/2)), nil
}
