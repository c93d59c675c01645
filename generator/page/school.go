package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// School is where a young client meets stairs, crowds and sport. What the page says of it is common practice, no source, and only
// ever closes: school sport asks for running, jumping and turning, so it waits until all of these are open.

// ofSchoolSport are the kinds that school sport asks for.
var ofSchoolSport = []unit.Kind{unit.Running, unit.Impact, unit.Twisting}

// school is what a young client leaves out there, and how to get through the day on crutches.
func (h handout) school(bans []ban) (facts []Fact) {
	if !h.Young() {
		return nil
	}
	w := h.w
	if _, careful := h.carefulWith(bans); careful {
		facts = append(facts, fact(w.Say("topic.school"), w.Say("school.day")))
	}
	if h.schoolSportCloses(bans) {
		facts = append(facts, fact(w.Say("topic.school-sport"), w.Say("school.sport")))
	}
	return facts
}

// schoolSportCloses reports whether any of what school sport asks for is not open: by a limit, an activity or a pause.
func (h handout) schoolSportCloses(bans []ban) bool {
	closes := func(k unit.Kind) bool { return slices.Contains(ofSchoolSport, k) }
	return h.paused() ||
		slices.ContainsFunc(bans, func(b ban) bool { return closes(b.kind) }) ||
		slices.ContainsFunc(h.Activities, func(a plan.ActivityState) bool {
			return a.Activity != nil && !a.Activity.Sport && a.State != "open" && slices.ContainsFunc(a.Activity.Kinds, closes)
		})
}
