package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// blockBefore lays a calm block before the one of who; own is a further line of it.
func blockBefore(w who, own string) who {
	w.files["clients/tern-04/blocks/1.toml"] = "starts = 2026-03-09\nweeks = 4\nby = \"imbali\"\n" + own
	w.files["clients/tern-04/blocks/2.toml"] = "starts = 2026-04-06\nweeks = 4\nby = \"imbali\"\n"
	return w
}

// Rule 27: what the block before did not ask of the paused knee does not begin in week 1 of a pause either, not even as the gentle
// choice of a slot whose hard one rests. Range, quad sets and swelling care are named by the rule, and may.
func TestRule27g_NothingNewBeginsInWeekOne(t *testing.T) {
	slots := []string{`"leg-press-single", "hamstring-set"`, `"leg-press-single", "quad-set"`, `"leg-press-single", "heel-slide"`,
		`"leg-press-single", "ankle-pump"`, `"straight-leg-raise"`}
	after := blockBefore(pausedWho(slots...), "").plan(t)
	first := pausedWho(slots...).plan(t)
	for _, row := range []struct {
		exercise       string
		side           unit.Side
		after, atFirst bool
		why            string
	}{
		{"hamstring-set", unit.Left, false, true, "new: the block before pressed"}, {"quad-set", unit.Left, true, true, "a quad set"},
		{"heel-slide", unit.Left, true, true, "range"}, {"ankle-pump", unit.Left, true, true, "swelling care"},
		{"straight-leg-raise", unit.Left, true, true, "the block before asked for it"}, {"leg-press-single", unit.Right, true, true, "the other leg goes on"},
	} {
		for name, p := range map[string]*plan.Plan{"after a block": after, "in the first block": first} {
			want := row.after
			if p == first {
				want = row.atFirst
			}
			for week := 1; week <= 2; week++ {
				if got := dose(p, row.exercise, row.side, week) != nil; got != want {
					t.Errorf("%s, %s, %s, week %d: %v, want %v (%s); %s", name, row.exercise, row.side, week, got, want, row.why, because(p, row.exercise, week))
				}
			}
		}
	}
	if got := because(after, "hamstring-set", 1); got != "nothing new begins in a pause" {
		t.Errorf("the worksheet says why: %q", got)
	}
}

// A hold in the first week takes nothing off this block's own page that goes on in a pause: it was begun by then.
func TestRule27h_AHoldEndsNothingThatHadBegun(t *testing.T) {
	w := pausedWho(`"hamstring-set"`, `"leg-press-single", "hip-hold"`)
	w.tests["2026-04-06"] = strings.Replace(w.tests["2026-04-06"], "2+", "trace", 1)
	w = blockBefore(w, "[[override]]\nexercise = \"hamstring-set\"\nleave_out = true\nreason = \"pain\"\n")
	w.files["clients/tern-04/holds/2026-04-08.toml"] = held("2026-04-08", "swelling")["clients/tern-04/holds/2026-04-08.toml"]
	p := w.plan(t)
	if dose(p, "hamstring-set", unit.Left, 1) == nil {
		t.Errorf("it stood on this block's first page: %s", because(p, "hamstring-set", 1))
	}
	if dose(p, "hip-hold", unit.Left, 1) != nil || dose(p, "leg-press-single", unit.Left, 1) != nil {
		t.Error("the press rests, and what would stand in its place is new")
	}
}

// neighbours are the easier and the harder exercise of one on the page; "" where none is named.
func neighbours(p *plan.Plan, exercise string, side unit.Side) (easier, harder string) {
	for _, r := range p.Prescriptions {
		if r.Exercise.ID == exercise && r.Side == side {
			if r.Easier != nil {
				easier = r.Easier.ID
			}
			if r.Harder != nil {
				harder = r.Harder.ID
			}
		}
	}
	return easier, harder
}

// Rules 5 to 8: what the page names as harder or easier is within this client's limits, whole where it is harder, at every week's place.
func TestNeighboursAreWithinReach(t *testing.T) {
	bend := func(most string) string {
		return limit("passive-bend", "range_deg = [0, "+most+"]", "2025-10-06", "", "surgeon", "Dr Auk", "2025-10-06")
	}
	for _, row := range []struct {
		name, more, place, block, want, why string
	}{
		{"free", "", "gym", "", "stationary-cycling", "the sample's knee bends far enough"},
		{"a limit of 90°", bend("90"), "gym", "", "", "the bike goes to 110°: it could only rock"},
		{"no bike", "", "heavy", "", "", "the place has none"},
		{"away in week 2", away("2026-04-13", "2026-04-19", "hotel"), "gym", "", "", "the hotel has none"},
		{"left out", "", "gym", "[[override]]\nexercise = \"stationary-cycling\"\nleave_out = true\nreason = \"pain\"\n", "", "the therapist has left it out"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{date: "2025-10-06", starts: "2026-04-06", place: row.place, block: row.block, more: row.more, files: own(`"heel-slide"`), tests: map[string]string{"2026-04-06": straightKnees}}
			if _, got := neighbours(w.plan(t), "heel-slide", unit.Left); got != row.want {
				t.Errorf("harder: %q, want %q (%s)", got, row.want, row.why)
			}
		})
	}
}
