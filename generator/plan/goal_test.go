package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/plan"
)

// Goals: what a knee should have reached by a week. Late is told, and opens and closes nothing.
func TestGoals(t *testing.T) {
	bend := "measure = \"flexion\"\nat_least_deg = 120\nby_week = 6\n"
	straight := "measure = \"extension\"\nat_most_deg = 0\nby_week = 2\ntell = \"surgeon\"\n"
	calm := "measure = \"effusion\"\nat_most = \"trace\"\nby_week = 4\n"
	for _, row := range []struct {
		name, goal, on, test, starts string
		want                         string
		why                          string
	}{
		{"reached", bend, "2026-02-09", "left.flexion_deg = 120\n", "2026-02-09", "reached", "120 is at least 120"},
		{"reached late", bend, "2026-03-09", "left.flexion_deg = 125\n", "2026-03-09", "reached", "late and there is still there"},
		{"not yet", bend, "2026-02-09", "left.flexion_deg = 119\n", "2026-02-09", "not yet", "week 5: a week is left"},
		{"the day before", bend, "2026-02-15", "left.flexion_deg = 119\n", "2026-02-15", "not yet", "day 41 is week 5"},
		{"late", bend, "2026-02-16", "left.flexion_deg = 119\n", "2026-02-16", "late", "week 6 begins on day 42"},
		{"not tested", bend, "2026-02-16", "effusion = \"trace\"\n", "2026-02-16", "not tested", "what nobody measured is not late"},
		{"measured before the operation", bend, "2026-01-02", "left.flexion_deg = 140\n", "2026-02-16", "not tested", "that was another state of the knee"},
		{"measured tomorrow", bend, "2026-02-17", "left.flexion_deg = 130\n", "2026-02-16", "not tested", "as of the block's first day"},
		{"the other knee", bend, "2026-02-16", "right.flexion_deg = 140\n", "2026-02-16", "not tested", "a goal is of the event's knee"},
		{"beyond straight", straight, "2026-02-16", "left.beyond_straight_deg = 3\n", "2026-02-16", "reached", "beyond straight lacks nothing"},
		{"lacks", straight, "2026-02-16", "left.lacks_extension_deg = 1\n", "2026-02-16", "late", "one degree is short of straight"},
		{"a grade", calm, "2026-02-16", "effusion = \"trace\"\n", "2026-02-16", "reached", "grades have their order"},
		{"a grade too high", calm, "2026-02-16", "effusion = \"1+\"\n", "2026-02-16", "late", "1+ is above trace"},
		{"another unit", "measure = \"flexion\"\nat_least_percent = 95\nby_week = 2\n", "2026-02-16", "left.flexion_deg = 120\n", "2026-02-16", "late", "120 degrees are not 95 percent"},
		{"of another graft", "measure = \"flexion\"\nat_least_deg = 120\nby_week = 2\nwhen.graft = [\"allograft\"]\n", "2026-02-16", "left.flexion_deg = 90\n", "2026-02-16", "", "it is not this client's goal"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), "[[goal]]\n"+row.goal+"standing = \"tool default\"\n", `"squat"`)
			p := who{starts: row.starts, weeks: 1, files: files, tests: map[string]string{row.on: row.test}}.plan(t)
			got := ""
			if len(p.Goals) > 0 {
				got = p.Goals[0].State
			}
			if got != row.want {
				t.Fatalf("%q, want %q (%s)", got, row.want, row.why)
			}
			says := flagged(p, "goal-late")
			if (says != "") != (row.want == "late") {
				t.Errorf("%s, and the flag says %q", got, says)
			}
			if row.want == "late" && strings.Contains(says, "tell the surgeon") != strings.Contains(row.goal, "tell") {
				t.Errorf("whom to tell: %q", says)
			}
		})
	}
}

// flagged is what a flag says; "" where it is not raised.
func flagged(p *plan.Plan, id string) string {
	for _, f := range p.Flags {
		if f.ID == id {
			return or(f.Says.String(), "(nothing)")
		}
	}
	return ""
}

// A late goal changes nothing that is done: with it and without it the plan gives the same.
func TestGoalsOpenNothing(t *testing.T) {
	goal := "[[goal]]\nmeasure = \"flexion\"\nat_least_deg = 130\nby_week = 2\ntell = \"surgeon\"\n"
	sum := func(more string) string {
		files := bare(rows("loaded-bend", "", "", "{ week = 0, range_deg = [0, 60] }"), more, `"squat"`, `"leg-press-single"`)
		p := who{starts: "2026-02-16", files: files, more: setups, tests: map[string]string{"2026-02-16": straightKnees + "reason = \"x\"\n"}}.plan(t)
		var b strings.Builder
		for _, r := range p.Prescriptions {
			for _, w := range r.Weeks {
				fmt.Fprintln(&b, r.Exercise.ID, r.Side, w.Week, reach(&w), put(&w))
			}
		}
		return b.String()
	}
	if with, without := sum(goal), sum(""); with != without || with == "" {
		t.Errorf("with a goal:\n%s\nwithout:\n%s", with, without)
	}
}
