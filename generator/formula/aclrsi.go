package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var aclRSI = sheet{"ACL-RSI", 12, 12, 0, upTo(100), 1}

// ByACLRSI is the rule of ACLRSI.
var ByACLRSI = basis.Rule{Name: "ACL-RSI", Sum: "mean($*)", Source: "ACL-RSI scoring: mean of 12 items, second-hand"}

// ACLRSI returns the readiness to return to sport: the mean of 12 items, each 0 (least ready) to 100; higher is better.
//
// Source: ACL-RSI scoring, second-hand. A mark of above 56 is in use (Gokeler, Welling).
// Studied: people after reconstruction of the anterior cruciate ligament.
// Refuses: another number of items than 12; an answer outside 0 to 100; a missing item, for which no rule was found.
func ACLRSI(items Items) (unit.Points, error) {
	if err := aclRSI.refuse(items); err != nil {
		return 0, err
	}
	return mean(items.Given()), nil
}
