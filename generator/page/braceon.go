package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// A brace that is on stands in each box of its leg: nobody looks up another part of the page before lifting a leg. A box that
// goes further than the brace does says so, for then somebody must have shown how to open it.

// braceOn says how the brace is worn in an exercise; "" where none is, or where the legs rest.
func (h handout) braceOn(p plan.Prescription, d plan.WeekDose) string {
	if p.Side == unit.Both && len(p.Exercise.Kinds) == 0 && d.Range == nil {
		return "" // of the trunk alone
	}
	a, worn := h.Braced(p.Side, d.Starts)
	if !worn {
		return ""
	}
	w := h.w
	switch {
	case a.Locked != nil && d.Range != nil && !d.Range.Within(unit.Reach{Straightest: *a.Locked, MostBent: *a.Locked}),
		a.Range != nil && d.Range != nil && !d.Range.Within(*a.Range):
		return w.Say("brace.opens")
	case a.Locked != nil && *a.Locked == 0:
		return w.Say("brace.on-straight")
	case a.Locked != nil:
		return w.Say("brace.on-locked", "at", h.bend(*a.Locked))
	case a.Range != nil:
		return w.Say("brace.on-range", "from", h.degrees(a.Range.Straightest), "to", h.degrees(a.Range.MostBent))
	}
	return w.Say("brace.on")
}

// gently is a sentence about bending freely; where a brace is locked, the one that leaves it on.
func (h handout) gently(free, braced string) string {
	if set, worn := h.Braced(h.side(), h.Block.Starts); worn && set.Locked != nil {
		return h.w.Say(braced)
	}
	return h.w.Say(free)
}
