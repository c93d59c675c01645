package page

import (
	"slices"

	"paceleaf/generator/unit"
)

// addBan keeps one of two that say the same, the one that lasts longer; of two ranges the one inside the other; of two
// where one includes the other, the one that includes.
func (h handout) addBan(bans []ban, b ban) []ban {
	pageEnd := h.Block.Starts.AddWeeks(h.Block.Weeks)
	for i, have := range bans {
		switch {
		case have.side != b.side:
		case have.says == b.says:
			if !have.lifts.IsZero() && (b.lifts.IsZero() || b.lifts.After(have.lifts)) {
				bans[i] = b
			}
			return bans
		case b.within(have), b.includes(have, pageEnd):
			bans[i] = b
			return bans
		case have.within(b), have.includes(b, pageEnd):
			return bans
		}
	}
	return append(bans, b)
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
