package formula

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Questionnaire is a scored instrument. Only its numbers stand here: the text of its items is its owner's.
type Questionnaire struct {
	ID      string
	Name    string
	Items   int                        // in the order of the instrument
	Low     unit.Points                // lowest answer of an item
	Most    func(item int) unit.Points // highest answer of an item, from 0
	Step    unit.Points                // between two answers
	Least   int                        // how many items must be answered
	Missing basis.Said                 // the rule of missing items, in words
	Worst   unit.Points                // the worst score; above Best where more is worse
	Best    unit.Points                // the best score
	Score   func(Items) (unit.Points, error)
	Rule    func(Items) basis.Rule // its inputs are the answered items in order (Items.Given)
	Source  string
}

// HigherIsBetter reports the direction of the score.
func (q Questionnaire) HigherIsBetter() bool { return q.Best > q.Worst }

// Covers reports whether a score that was typed whole lies in the range of the instrument.
func (q Questionnaire) Covers(score unit.Points) bool {
	return score >= min(q.Worst, q.Best) && score <= max(q.Worst, q.Best)
}

// Questionnaires are all instruments that can be scored, in the order in which a message names them.
var Questionnaires = []Questionnaire{
	instrument("ikdc", ikdc, 0, 100, IKDC, IKDCRule, "left out of the sum and of the highest sum; 16 of 18 are needed"),
	instrument("koos-pain", koosPain, 0, 100, KOOSPain, sameRule(ByKOOSPain), koosMissing),
	instrument("koos-symptoms", koosSymptoms, 0, 100, KOOSSymptoms, sameRule(ByKOOSSymptoms), koosMissing),
	instrument("koos-adl", koosADL, 0, 100, KOOSADL, sameRule(ByKOOSADL), koosMissing),
	instrument("koos-sport", koosSport, 0, 100, KOOSSport, sameRule(ByKOOSSport), koosMissing),
	instrument("koos-qol", koosQOL, 0, 100, KOOSQOL, sameRule(ByKOOSQOL), koosMissing),
	instrument("kos-adls", kosADLS, 0, 100, KOSADLS, sameRule(ByKOSADLS), noMissing),
	instrument("acl-rsi", aclRSI, 0, 100, ACLRSI, sameRule(ByACLRSI), noMissing),
	instrument("acl-rsi-short", aclRSIShort, 0, 100, ACLRSIShort, sameRule(ByACLRSIShort), noMissing),
	instrument("lefs", lefs, 0, 80, LEFS, sameRule(ByLEFS), noMissing),
	instrument("tsk-11", tsk11, 44, 11, TSK11, sameRule(ByTSK11), noMissing),
	instrument("tegner", tegner, 0, 10, Tegner, sameRule(ByTegner), noMissing),
}

const noMissing basis.Said = "no rule for a missing item was found: every item is needed"

// QuestionnaireByID finds an instrument.
func QuestionnaireByID(id string) (q Questionnaire, known bool) {
	for _, q := range Questionnaires {
		if q.ID == id {
			return q, true
		}
	}
	return Questionnaire{}, false
}

func instrument(id string, s sheet, worst, best unit.Points, score func(Items) (unit.Points, error), rule func(Items) basis.Rule, missing basis.Said) Questionnaire {
	return Questionnaire{
		ID: id, Name: s.name, Items: s.items, Low: s.low, Most: s.most, Step: s.step, Least: s.least, Missing: missing,
		Worst: worst, Best: best, Score: score, Rule: rule, Source: rule(nil).Source.String(),
	}
}
