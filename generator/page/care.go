package page

import (
	"slices"

	"paceleaf/generator/unit"
)

// care is what a knee needs in its first weeks besides exercises: swelling, wound, how to rest, and against clots the foot and
// the medicine. Common practice, no source, and so without a number; the foot pump is from memory (its exercise says so), and the
// medicine is the surgeon's word alone. Crutches, brace and stairs stand under not yet, for limits speak of them.
func (h handout) care() Part {
	if !h.early() {
		return Part{}
	}
	w := h.w
	facts := factual("care", fact(w.Say("care.swelling"), w.Say("care.swelling-do")))
	if h.operated() {
		facts.Facts = append(facts.Facts, fact(w.Say("care.wound"), w.Say("care.wound-do")))
	}
	if h.restsStraight() {
		facts.Facts = append(facts.Facts, fact(w.Say("care.rest"), w.Say("care.rest-do", "knee", h.kneeIn(h.side()))))
	}
	if h.operated() {
		facts.Facts = append(facts.Facts, fact(w.Say("care.foot"), w.Say("care.foot-do")), fact(w.Say("care.medicine"), w.Say("care.medicine-do")))
	}
	return h.part("care", w.Say("care.title"), facts)
}

// restsStraight reports whether no limit keeps the event's knee from lying straight (rules 10).
func (h handout) restsStraight() bool {
	return !slices.ContainsFunc(h.bans(), func(b ban) bool {
		a := b.allow
		switch {
		case b.side != h.side():
			return false
		case b.kind == unit.Brace:
			return a.Locked != nil && *a.Locked > 0 || a.Range != nil && a.Range.Straightest > 0
		case b.kind == unit.PassiveBend || b.kind == unit.ActiveBend:
			return a.Range != nil && a.Range.Straightest > 0
		}
		return false
	})
}
