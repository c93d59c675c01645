package formula

import (
	"errors"
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// How many standard errors a normal curve reaches to either side.
const (
	// z90 leaves 5 % on either side. Reid 2007 reckoned with 1.64.
	z90 Ratio = 1.645
	// z95 leaves 2.5 % on either side.
	z95 Ratio = 1.96
)

// ByMDC is the rule of MDC.
var ByMDC = basis.Rule{Name: "smallest real change", Sum: "$2 × sqrt(2) × $1", Source: "definition"}

// MDC returns the smallest change between two tests that is more than their error, z standard errors wide: z·√2·SEM.
//
// Source: definition; Reid 2007 (Phys Ther 87:337) with z = 1.64.
// Studied: as the SEM that goes in.
// Refuses: a SEM of zero or less (a test without any error was not studied); a z of zero or less.
func MDC[Q unit.Quantity](SEM Q, z Ratio) (Q, error) {
	switch {
	case !positive(SEM):
		return 0, errors.New("the error of this test is not known: no smallest real change")
	case !positive(z):
		return 0, errors.New("the width is not known: no smallest real change")
	}
	return Q(float64(float64(z)*math.Sqrt2) * float64(SEM)), nil
}
