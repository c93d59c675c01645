package page

import "paceleaf/generator/program"

// A dose that goes by the clock: sets of some seconds, or rounds of hard and easy; and how hard it should feel.

// timed is 3 × 30 s, or 6 rounds · 1 min hard, then 2 min easy.
func (h handout) timed(do program.Dose) string {
	w, work := h.w, h.time(*do.WorkFor)
	switch {
	case do.Rounds != nil && do.Rest != nil:
		return w.Say("dose.rounds", "n", *do.Rounds, "hard", work, "easy", h.time(*do.Rest))
	case do.Sets != nil:
		return w.Say("dose.sets-work", "sets", *do.Sets, "time", work)
	}
	return work
}

// felt is how hard a dose should feel: a number of 10, or what can still be said.
func (h handout) felt(do program.Dose) string {
	switch {
	case do.Effort != nil && do.Rounds != nil:
		return h.w.Say("dose.effort-round", "n", *do.Effort)
	case do.Effort != nil:
		return h.w.Say("dose.effort", "n", *do.Effort)
	case do.Talk == program.WholeSentences:
		return h.w.Say("dose.talk-sentences")
	case do.Talk == program.FewWords:
		return h.w.Say("dose.talk-words")
	}
	return ""
}
