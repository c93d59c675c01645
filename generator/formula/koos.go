package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// The five subscales: items, and how many must be answered under the rule of 2012 (half of them; the rule of 1998 let two be missing).
var (
	koosPain     = sheet{"KOOS pain", 9, 5, 0, upTo(4), 1}
	koosSymptoms = sheet{"KOOS symptoms", 7, 4, 0, upTo(4), 1}
	koosADL      = sheet{"KOOS daily living", 17, 9, 0, upTo(4), 1}
	koosSport    = sheet{"KOOS sport and recreation", 5, 3, 0, upTo(4), 1}
	koosQOL      = sheet{"KOOS quality of life", 4, 2, 0, upTo(4), 1}
)

const koosMissing basis.Said = "left out of the mean; half of the items of a subscale are needed (rule of 2012)"

// The rules of the five subscales.
var (
	ByKOOSPain     = koosRule("pain")
	ByKOOSSymptoms = koosRule("symptoms")
	ByKOOSADL      = koosRule("daily living")
	ByKOOSSport    = koosRule("sport and recreation")
	ByKOOSQOL      = koosRule("quality of life")
)

func koosRule(scale basis.Said) basis.Rule {
	return basis.Rule{Name: basis.Say("KOOS {a}", scale), Sum: "100 − 25 × mean($*)", Source: "KOOS scoring, rule of 2012"}
}

// KOOSPain returns the score of a subscale of nine items, each 0 (best) to 4: 100 − 25·mean, 0 to 100, higher is better.
// There is no score of all five together.
//
// Source: KOOS scoring, rule of 2012.
// Studied: knees of all kinds.
// Refuses: another number of items than 9; an answer outside 0 to 4; fewer than 5 answered.
func KOOSPain(items Items) (unit.Points, error) { return koos(koosPain, items) }

// KOOSSymptoms returns the score of seven items, as KOOSPain.
//
// Source: KOOS scoring, rule of 2012.
// Studied: as KOOSPain.
// Refuses: another number of items than 7; an answer outside 0 to 4; fewer than 4 answered.
func KOOSSymptoms(items Items) (unit.Points, error) { return koos(koosSymptoms, items) }

// KOOSADL returns the score of the 17 items of daily living, as KOOSPain.
//
// Source: KOOS scoring, rule of 2012.
// Studied: as KOOSPain.
// Refuses: another number of items than 17; an answer outside 0 to 4; fewer than 9 answered.
func KOOSADL(items Items) (unit.Points, error) { return koos(koosADL, items) }

// KOOSSport returns the score of the five items of sport and recreation, as KOOSPain.
//
// Source: KOOS scoring, rule of 2012.
// Studied: as KOOSPain.
// Refuses: another number of items than 5; an answer outside 0 to 4; fewer than 3 answered.
func KOOSSport(items Items) (unit.Points, error) { return koos(koosSport, items) }

// KOOSQOL returns the score of the four items of quality of life, as KOOSPain.
//
// Source: KOOS scoring, rule of 2012.
// Studied: as KOOSPain.
// Refuses: another number of items than 4; an answer outside 0 to 4; fewer than 2 answered.
func KOOSQOL(items Items) (unit.Points, error) { return koos(koosQOL, items) }

func koos(s sheet, items Items) (unit.Points, error) {
	if err := s.refuse(items); err != nil {
		return 0, err
	}
	return 100 - unit.Points(25*float64(mean(items.Given()))), nil
}
