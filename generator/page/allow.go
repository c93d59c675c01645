package page

import (
	"slices"
	"strings"

	"paceleaf/generator/unit"
)

// closable are the kinds that are simply open or closed.
var closable = []unit.Kind{unit.Impact, unit.Running, unit.Twisting, unit.Kneeling, unit.Contact,
	unit.MaximalEffort, unit.AddedWeight, unit.StraighteningUnderLoad, unit.PassiveBend, unit.ActiveBend, unit.LoadedBend}

// allows says in plain words what a limit still forbids; "" where it forbids nothing.
func (h handout) allows(side unit.Side, kind unit.Kind, on []unit.Kind, a unit.Allowance) string {
	switch {
	case a.Allowed != nil && *a.Allowed:
		return ""
	case kind == unit.WeightBearing:
		return h.weightBearing(side, a)
	case kind == unit.Brace:
		return h.brace(a)
	case kind == unit.HamstringWork && a.Grade != "":
		return h.hamstrings(a.Grade)
	case kind == unit.HamstringWork && closed(a):
		return h.hamstrings(unit.NoWork)
	case a.Range != nil:
		return strings.TrimSpace(h.reach(side, kind, *a.Range) + " " + h.bothOnly(a))
	case closed(a) && kind == unit.AddedWeight && slices.Contains(on, unit.StraighteningUnderLoad):
		return h.w.Say("limit.added-weight-straightening")
	case closed(a) && kind == unit.MaximalEffort && slices.Contains(on, unit.HamstringWork):
		return h.w.Say("limit.maximal-effort-hamstrings")
	case closed(a) && slices.Contains(closable, kind):
		return h.w.Say("limit."+string(kind)+"-closed", "leg", h.legIn(side), "knee", h.kneeIn(side))
	}
	return h.bothOnly(a)
}

func closed(a unit.Allowance) bool { return a.Allowed != nil && !*a.Allowed }

// touching is the share of body weight up to which the foot only touches the floor. Common practice, no source.
const touching unit.Percent = 15

func (h handout) weightBearing(side unit.Side, a unit.Allowance) string {
	w, leg, touch := h.w, h.legIn(side), a.Part != nil && *a.Part <= touching
	switch {
	case closed(a):
		return w.Say("limit.weight-bearing-closed", "leg", leg)
	case touch && (a.PartMass == nil || *a.PartMass == 0):
		return w.Say("limit.weight-bearing-touch", "leg", leg)
	case touch:
		return w.Say("limit.weight-bearing-touch", "leg", leg) + " " + w.Say("limit.weight-bearing-most", "load", h.load(*a.PartMass, h.pounds()))
	case a.PartMass != nil:
		return w.Say("limit.weight-bearing-kg", "leg", leg, "load", h.load(*a.PartMass, h.pounds()))
	case a.Part != nil:
		return w.Say("limit.weight-bearing-part", "leg", leg)
	}
	return ""
}

// bothOnly says that a bend under load is for both legs together.
func (h handout) bothOnly(a unit.Allowance) string {
	if !a.BothOnly {
		return ""
	}
	return h.w.Say("limit.both-legs-only")
}

func (h handout) brace(a unit.Allowance) (says string) {
	w := h.w
	switch {
	case a.Locked != nil && *a.Locked == 0:
		says = w.Say("limit.brace-straight")
	case a.Locked != nil:
		says = w.Say("limit.brace-locked", "at", h.bend(*a.Locked))
	case a.Range != nil:
		says = w.Say("limit.brace-range", "from", h.degrees(a.Range.Straightest), "to", h.degrees(a.Range.MostBent))
	default:
		says = w.Say("limit.brace-on")
	}
	switch {
	case a.Night != nil && *a.Night:
		says += " " + w.Say("limit.brace-night")
	case a.Night != nil:
		says += " " + w.Say("limit.brace-day")
	default: // common practice, no source: a brace stays on until somebody has said when it comes off
		says += " " + w.Say("limit.brace-untold")
	}
	return says
}

func (h handout) hamstrings(g unit.Work) string {
	if g == unit.Lengthened {
		return ""
	}
	return h.w.Say("limit.hamstring-work-" + string(g))
}

// reach says how far a bend may go; both ends only where the straight end is closed too.
func (h handout) reach(side unit.Side, kind unit.Kind, r unit.Reach) string {
	w := h.w
	base := "limit." + string(kind)
	switch {
	case r.Empty():
		return w.Say(base+"-closed", "leg", h.legIn(side), "knee", h.kneeIn(side))
	case kind == unit.StraighteningUnderLoad:
		return w.Say("limit.straightening-under-load-range", "from", h.bend(r.MostBent), "to", h.bend(r.Straightest))
	case r.Straightest > 0:
		return w.Say(base+"-between", "from", h.bend(r.Straightest), "to", h.bend(r.MostBent))
	}
	return w.Say(base+"-upto", "to", h.bend(r.MostBent))
}

// pounds reports whether the clinic prints pounds where no machine says otherwise.
func (h handout) pounds() bool { return h.Clinic.Units == "imperial" }
