package plan

import (
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Where a graft came from. Rows whose reason is the place where a tendon was taken are for the leg that gave it: on the
// operated leg that is when.graft_from = "same", on the other leg when.leg = "donor".

// gave reports whether a leg gave the graft of an event that happened to the other leg.
func gave(e *client.Event, side unit.Side) bool {
	return e.Graft != unit.Allograft && !isOf(e.Side, side) && isOf(e.GraftFrom, side)
}

// fromThere reports whether a condition on the graft's origin fits an operated leg. Where nobody has said who gave the
// graft, the leg is taken to have given it itself: that is the stricter.
func fromThere(w program.When, e *client.Event, leg unit.Side) bool {
	if w.GraftFrom == "" {
		return true
	}
	donated := e.Graft == unit.Allograft
	switch w.GraftFrom {
	case program.FromDonor:
		return donated
	case program.FromOther:
		return !donated && e.GraftFrom != "" && e.GraftFrom != leg && e.GraftFrom != unit.Both
	}
	return !donated && (e.GraftFrom == "" || leg == unit.Both || isOf(e.GraftFrom, leg))
}
