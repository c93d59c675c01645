package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// free is a limit that forbids nothing of what these tests look at.
var free = rows("kneeling", "", "", "{ week = 0, allowed = false }")

// aRun is the activity that a neighbour of a heel slide's neighbours names.
const aRun = "[[activity]]\nid = \"running\"\nkinds = [\"running\"]\n[[activity.needs]]\nearliest_week = 12\nstanding = \"tool default\"\n"

// angles is a test day on which both knees were measured; an empty text was not.
func angles(lacks, bends, otherLacks, otherBends string) string {
	day := calm
	for key, v := range map[string]string{"left.lacks_extension_deg": lacks, "left.flexion_deg": bends, "right.lacks_extension_deg": otherLacks, "right.flexion_deg": otherBends} {
		if v != "" {
			day += key + " = " + v + "\n"
		}
	}
	return day
}

// Rule 7: a printed range asks for no bend that the leg was not measured to have; a missing measurement narrows nothing.
func TestRule07_ARangeIsHeldAgainstTheMeasuredOne(t *testing.T) {
	at70 := rows("passive-bend", "", "", "{ week = 0, range_deg = [0, 70] }")
	for _, row := range []struct {
		exercise    string
		limits, on  string
		test        string
		left, right string // in week 1
		why         string
	}{
		{"heel-slide", free, "2026-02-16", angles("0", "68", "0", "141"), "0-78", "0-130", "an exercise for range goes ten degrees further"},
		{"heel-slide", at70, "2026-02-16", angles("0", "68", "0", "141"), "0-70", "0-130", "never beyond the limit"},
		{"heel-slide", free, "2026-02-16", angles("12", "68", "0", "141"), "0-78", "0-130", "what lacks of straight does not stop work without load"},
		{"heel-prop", free, "2026-02-16", angles("12", "68", "0", "141"), "0-0", "0-0", "it is there to win what lacks"},
		{"quad-set", free, "2026-02-16", angles("12", "68", "0", "141"), "0-0", "0-0", "likewise"},
		{"leg-press-single", free, "2026-02-16", angles("0", "68", "0", "141"), "0-68", "0-90", "loaded: no more than measured"},
		{"leg-press-single", free, "2026-02-16", angles("5", "68", "0", "141"), "5-68", "0-90", "loaded: no straighter than measured"},
		{"leg-press-single", free, "2026-02-16", angles("0", "130", "8", "80"), "0-90", "8-80", "each leg by its own measure"},
		{"leg-press-single", free, "2026-02-16", angles("", "", "", ""), "0-90", "0-90", "a missing measurement narrows nothing"},
		{"leg-press-single", free, "2026-02-17", angles("0", "68", "0", "141"), "0-90", "0-90", "measured after the block's first day"},
		{"leg-press-single", free, "2026-01-04", angles("0", "68", "0", "141"), "0-90", "0-90", "measured before the operation: another knee"},
		{"prone-curl-no-weight", free, "2026-02-16", angles("5", "68", "0", "141"), "0-68", "0-90", "without load: the bend alone"},
		{"knee-extension-isometric-90", free, "2026-02-16", angles("0", "68", "0", "141"), "not prescribed", "90-90", "the knee does not reach 90"},
		{"leg-press-single", free, "2026-02-16", angles("12", "30", "0", "141"), "not prescribed", "0-90", "an arc of 18 under load is for holding still"},
		{"heel-slide", free, "2026-02-16", angles("0", "8", "0", "141"), "0-18", "0-130", "without load a small arc is where it begins"},
	} {
		t.Run(row.exercise+" "+row.why, func(t *testing.T) {
			w := who{starts: "2026-02-16", weeks: 1, tests: map[string]string{row.on: row.test}, files: bare(row.limits, aRun, fmt.Sprintf("%q", row.exercise))}
			p := w.plan(t)
			for side, want := range map[unit.Side]string{unit.Left: row.left, unit.Right: row.right} {
				if got := reach(dose(p, row.exercise, side, 1)); got != want {
					t.Errorf("%s: %s, want %s: %s", side, got, want, row.why)
				}
			}
			if row.left == "not prescribed" && !strings.Contains(because(p, row.exercise, 1), "the left knee ") {
				t.Errorf("%q does not name the measured end", because(p, row.exercise, 1))
			}
		})
	}
}

// A later week of an exercise for range is a ceiling, ten degrees on; loaded work stays where the knee was measured.
func TestMeasuredRangeByWeek(t *testing.T) {
	w := who{starts: "2026-02-16", weeks: 3, tests: map[string]string{"2026-02-16": angles("0", "105", "0", "141")}, files: bare(free, aRun, `"heel-slide"`, `"squat"`)}
	p := w.plan(t)
	for week, want := range map[int]string{1: "0-115", 2: "0-125", 3: "0-130"} {
		if got := reach(dose(p, "heel-slide", unit.Left, week)); got != want {
			t.Errorf("week %d: %s, want %s", week, got, want)
		}
	}
	w.tests["2026-02-16"] = angles("0", "71", "4", "141")
	if got := reach(dose(w.plan(t), "squat", unit.Both, 3)); got != "4-71" {
		t.Errorf("both legs: %s, want 4-71, what both knees have", got)
	}
}

// The next choice of a slot takes over where the knee does not bend so far.
func TestMeasuredRangeChoosesNext(t *testing.T) {
	w := who{starts: "2026-02-16", weeks: 1, tests: map[string]string{"2026-02-16": angles("0", "45", "0", "141")},
		files: bare(free, "", `"knee-extension-isometric-90", "quad-set"`)}
	p := w.plan(t)
	if got := chosen(p, "slot-1", unit.Left, 1); got != "quad-set" {
		t.Errorf("left: %s", got)
	}
	if got := chosen(p, "slot-1", unit.Right, 1); got != "knee-extension-isometric-90" {
		t.Errorf("right: %s", got)
	}
}

// What nobody measured is said: the range then rests on limits alone.
func TestBendNotMeasuredIsFlagged(t *testing.T) {
	for _, row := range []struct{ test, want string }{{calm, "left knee"}, {straightKnees, ""}} {
		w := who{starts: "2026-02-16", weeks: 1, tests: map[string]string{"2026-02-16": row.test}, files: bare(free, "", `"squat"`)}
		if says := flagged(w.plan(t), "bend-not-measured"); (says == "") != (row.want == "") || !strings.Contains(says, row.want) {
			t.Errorf("%q, want %q", says, row.want)
		}
	}
}
