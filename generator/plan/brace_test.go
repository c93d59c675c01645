package plan_test

import (
	"fmt"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Rules 5 and 6: the brace of a day is the ruling of all that is said of it: two shipped rows that stand together meet in the
// strictest, and a word that begins or lifts within the block changes it that day.
func TestRule06k_TheBraceOfTheDay(t *testing.T) {
	const from, to = "2026-01-12", "2026-01-19"
	opened := limit("brace", "range_deg = [0, 60]", "2026-01-05", to, "surgeon", "Dr Auk", "2026-01-05")
	for _, row := range []struct{ also, more, on, want, why string }{
		{`["mcl-sprain"]`, "", from, "0-90", "its row alone"},
		{`["mcl-sprain", "lateral-tenodesis"]`, "", from, "locked 0", "the milder row stands first in the file"},
		{`["lateral-tenodesis", "mcl-sprain"]`, "", from, "locked 0", "in whatever order"},
		{`["lateral-tenodesis"]`, opened, "2026-01-18", "0-60", "the surgeon's word stands in place of the row"},
		{`["lateral-tenodesis"]`, opened, to, "locked 0", "from the day on which it lifts the row stands again"},
		{`["lateral-tenodesis"]`, limit("brace", "allowed = true", to, "", "surgeon", "Dr Auk", to), from, "locked 0", "before it begins"},
		{`["lateral-tenodesis"]`, limit("brace", "allowed = true", to, "", "surgeon", "Dr Auk", to), to, "", "the surgeon takes it off"},
	} {
		p := who{starts: from, weeks: 3, files: own(`"mini-squat"`), also: row.also, more: row.more}.plan(t)
		set, worn := p.Braced(unit.Left, day(row.on))
		got := ""
		switch {
		case set.Locked != nil:
			got = "locked " + fmt.Sprint(*set.Locked)
		case worn && set.Range != nil:
			got = fmt.Sprint(set.Range.Straightest) + "-" + fmt.Sprint(set.Range.MostBent)
		}
		if _, other := p.Braced(unit.Right, day(row.on)); got != row.want || other {
			t.Errorf("%s on %s: %q, want %q (%s); the other leg %v", row.also, row.on, got, row.want, row.why, other)
		}
	}
}

// Work of both legs together is told the stricter of two braces, whichever leg wears it.
func TestRule06k_TwoBraces(t *testing.T) {
	starts, straight := day("2026-01-12"), unit.Degrees(0)
	hinged, locked := unit.Allowance{Range: &unit.Reach{MostBent: 90}}, unit.Allowance{Locked: &straight}
	worn := func(side unit.Side, set unit.Allowance) plan.Worn {
		return plan.Worn{Side: side, Allow: set, From: starts, Until: starts.AddDays(7)}
	}
	for _, list := range [][]plan.Worn{{worn(unit.Left, hinged), worn(unit.Right, locked)}, {worn(unit.Right, locked), worn(unit.Left, hinged)}} {
		p := plan.Plan{Worn: list}
		both, _ := p.Braced(unit.Both, starts)
		left, _ := p.Braced(unit.Left, starts)
		if both.Locked == nil || left.Locked != nil || left.Range == nil {
			t.Errorf("both legs %+v, the left leg %+v", both, left)
		}
		if _, still := p.Braced(unit.Left, starts.AddDays(7)); still {
			t.Error("it has come off")
		}
	}
}
