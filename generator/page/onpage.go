package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What a page has: a sentence about weights, jumps or runs stands only where the page has some. Who never ran need not be told
// to leave running out, and who has no weight cannot take less of it.

// weighs reports whether any box of the page has a weight, or asks to look for one.
func (h handout) weighs() bool {
	return slices.ContainsFunc(h.moves(), func(m move) bool {
		return m.anyWeek(func(d plan.WeekDose) bool { return d.FindYourWeight || d.Plates.Or(0) > 0 || len(d.Each) > 0 })
	})
}

// has reports whether an exercise of the page names a kind, or the therapist has opened an activity that does. In a pause what was
// opened rests already, so nobody is told to leave it out once more.
func (h handout) has(kind unit.Kind) bool {
	return slices.ContainsFunc(h.Prescriptions, func(p plan.Prescription) bool { return p.Exercise != nil && p.Exercise.Names(kind) }) ||
		!h.pausedThroughout() && slices.ContainsFunc(h.Activities, func(a plan.ActivityState) bool {
			return a.Activity != nil && a.OpenedBy != "" && slices.Contains(a.Activity.Kinds, kind)
		})
}

// less is what a step back asks of the page: less weight, 1 set less, no jumping and no running.
func (h handout) less() string {
	w := h.w
	var what []string
	if h.weighs() {
		what = append(what, w.Say("less.weight"))
	}
	what = append(what, h.fewer())
	if h.has(unit.Impact) {
		what = append(what, w.Say("less.jumping"))
	}
	if h.has(unit.Running) {
		what = append(what, w.Say("less.running"))
	}
	return w.Join(what)
}

// fewer is 1 set less, or fewer times where nothing on the page has more than 1 set.
func (h handout) fewer() string {
	inSets := func(m move) bool {
		return m.anyWeek(func(d plan.WeekDose) bool {
			return d.Dose.Sets != nil && *d.Dose.Sets > 1 || d.Dose.Rounds != nil || len(d.Each) > 0
		})
	}
	if slices.ContainsFunc(h.moves(), inSets) {
		return h.w.Say("less.set")
	}
	return h.w.Say("less.times")
}

// whereThere are the sentences for weights, landings and running, each where the page has them.
func (h handout) whereThere(weights, landings, running string) (what []string) {
	if h.weighs() {
		what = append(what, h.w.Say(weights))
	}
	if h.has(unit.Impact) {
		what = append(what, h.w.Say(landings))
	}
	if h.has(unit.Running) {
		what = append(what, h.w.Say(running))
	}
	return what
}

// hard is the hard work of the page, by name where it can be named.
func (h handout) hard() string {
	what := h.whereThere("hard.weights", "hard.jumping", "hard.running")
	if len(what) == 0 {
		return h.w.Say("hard.all")
	}
	return h.w.Join(append(what, h.w.Say("hard.other")))
}

// byWeight is a sentence for a page with weights, else the one for a page without: there less is 1 set less.
func (h handout) byWeight(with, without string) string {
	if h.weighs() {
		return h.w.Say(with)
	}
	return h.w.Say(without, "what", h.fewer())
}

// staying is what not to go up in, by name; "" where the page has none of them.
func (h handout) staying() string {
	what := h.whereThere("up.weight", "up.landings", "up.running")
	if len(what) == 0 {
		return ""
	}
	return h.w.Say("now.stay-in", "what", h.w.Join(what))
}
