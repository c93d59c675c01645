package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByPreopRatio is the rule of PreopRatio.
var ByPreopRatio = basis.Rule{Name: "share of the other leg before surgery", Sum: "100 × $1 ÷ $2", Source: "Wellsandt 2017"}

// PreopRatio returns the involved leg now as a share of the other leg before surgery, the estimated pre-injury capacity:
// EPIC = 100·involved(now)/other(before).
//
// Source: Wellsandt 2017, JOSPT 47(5):334–338.
// Studied: 70 people after reconstruction of the anterior cruciate ligament, mark 90: of 11 second injuries it had
// warned of 9, symmetry of 3.
// Refuses: a value before surgery that is zero, below zero or no number; an involved leg below zero or no number.
func PreopRatio[Q unit.Quantity](now, before Q) (unit.Percent, error) {
	switch {
	case !positive(before):
		return 0, errors.New("the other leg has no value from before surgery: no share of it")
	case !number(now) || now < 0:
		return 0, errors.New("this leg has no value: no share of the value before surgery")
	}
	return share(now, before), nil
}
