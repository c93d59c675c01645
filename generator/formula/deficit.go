package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByDeficit is the rule of Deficit.
var ByDeficit = basis.Rule{Name: "deficit", Sum: "100 − $1", Source: "definition"}

// Deficit returns what is missing to full symmetry: 100 − LSI. It is below zero where the involved leg is the better one.
//
// Source: definition.
// Studied: as Symmetry. Some papers print it with the sign turned round; see PercentDifference.
// Refuses: nothing.
func Deficit(LSI unit.Percent) unit.Percent { return 100 - LSI }
