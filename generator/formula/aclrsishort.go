package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

var aclRSIShort = sheet{"ACL-RSI, short form", 6, 6, 0, upTo(100), 10}

// ByACLRSIShort is the rule of ACLRSIShort.
var ByACLRSIShort = basis.Rule{Name: "ACL-RSI, short form", Sum: "mean($*)", Source: "short ACL-RSI scoring: mean of 6 items, second-hand"}

// ACLRSIShort returns the readiness to return to sport by the short form: the mean of 6 items, each 0 to 100 in steps of 10.
// It is not compared with the long form.
//
// Source: short ACL-RSI scoring, second-hand. At 60 or more people had returned, below 39 they had not (area under the curve 0.75).
// Studied: people after reconstruction of the anterior cruciate ligament.
// Refuses: another number of items than 6; an answer that is no step of 10 from 0 to 100; a missing item.
func ACLRSIShort(items Items) (unit.Points, error) {
	if err := aclRSIShort.refuse(items); err != nil {
		return 0, err
	}
	return mean(items.Given()), nil
}
