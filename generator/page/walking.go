package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// In the first weeks the page always says how to walk: from the limits, else that the surgeon's note says it, and what to do
// until the client knows. Common practice, no source: crutches and brace stay until somebody has said otherwise.

// early reports whether the block begins in the first weeks after an injury or an operation; where a program only begins,
// nothing has happened to the knee, and nobody was given crutches.
func (h handout) early() bool {
	return h.Event != nil && !h.onlyBegan() && h.weeksSince() < firstWeeks
}

// untold are walking and brace in the first weeks where no limit forbids anything.
func (h handout) untold(topic string, bans []ban) []Fact {
	if !h.early() || slices.ContainsFunc(bans, func(b ban) bool { return b.topic == topic }) {
		return nil
	}
	says := ""
	switch topic {
	case "walking":
		says = h.untoldWalking()
	case "brace":
		says = h.untoldBrace()
	}
	if says == "" {
		return nil
	}
	return []Fact{fact(h.w.Say("topic."+topic), says)}
}

func (h handout) untoldWalking() string {
	if h.ruled(unit.WeightBearing) {
		return h.w.Say("not-yet.walking-free", "leg", h.legIn(h.side()))
	}
	return h.w.Say(h.bySurgeon("not-yet.walking-untold", "not-yet.walking-untold-injury"))
}

// untoldBrace says that none is asked for: for sure where a person said so, else but for the one that the client was given.
func (h handout) untoldBrace() string {
	l, ruled := h.ruling(unit.Brace)
	switch {
	case !ruled:
		return h.w.Say(h.bySurgeon("not-yet.brace-untold", "not-yet.brace-untold-injury"))
	case l.SetBy == "program":
		return h.w.Say("not-yet.brace-unasked")
	}
	return h.w.Say("not-yet.brace-free")
}

// bySurgeon is the key of a sentence that sends to the surgeon's note; without an operation to whoever has seen the knee.
func (h handout) bySurgeon(key, without string) string {
	if h.operated() {
		return key
	}
	return without
}

// ruled reports whether a limit of the kind is in force for the event's knee on the block's first day, even one that allows
// all.
func (h handout) ruled(kind unit.Kind) bool {
	_, ruled := h.ruling(kind)
	return ruled
}

func (h handout) ruling(kind unit.Kind) (l plan.Window, ruled bool) {
	for _, l := range h.Limits {
		if l.Wins && l.Kind == kind && h.sideOf(l.Side) == h.side() && inForce(l.From, l.Lifts, h.Block.Starts) {
			return l, true
		}
	}
	return l, false
}

// carefulWith is the ban on walking, or of a brace, that decides about stairs and driving. In the first weeks without one it is
// the crutches, and the rail where the whole weight is allowed.
func (h handout) carefulWith(bans []ban) (b ban, careful bool) {
	if i := slices.IndexFunc(bans, func(b ban) bool { return b.topic == "walking" || b.topic == "brace" }); i >= 0 {
		return bans[i], true
	}
	topic := "walking"
	if h.ruled(unit.WeightBearing) {
		topic = "brace"
	}
	return ban{topic: topic, side: h.side()}, h.early()
}
