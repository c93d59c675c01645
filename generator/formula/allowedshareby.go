package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// AllowedShareBy returns the share of the maximum that n repetitions to failure allow by an equation, and 100 where n is 1.
// By Epley it is AllowedShare.
//
// Source: of each equation turned round, see Equation; all second-hand.
// Studied: as OneRMBy.
// Refuses: an unknown equation; less than one repetition; more than 20 to failure by Epley, more than 15 by another: Lombardi
// would still give 74 % at 20, where the older range chart gives 60.
func AllowedShareBy(e Equation, n unit.Count) (unit.Percent, error) {
	q, err := e.find()
	if err != nil {
		return 0, err
	}
	most := OneRMRefusedAbove
	if e == Epley {
		most = shareRefusedAbove
	}
	if err := repeated(n, most, "no share of the maximum"); err != nil {
		return 0, err
	}
	if n == 1 {
		return 100, nil
	}
	return unit.Percent(q.share(float64(n))), nil
}

// AllowedShareRuleBy returns the rule by which AllowedShareBy reckons n repetitions to failure.
func AllowedShareRuleBy(e Equation, n unit.Count) basis.Rule {
	if n == 1 {
		return ByWhole
	}
	return e.rule("share of the maximum", func(q equation) string { return q.shareSum })
}
