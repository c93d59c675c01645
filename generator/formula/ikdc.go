package formula

import (
	"strconv"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ikdcMost are the highest answers of the 18 scored items, coded from 0: their sum is 87. Items 1 to 5 were read in a reprint
// of the form, the others are from memory and agree with the 87.
var ikdcMost = []unit.Points{4, 10, 10, 4, 4, 1, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 10}

var ikdc = sheet{"IKDC", 18, 16, 0, func(i int) unit.Points { return ikdcMost[i] }, 1}

// ByIKDC is the rule of IKDC where every item was answered; see IKDCRule.
var ByIKDC = basis.Rule{Name: "IKDC", Sum: "100 × sum($*) ÷ 87", Source: "form of 2000; constants from memory, the item left out by the Pedi-IKDC"}

// IKDC returns the score of the subjective knee form: 100·Σ/87, 0 to 100, higher is better. Its 18 scored items are coded
// from 0 (worst); function before the injury is not among them. Where one or two are missing the sum is held against the
// highest sum of those that were answered.
//
// Source: form of 2000; 18, 87 and 16 of 18 from memory; that function before the injury is left out: scoring of the Pedi-IKDC.
// Studied: knees of all kinds. A mark of 90 or the 15th percentile of age and sex is in use.
// Refuses: another number of items than 18; an answer outside its item; fewer than 16 answered.
func IKDC(items Items) (unit.Points, error) {
	if err := ikdc.refuse(items); err != nil {
		return 0, err
	}
	return unit.Points(float64(100*float64(items.sum())) / float64(ikdcHighest(items))), nil
}

// IKDCRule returns the rule by which IKDC reckons these answers: the highest sum hangs on which were given.
func IKDCRule(items Items) basis.Rule {
	highest := ikdcHighest(items)
	if len(items) != ikdc.items || highest == 87 {
		return ByIKDC
	}
	by := ByIKDC
	by.Name = "IKDC, with items missing"
	by.Sum = "100 × sum($*) ÷ " + strconv.Itoa(int(highest))
	return by
}

// ikdcHighest is the highest sum of the answered items.
func ikdcHighest(items Items) (total unit.Points) {
	for i, a := range items {
		if _, ok := a.Points(); ok && i < len(ikdcMost) {
			total += ikdcMost[i]
		}
	}
	return total
}
