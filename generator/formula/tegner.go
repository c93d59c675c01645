package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var tegner = sheet{"Tegner", 1, 1, 0, upTo(10), 1}

// ByTegner is the rule of Tegner.
var ByTegner = basis.Rule{Name: "Tegner", Sum: "$1", Source: "Tegner scale: one level"}

// Tegner returns the level of activity, 0 to 10. A change is told in levels and in nothing finer.
//
// Source: Tegner scale; knee-strenuous is 6 and above (Beischer 2020).
// Studied: activity before and after injury. A level above before the injury is a question, no success.
// Refuses: more than one level; a level that is not whole or outside 0 to 10; none.
func Tegner(items Items) (unit.Points, error) {
	if err := tegner.refuse(items); err != nil {
		return 0, err
	}
	return items.sum(), nil
}
