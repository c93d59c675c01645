package plan_test

import "testing"

// A goal that a limit forbids waits for the limit: it is not late, and no flag is raised. Once the limit has lifted the knee has
// two weeks.
func TestGoalsWaitForALimit(t *testing.T) {
	bend := "measure = \"flexion\"\nat_least_deg = 90\nby_week = 2\n"
	straight := "measure = \"extension\"\nat_most_deg = 0\nby_week = 2\n"
	at60 := limit("passive-bend", "range_deg = [0, 60]", "2026-01-05", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05")
	for _, row := range []struct {
		name, goal, limit, test, starts string
		want, until, by                 string
		why                             string
	}{
		{"no limit", bend, "", "left.flexion_deg = 58\n", "2026-02-02", "late", "", "2026-01-19", "week 4 of a goal for week 2"},
		{"limit of 60", bend, at60, "left.flexion_deg = 58\n", "2026-02-02", "waits", "2026-02-16", "2026-03-02", "60 until week 6"},
		{"limit, not tested", bend, at60, "effusion = \"trace\"\n", "2026-02-02", "waits", "2026-02-16", "2026-03-02", "nothing to test for yet"},
		{"reached all the same", bend, at60, "left.flexion_deg = 92\n", "2026-02-02", "reached", "2026-02-16", "2026-03-02", "measured is measured"},
		{"the day it lifts", bend, at60, "left.flexion_deg = 58\n", "2026-02-16", "not yet", "", "2026-03-02", "two weeks from there"},
		{"two weeks later", bend, at60, "left.flexion_deg = 58\n", "2026-03-02", "late", "", "2026-03-02", "now it is"},
		{"until further notice", bend, limit("passive-bend", "range_deg = [0, 60]", "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05"), "left.flexion_deg = 58\n", "2026-02-02", "waits", "", "2026-01-19", "no day is known"},
		{"closed", bend, limit("passive-bend", "allowed = false", "2026-01-05", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "left.flexion_deg = 58\n", "2026-02-02", "waits", "2026-02-16", "2026-03-02", ""},
		{"limit of 90", bend, limit("passive-bend", "range_deg = [0, 90]", "2026-01-05", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "left.flexion_deg = 58\n", "2026-02-02", "late", "", "2026-01-19", "90 may be reached"},
		{"of the load only", bend, limit("loaded-bend", "range_deg = [0, 60]", "2026-01-05", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "left.flexion_deg = 58\n", "2026-02-02", "late", "", "2026-01-19", "bending by hand is free"},
		{"of the other knee", bend, "[[limit]]\nkind = \"passive-bend\"\nside = \"right\"\nrange_deg = [0, 60]\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n", "left.flexion_deg = 58\n", "2026-02-02", "late", "", "2026-01-19", "it binds the other knee"},
		{"straight end", straight, limit("passive-bend", "range_deg = [10, 60]", "2026-01-05", "2026-02-16", "surgeon", "Dr Auk", "2026-01-05"), "left.lacks_extension_deg = 10\n", "2026-02-02", "waits", "2026-02-16", "2026-03-02", "it may not straighten"},
		{"straight end is free", straight, at60, "left.lacks_extension_deg = 10\n", "2026-02-02", "late", "", "2026-01-19", "the limit is of the bent end"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: row.starts, weeks: 1, more: row.limit, tests: map[string]string{row.starts: row.test},
				files: bare(free, "[[goal]]\n"+row.goal+"tell = \"surgeon\"\nstanding = \"tool default\"\n", `"quad-set"`)}
			p := w.plan(t)
			g := p.Goals[0]
			if g.State != row.want || row.want == "waits" && g.Until.String() != row.until || g.By.String() != row.by {
				t.Errorf("%s until %s, by %s; want %s, %s, %s: %s", g.State, g.Until, g.By, row.want, row.until, row.by, row.why)
			}
			if late := flagged(p, "goal-late") != ""; late != (row.want == "late") {
				t.Errorf("%s, and the flag is raised: %v", g.State, late)
			}
		})
	}
}
