package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByMDC90 is the rule of MDC90.
var ByMDC90 = basis.Rule{Name: "smallest real change, 90 %", Sum: "1.645 × sqrt(2) × $1", Source: "definition"}

// MDC90 returns the change between two tests that chance alone exceeds in one pair of ten: 1.645·√2·SEM.
//
// Source: definition.
// Studied: as MDC. Reid 2007 prints 7.05 to 12.96 for hop symmetry, with 1.64; this gives 7.07 to 13.00.
// Refuses: a SEM of zero or less, or no number.
func MDC90[Q unit.Quantity](SEM Q) (Q, error) { return MDC(SEM, z90) }
