package page

import (
	"slices"

	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// closedOf are the kinds that are simply open or closed.
var closable = []program.Kind{program.Impact, program.Running, program.Twisting, program.Kneeling, program.Contact,
	program.MaximalEffort, program.AddedWeight, program.StraighteningUnderLoad, program.PassiveBend, program.ActiveBend, program.LoadedBend}

// allows says in plain words what a limit still forbids; "" where it forbids nothing.
func (h handout) allows(kind program.Kind, on []program.Kind, a program.Allowance) string {
	switch {
	case a.Allowed != nil && *a.Allowed:
		return ""
	case kind == program.WeightBearing:
		return h.weightBearing(a)
	case kind == program.Brace:
		return h.brace(a)
	case kind == program.HamstringWork && a.Grade != "":
		return h.hamstrings(a.Grade)
	case kind == program.HamstringWork && closed(a):
		return h.hamstrings(program.NoWork)
	case a.Range != nil:
		return h.reach(kind, *a.Range)
	case closed(a) && kind == program.AddedWeight && slices.Contains(on, program.StraighteningUnderLoad):
		return h.w.Say("limit.added-weight-straightening")
	case closed(a) && slices.Contains(closable, kind):
		return h.w.Say("limit."+string(kind)+"-closed", "leg", h.leg(), "knee", h.knee())
	}
	return ""
}

func closed(a program.Allowance) bool { return a.Allowed != nil && !*a.Allowed }

func (h handout) weightBearing(a program.Allowance) string {
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

func (h handout) brace(a program.Allowance) (says string) {
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

func (h handout) hamstrings(g program.Work) string {
	if g == program.Lengthened {
		return ""
	}
	return h.w.Say("limit.hamstring-work-" + string(g))
}

// reach says how far a bend may go; both ends only where the straight end is closed too.
func (h handout) reach(kind program.Kind, r unit.Reach) string {
	w := h.w
	base := "limit." + string(kind)
	switch {
	case r.Empty():
		return w.Say(base+"-closed", "leg", h.leg(), "knee", h.knee())
	case kind == program.StraighteningUnderLoad:
		return w.Say("limit.straightening-under-load-range", "from", h.bend(r.MostBent), "to", h.bend(r.Straightest))
	case r.Straightest > 0:
		return w.Say(base+"-between", "from", h.bend(r.Straightest), "to", h.bend(r.MostBent))
	}
	return w.Say(base+"-upto", "to", h.bend(r.MostBent))
}

// pounds reports whether the clinic prints pounds where no machine says otherwise.
func (h handout) pounds() bool { return h.Clinic.Units == "imperial" }
