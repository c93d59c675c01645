package plan_test

import (
	"strings"
	"testing"
)

// Slips that are possible and rarely meant are asked about, each with its file and line.
func TestAskedAboutStagesAndSides(t *testing.T) {
	side := func(leg string) string {
		return "[[limit]]\nkind = \"loaded-bend\"\nside = \"" + leg + "\"\nrange_deg = [0, 60]\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
	}
	for _, row := range []struct {
		name string
		w    who
		asks string
		why  string
	}{
		{"a limit on the sound leg", who{more: side("right")}, "client.toml:15: this limit binds the sound right leg, not the left knee of the event; see whether the side is right", "a slip of the side frees the operated knee"},
		{"a limit on the operated leg", who{more: side("left")}, "", "that is the knee"},
		{"a limit on both", who{more: side("both")}, "", "the knee is among them"},
		{"a limit on a donor leg", who{other: "donor", more: side("right")}, "", "that leg has a reason for it"},
		{"a stage ahead of the tests", who{stages: "rebuild 2026-02-16"}, "client.toml:14: stage rebuild was set on 2026-02-16 ahead of what was earned (settle); not passed: activate.extension", "nothing was tested"},
		{"borne out since", who{stages: "activate 2026-02-02", tests: map[string]string{"2026-02-09": straightKnees}}, "", "the question has answered itself"},
		{"borne out since, and old by now", who{stages: "activate 2026-01-12", tests: map[string]string{"2026-01-19": straightKnees}}, "", "a test is passed in its time"},
		{"tested since, and not passed", who{stages: "activate 2026-02-02", tests: map[string]string{"2026-02-09": strings.Replace(straightKnees, "quads_lag_deg = 0", "quads_lag_deg = 9", 1)}}, "ahead of what was earned (settle)", "a lag of 9 is above the mark"},
		{"the first stage", who{stages: "settle 2026-01-05"}, "", "it asks nothing"},
		{"no stage", who{}, "", "the worksheet says so; nothing was set"},
	} {
		t.Run(row.name, func(t *testing.T) {
			row.w.starts, row.w.weeks = "2026-02-16", 1
			p, faults := row.w.planned(t)
			if p == nil {
				t.Fatal(faults)
			}
			asked := strings.Contains(faults.Error(), "sound right leg") || strings.Contains(faults.Error(), "ahead of")
			if asked != (row.asks != "") || !strings.Contains(faults.Error(), row.asks) {
				t.Errorf("%v; want %q: %s", faults, row.asks, row.why)
			}
		})
	}
}
