package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByWorkingLoad is the rule of WorkingLoad.
var ByWorkingLoad = basis.Rule{Name: "working load", Sum: "$1 × $2 ÷ 100", Source: "share of the maximum"}

// WorkingLoad returns the load of a set, as moved: 1RM·share/100. It is not yet cut to the step of the machine.
//
// Source: share of the maximum; the cells of the reprinted load charts are this product.
// Studied: as OneRM.
// Refuses: nothing; OneRM and AllowedShare have refused before.
func WorkingLoad(oneRM unit.Kilograms, share unit.Percent) unit.Kilograms {
	return unit.Kilograms(float64(float64(oneRM)*float64(share)) / 100)
}
