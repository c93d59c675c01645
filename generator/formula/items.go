package formula

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Answer is the answer to one item of a questionnaire, in points; the zero Answer was not given, and is never a nought.
type Answer struct {
	points unit.Points
	given  bool
}

// Answered is an answer that was given.
func Answered(points unit.Points) Answer { return Answer{points, true} }

// Points returns the points, and whether the item was answered.
func (a Answer) Points() (p unit.Points, ok bool) { return a.points, a.given }

// Items are the answers of one questionnaire in the order of its items.
type Items []Answer

// Given are the points of the answered items, in order: the inputs of a rule.
func (items Items) Given() (given []unit.Points) {
	for _, a := range items {
		if a.given {
			given = append(given, a.points)
		}
	}
	return given
}

func (items Items) sum() (total unit.Points) {
	for _, p := range items.Given() {
		total += p
	}
	return total
}

// sheet is what the score of a questionnaire asks of the answers before it reckons.
type sheet struct {
	name  string
	items int
	least int // answered items
	low   unit.Points
	most  func(i int) unit.Points // of item i from 0
	step  unit.Points
}

// refuse says what is wrong with the answers of a sheet.
func (s sheet) refuse(items Items) error {
	if len(items) != s.items {
		return basis.Say("the {a} has {b} items, not {c}: no score", s.name, s.items, len(items))
	}
	for i, a := range items {
		p, ok := a.Points()
		off := float64((p - s.low) / s.step)
		if ok && (!number(p) || p < s.low || p > s.most(i) || off != math.Floor(off)) {
			return basis.Say("the {a}, item {b}: {c} is no answer; write {d} to {e} in steps of {f}: no score",
				s.name, i+1, float64(p), float64(s.low), float64(s.most(i)), float64(s.step))
		}
	}
	switch given := len(items.Given()); {
	case given == 0:
		return basis.Say("the {a} was not answered: no score", s.name)
	case given < s.least && s.least == s.items:
		return basis.Say("the {a}: {b} of {c} items answered, and no rule for a missing one was found: no score", s.name, given, s.items)
	case given < s.least:
		return basis.Say("the {a}: {b} of {c} items answered, at least {d} are needed: no score", s.name, given, s.items, s.least)
	}
	return nil
}

// upTo is the highest answer where all items have the same.
func upTo(most unit.Points) func(int) unit.Points {
	return func(int) unit.Points { return most }
}

// sameRule is a rule that does not hang on which items were answered.
func sameRule(by basis.Rule) func(Items) basis.Rule {
	return func(Items) basis.Rule { return by }
}
