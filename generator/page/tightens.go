package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// A letter may come in the middle of a block, or begin there: what holds on the first day is then not the strictest. So the list of
// what to leave out says from which day on a limit is stricter, and promises nothing on a day after that.

// tightening are the days within the block on which a limit becomes stricter.
func (h handout) tightening() (lines []plan.DateLine) {
	for _, d := range h.gatheredDates() {
		if d.Kind == "tightens" && !d.On.After(h.ends()) {
			lines = append(lines, d)
		}
	}
	return lines
}

// stricter are the facts of a topic about limits that become stricter within the block.
func (h handout) stricter(topic string) (facts []Fact) {
	for _, d := range h.tightening() {
		of := slices.IndexFunc(topics, func(t topicKinds) bool { return t.id == topic })
		if says := h.loosened(d); says != "" && slices.Contains(topics[of].kinds, unit.Kind(d.What)) {
			facts = append(facts, fact(h.ofLeg(h.w.Say("topic."+topic), h.sideOf(d.Side)), h.w.Say("not-yet.from-then", "day", h.w.Day(d.On), "what", says)))
		}
	}
	return facts
}

// tightensBefore reports whether the limit of a ban becomes stricter before the ban's own end: then that end opens nothing.
func (h handout) tightensBefore(b ban) bool {
	return slices.ContainsFunc(h.Dates, func(d plan.DateLine) bool {
		return d.Kind == "tightens" && d.What == string(b.kind) && (b.side == unit.Both || h.sideOf(d.Side) == b.side) && d.On.Before(b.lifts)
	})
}
