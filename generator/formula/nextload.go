package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByNextLoad is the rule of NextLoad.
var ByNextLoad = basis.Rule{Name: "load for another number of repetitions (Epley)", Sum: "$1 × (1 + $2 ÷ 30) ÷ (1 + $3 ÷ 30)", Source: "Epley 1985, second-hand"}

// NextLoad returns the load that allows another number of repetitions to failure than a load w did: w·(1 + n/30)/(1 + n₂/30),
// and the maximum itself where n or n₂ is 1. Both numbers are repetitions and reserve together. It is not yet cut to a step,
// and whether a step up was earned is not settled here (see RepsNeeded).
//
// Source: Epley 1985, second-hand: OneRM, then AllowedShare.
// Studied: as OneRM.
// Refuses: as OneRM and AllowedShare.
func NextLoad(w unit.Kilograms, n, n2 unit.Count) (unit.Kilograms, error) {
	oneRM, err := OneRM(w, n)
	if err != nil {
		return 0, err
	}
	allowed, err := AllowedShare(n2)
	if err != nil {
		return 0, err
	}
	return WorkingLoad(oneRM, allowed), nil
}

// NextLoadRule returns the rule by which NextLoad reckons: a single is the maximum, on either side.
func NextLoadRule(n, n2 unit.Count) basis.Rule {
	by := ByNextLoad
	switch {
	case n == 1 && n2 == 1:
		return BySingle
	case n == 1:
		by.Name, by.Sum = "load from a single (Epley)", "$1 ÷ (1 + $3 ÷ 30)"
	case n2 == 1:
		by.Name, by.Sum = "load of a single (Epley)", "$1 × (1 + $2 ÷ 30)"
	}
	return by
}
