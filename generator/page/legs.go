package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// How legs and knees are named. The event's own stand in the head of the page and need no name beside a limit; what speaks
// of the other leg always says so.

// sideOf is the leg of a limit; one that names none is the event's.
func (h handout) sideOf(side unit.Side) unit.Side {
	if side == "" {
		return h.side()
	}
	return side
}

// kneeIn and legIn are a knee and a leg inside a sentence, after "your": LEFT knee, or knees where it is both.
func (h handout) kneeIn(side unit.Side) string {
	if side == unit.Both {
		return h.w.Say("knee.two")
	}
	return h.w.Say("knee." + string(side))
}

func (h handout) legIn(side unit.Side) string {
	if side == unit.Both {
		return h.w.Say("leg.two")
	}
	return h.w.Say("leg." + string(side))
}

// ofLeg names the leg beside something that is not of the event's own: Kneeling, RIGHT leg.
func (h handout) ofLeg(what string, side unit.Side) string {
	if side == h.side() {
		return what
	}
	return h.w.Say("leg.of", "what", what, "leg", h.legLabel(side))
}

func (h handout) legLabel(side unit.Side) string {
	if side == unit.Both {
		return h.w.Say("leg.each")
	}
	return h.w.Say("leg." + string(side))
}

// role says what a leg is to the client: operated, injured, the one that gave the graft.
func (h handout) role(p plan.Prescription) string {
	key := p.Role
	switch {
	case p.Role == "both":
		return ""
	case p.Role == "operated" && h.operated() && h.side() != unit.Both && p.Side != h.side():
		key = "operated-too"
	case p.Role == "index" && h.injured():
		key = "injured"
	}
	if !h.w.Has("role." + key) {
		return ""
	}
	return h.w.Say("role." + key)
}

// turn orders the boxes of an exercise: the event's own leg first.
func (h handout) turn(p plan.Prescription) int {
	switch {
	case p.Side == h.side(), p.Side == unit.Both, h.side() == unit.Both && p.Role != "other":
		return 0
	}
	return 1
}
