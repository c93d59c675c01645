package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPercentDifference is the rule of PercentDifference.
var ByPercentDifference = basis.Rule{Name: "percentage difference", Sum: "$1 − 100", Source: "definition"}

// PercentDifference returns by how much the involved leg differs from the other: 100·(involved − other)/other = LSI − 100.
//
// A trap: the footnote of Table 1 in Orthop J Sports Med 2017 (doi 10.1177/2325967117731102) says "weaker/stronger × 100",
// yet all eight values printed there are LSI − 100 (196.1 against 202.3 N·m: printed −3, not 97). A number
// out of a paper is a symmetry only when its two torques say so.
//
// Source: definition; recomputed from the eight rows of that table.
// Studied: as Symmetry.
// Refuses: nothing.
func PercentDifference(LSI unit.Percent) unit.Percent { return LSI - 100 }
