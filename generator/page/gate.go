package page

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// A gate is what a date alone does not open: a box that begins in a later week, or a later week that goes further. It waits for the
// therapist's word, and the box itself says what to do without it.

// opens reports whether a week of a box stands behind a gate of its own.
func opens(p plan.Prescription, at int) bool {
	if at == 0 {
		return !p.Weeks[0].Due
	}
	return wider(p.Weeks[at-1].Range, p.Weeks[at].Range)
}

// untilOpened is what to do where a later week goes further and nobody has said so: the week before it, or, where that one had to be
// opened too, the last one that was.
func (h handout) untilOpened(p plan.Prescription, before plan.WeekDose) string {
	for at, d := range p.Weeks {
		if d.Week <= before.Week && opens(p, at) {
			return h.w.Say("later.stay-told")
		}
	}
	return h.w.Say("later.stay", "week", before.Week)
}

// untilBegun is what to do in place of a box that begins later: what it takes the place of, or nothing.
func (h handout) untilBegun(p plan.Prescription) string {
	for _, old := range h.Prescriptions {
		if !h.pausedThroughout() && h.takesPlace(old, p) {
			return h.w.Say("dose.until-begun-old", "n", h.numberOf(old))
		}
	}
	return h.w.Say("dose.until-begun")
}

// numberOf is the number of the exercise that a box stands in.
func (h handout) numberOf(p plan.Prescription) int {
	return 1 + slices.IndexFunc(h.moves(), func(m move) bool { return m.Exercise.ID == p.Exercise.ID && m.Device == p.Device })
}

// leftOut is what a box says of a week in which it is not done: where another one takes its place that waits for a word, it goes on
// until the word is said.
func (h handout) leftOut(p plan.Prescription, week int) string {
	for _, next := range h.Prescriptions {
		if h.takesPlace(p, next) && week >= next.Weeks[0].Week {
			return h.w.Say("later.not-once", "title", next.Exercise.Title, "week", p.Weeks[len(p.Weeks)-1].Week)
		}
	}
	return h.w.Say("later.not")
}

// takesPlace reports whether a box that begins later takes the place of one that is due, at the place where that one is done, so that the
// old one may go on until then: what limits allow of the new one they allow of the old, which asks for no other kind of work and goes
// no further.
func (h handout) takesPlace(old, next plan.Prescription) bool {
	if old.Exercise == nil || next.Exercise == nil || old.Slot == nil || old.Slot != next.Slot || old.Side != next.Side || len(old.Weeks) == 0 || len(next.Weeks) == 0 {
		return false
	}
	last, first := old.Weeks[len(old.Weeks)-1], next.Weeks[0]
	there := slices.ContainsFunc(old.Weeks, func(d plan.WeekDose) bool { return h.placeIn(d.Week) == h.placeIn(first.Week) })
	kinds := !slices.ContainsFunc(old.Exercise.Kinds, func(k unit.Kind) bool { return !next.Exercise.Names(k) })
	within := last.Range == first.Range || last.Range != nil && first.Range != nil && last.Range.Within(*first.Range)
	return old.Weeks[0].Due && !first.Due && last.Week == first.Week-1 && there && kinds && within
}

// gates asks about what waits for the therapist's word in a week that is over by the next visit: nobody can say it in time.
func (r *remarker) gates() {
	visit, first, waiting := r.h.Block.NextVisit, unit.Day{}, []string(nil)
	if visit == nil || r.h.pausedThroughout() {
		return
	}
	for _, p := range r.h.Prescriptions {
		for at, d := range p.Weeks {
			if p.Exercise == nil || !opens(p, at) || !visit.After(d.Starts.AddDays(6)) {
				continue
			}
			if first.IsZero() || d.Starts.Before(first) {
				first = d.Starts
			}
			if !slices.Contains(waiting, p.Exercise.ID) {
				waiting = append(waiting, p.Exercise.ID)
			}
		}
	}
	if len(waiting) > 0 {
		r.add("gate", 0, fmt.Sprintf("from %s on %s on the handout for your word, and the next visit is on %s, when that week is over", first,
			waitsOf(waiting), visit), "tell the client by phone when it may begin, or move next_visit")
	}
}

// waitsOf names what waits.
func waitsOf(ids []string) string {
	verb := " wait"
	if len(ids) == 1 {
		verb = " waits"
	}
	return strings.Join(ids, ", ") + verb
}
