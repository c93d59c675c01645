package page

import (
	"slices"

	"paceleaf/generator/unit"
)

// closedOf are the kinds that are simply open or closed.
var closable = []unit.Kind{unit.Impact, unit.Running, unit.Twisting, unit.Kneeling, unit.Contact,
	unit.MaximalEffort, unit.AddedWeight, unit.StraighteningUnderLoad, unit.PassiveBend, unit.ActiveBend, unit.LoadedBend}

// allows says in plain words what a limit still forbids; "" where it forbids nothing.
func (h handout) allows(kind unit.Kind, on []unit.Kind, a unit.Allowance) string {
	switch {
	case a.Allowed != nil && *a.Allowed:
		return ""
	case kind == unit.WeightBearing:
		return h.weightBearing(a)
	case kind == unit.Brace:
		return h.brace(a)
	case kind == unit.HamstringWork && a.Grade != "":
		return h.hamstrings(a.Grade)
	case kind == unit.HamstringWork && closed(a):
		return h.hamstrings(unit.NoWork)
	case a.Range != nil:
		return h.reach(kind, *a.Range)
	case closed(a) && kind == unit.AddedWeight && slices.Contains(on, unit.StraighteningUnderLoad):
		return h.w.Say("limit.added-weight-straightening")
	case closed(a) && slices.Contains(closable, kind):
		return h.w.Say("limit."+string(kind)+"-closed", "leg", h.leg(), "knee", h.knee())
	}
	return ""
}

func closed(a unit.Allowance) bool { return a.Allowed != nil && !*a.Allowed }

func (h handout) weightBearing(a unit.Allowance) string {
	w := h.w
	switch {
	case closed(a):
		return w.Say("limit.weight-bearing-closed", "leg", h.leg())
	case a.PartMass != nil:
		return w.Say("limit.weight-bearing-kg", "leg", h.leg(), "load", h.load(*a.PartMass, h.pounds()))
	case a.Part != nil:
		return w.Say("limit.weight-bearing-part", "leg", h.leg())
	}
	return ""
}

func (h handout) brace(a unit.Allowance) (says string) {
	w := h.w
	switch {
	case a.Locked != nil:
		says = w.Say("limit.brace-locked", "at", h.bend(*a.Locked))
	case a.Range != nil:
		says = w.Say("limit.brace-range", "from", h.degrees(a.Range.Straightest), "to", h.degrees(a.Range.MostBent))
	default:
		says = w.Say("limit.brace-on")
	}
	if a.Night != nil && *a.Night {
		says += " " + w.Say("limit.brace-night")
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
func (h handout) reach(kind unit.Kind, r unit.Reach) string {
	w := h.w
	base := "limit." + string(kind)
	switch {
	case r.Empty():
		return w.Say(base+"-closed", "leg", h.leg(), "knee", h.knee())
	case kind == unit.StraighteningUnderLoad:
		return w.Say("limit.straightening-under-load-range", "from", h.bend(r.MostBent), "to", h.bend(r.Straightest))
	case r.Straightest > 0:
		return w.Say(base+"-between", "from", h.bend(r.Straightest), "to", h.bend(r.MostBent))
	}
	return w.Say(base+"-upto", "to", h.bend(r.MostBent))
}

// pounds reports whether the clinic prints pounds where no machine says otherwise.
func (h handout) pounds() bool { return h.Clinic.Units == "imperial" }
