package page

import (
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// goals are what the knee has not reached yet, each with its day. Late is said calmly: it is ours to look at.
func (h handout) goals() Part {
	w := h.w
	facts := factual("goals")
	for _, g := range h.Goals {
		if g.State == "reached" || g.Goal == nil {
			continue
		}
		facts.Facts = append(facts.Facts, fact(h.goal(g), h.byWhen(g)))
	}
	if len(facts.Facts) == 0 {
		return Part{}
	}
	return h.part("goals", w.Say("goals.title", "knee", h.kneeIn(h.side())), paragraph("lead", w.Say("goals.lead")), facts)
}

// goal is a goal in words, by its measure.
func (h handout) goal(g plan.GoalState) string {
	w, key := h.w, "goal."+strings.ReplaceAll(g.Goal.Measure, ".", "-")
	switch mark := g.Mark; {
	case g.Goal.Measure == "extension" && mark.Number > 0:
		return w.Say("goal.extension-to", "to", h.degrees(unit.Degrees(mark.Number)))
	case g.Goal.Measure == "flexion" && g.Sense == "at least":
		return w.Say("goal.flexion", "to", h.bend(unit.Degrees(mark.Number)))
	case g.Goal.Measure == "effusion" && mark.Grade.Rank() > unit.GradeTrace.Rank():
		return w.Say("goal.effusion-less")
	case g.Goal.Measure != "flexion" && w.Has(key):
		return w.Say(key)
	}
	return w.Say("goal.other")
}

// byWhen is the day of a goal and, where that has passed, what to do about it.
func (h handout) byWhen(g plan.GoalState) string {
	w, passed := h.w, !g.By.After(h.AsOf)
	switch {
	case g.State == "waits" && g.Until.IsZero():
		return w.Say("goals.waits")
	case g.State == "waits":
		return w.Say("goals.waits") + " " + w.Say("not-yet.not-before", "day", w.Day(g.Until))
	case passed && g.Goal.Tell != "":
		return w.Say("goals.was-by", "day", w.Day(g.By)) + " " + w.Say("goals.tell")
	case passed && g.State == "not tested":
		return w.Say("goals.was-by", "day", w.Day(g.By)) + " " + w.Say("goals.test")
	case passed:
		return w.Say("goals.was-by", "day", w.Day(g.By)) + " " + w.Say("goals.look")
	}
	return w.Say("goals.by", "day", w.Day(g.By))
}
