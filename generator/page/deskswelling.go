package page

import (
	"slices"

	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// askSwelling is the question that a pause for swelling puts to the surgeon: what was seen, what is done, when we look again. It asks and
// says nothing of the cause. Empty where swelling pauses nothing.
func (d *desk) askSwelling() string {
	i := slices.IndexFunc(d.p.Symptoms.Signals, func(g plan.Signal) bool { return g.Code == "effusion" && g.Action.Rank() >= plan.Pause.Rank() })
	if i < 0 || d.p.Found == nil {
		return ""
	}
	on := d.p.Symptoms.Signals[i].On
	is := newestOf(d.p.Found.Knees, func(k finding.KneeDay) bool { return k.On == on && k.Effusion != "" })
	was := newestOf(d.p.Found.Knees, func(k finding.KneeDay) bool { return k.On.Before(on) && k.Effusion != "" })
	key := "ask-swelling-new"
	if was.Effusion.Rank() >= unit.Grade2.Rank() {
		key = "ask-swelling-still"
	}
	seen := nonEmpty("; ", d.say(key, "grade", d.word("grade", string(is.Effusion)), "day", d.nearDay(on)), d.bendLost(on))
	if d.p.Block.NextVisit == nil {
		return d.say("ask-swelling-unbooked", "seen", seen)
	}
	return d.say("ask-swelling", "seen", seen, "visit", d.nearDay(*d.p.Block.NextVisit))
}

// bendLost says how much less the knee bends than on the test day before; empty where it does not.
func (d *desk) bendLost(on unit.Day) string {
	i := slices.IndexFunc(d.p.Changes, func(c plan.Change) bool { return c.Measure == "flexion" })
	if i < 0 || d.p.Changes[i].Delta == nil || d.p.Changes[i].Delta.Value >= 0 || d.p.Changes[i].Now.On != on {
		return ""
	}
	c := d.p.Changes[i]
	return d.say("bend-lost", "n", readTo(-c.Delta.Value, c.Delta.Unit), "day", d.nearDay(c.Before.On))
}
