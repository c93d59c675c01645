package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByMDC95 is the rule of MDC95.
var ByMDC95 = basis.Rule{Name: "smallest real change, 95 %", Sum: "1.96 × sqrt(2) × $1", Source: "definition"}

// MDC95 returns the change between two tests that chance alone exceeds in one pair of twenty: 1.96·√2·SEM. A change is real
// when it is above this, not at it.
//
// Source: definition; Kambič 2020 (PLoS ONE 15:e0237842) calls it SRD.
// Studied: as MDC.
// Refuses: a SEM of zero or less, or no number.
func MDC95[Q unit.Quantity](SEM Q) (Q, error) { return MDC(SEM, z95) }
