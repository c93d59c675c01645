package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// addBan keeps what is not said already. Of two that say the same the one that lasts longer stays; of two ranges the one inside
// the other; of two where one includes the other, the one that includes. One ban may cover several: all of these go.
func (h handout) addBan(bans []ban, b ban) []ban {
	pageEnd := h.Block.Starts.AddWeeks(h.Block.Weeks)
	if slices.ContainsFunc(bans, func(have ban) bool { return have.covers(b, pageEnd) }) {
		return bans
	}
	covered := func(have ban) bool { return b.covers(have, pageEnd) }
	at := slices.IndexFunc(bans, covered)
	if at < 0 {
		return append(bans, b)
	}
	return slices.Insert(slices.DeleteFunc(bans, covered), at, b)
}

// covers reports whether who obeys the ban obeys the other one too, so that only this one is said.
func (b ban) covers(o ban, pageEnd unit.Day) bool {
	if b.side != o.side {
		return false
	}
	longer := b.lifts.IsZero() || !o.lifts.IsZero() && !b.lifts.Before(o.lifts)
	return b.says == o.says && longer || b.within(o) || b.includes(o, pageEnd)
}

// lastsUntil is the first day on which the ban is over: rows of one author that follow each other and say the same are one.
func (h handout) lastsUntil(b ban) unit.Day {
	for i := 0; i < len(h.Limits) && !b.lifts.IsZero(); i++ {
		l := h.Limits[i]
		if !l.Wins || l.Gap || l.Kind != b.kind || l.From != b.lifts || l.Lifts == l.From || h.sideOf(l.Side) != b.side || !slices.Equal(l.On, b.on) ||
			saidBy(l) != [2]string{b.setBy, b.name} || h.allows(b.side, l.Kind, l.On, l.Allow) != b.says {
			continue
		}
		b.lifts, i = l.Lifts, -1 // the list has no order of days: look from its beginning again
	}
	return b.lifts
}

// saidBy is who set a limit, and the name; both empty where the program did.
func saidBy(l plan.Window) [2]string {
	if l.SetBy == "program" {
		return [2]string{}
	}
	return [2]string{l.SetBy, l.Name}
}

// within reports whether the ban is the tighter of two ranges of one kind.
func (b ban) within(o ban) bool {
	return b.kind == o.kind && slices.Equal(b.on, o.on) && b.reach != nil && o.reach != nil && b.reach.Within(*o.reach)
}

// includes reports whether a closed kind leaves nothing over of what another ban forbids: who may not straighten against a
// load at all need not be told to add no weight to it. One that lifts while the page is in use, and before the other, keeps
// quiet about nothing: then both are named.
func (b ban) includes(o ban, pageEnd unit.Day) bool {
	if !closed(b.allow) || len(b.on) > 0 {
		return false
	}
	part := b.kind == o.kind
	if b.kind == unit.StraighteningUnderLoad && o.kind == unit.AddedWeight {
		part = slices.Equal(o.on, []unit.Kind{unit.StraighteningUnderLoad})
	}
	lasts := b.lifts.IsZero() || !b.lifts.Before(pageEnd) || !o.lifts.IsZero() && !b.lifts.Before(o.lifts)
	return part && lasts
}
