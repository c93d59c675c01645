package page

import (
	"slices"

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

// ofOneLeg names the leg beside a limit, the event's own too where the other leg does with weight what the limit is about: a line that
// named none would forbid what the other leg's box asks for.
func (h handout) ofOneLeg(what string, b ban) string {
	if b.side == h.side() && h.otherWorks(b) {
		return h.w.Say("leg.of", "what", what, "leg", h.legLabel(b.side))
	}
	return h.ofLeg(what, b.side)
}

// otherWorks reports whether the other leg does, with weight, what a limit on bending, straightening or effort is about.
func (h handout) otherWorks(b ban) bool {
	about := map[string]unit.Kind{"bending": unit.LoadedBend, "straightening": unit.StraighteningUnderLoad}[b.topic]
	if about == "" && b.topic != "effort" || b.side == unit.Both {
		return false
	}
	return slices.ContainsFunc(h.Prescriptions, func(p plan.Prescription) bool {
		return p.Side == b.side.Opposite() && p.Exercise != nil && (about == "" || p.Exercise.Names(about)) &&
			slices.ContainsFunc(p.Weeks, func(d plan.WeekDose) bool { return d.Plates.OK() || d.FindYourWeight })
	})
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
