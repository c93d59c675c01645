package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// ladder lists the levels of an exercise that is climbed by its own rule; the rule stands in the exercise's words.
func (h handout) ladder(m move) Node {
	if !slices.ContainsFunc(m.Legs, func(p plan.Prescription) bool { return p.Level > 0 }) {
		return Node{}
	}
	w := h.w
	list := Node{Kind: "list", Class: "levels"}
	for i, l := range m.Exercise.Levels {
		item := []Span{strong(w.Say("ladder.level", "n", i+1)), {Text: " " + l.Do}}
		if l.Indoor != "" {
			item = []Span{strong(w.Say("ladder.level", "n", i+1)), {Text: " "}, {Text: w.Say("ladder.outdoors"), Em: true}, {Text: " " + l.Do + " "},
				{Text: w.Say("ladder.indoors"), Em: true}, {Text: " " + l.Indoor}}
		}
		list.Items = append(list.Items, item)
	}
	return group("ladder", w.Say("ladder.title"), 4, list)
}

// rung is the level of a week: the one to begin on, then the one that has been earned.
func (h handout) rung(p plan.Prescription, d plan.WeekDose) string {
	if d.Week == p.Weeks[0].Week {
		return h.w.Say("ladder.begin", "n", p.Level)
	}
	return h.w.Say("ladder.earned")
}
