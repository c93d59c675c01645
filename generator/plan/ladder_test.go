package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

const stairs = "title = \"Stairs\"\ndescribe = \"Up and down.\"\ntrains = [\"calf\"]\nkinds = [\"running\"]\nside = \"both\"\ncontraction = [\"stretch-shortening\"]\n" +
	"resisted_by = \"distance\"\nactivity = \"running\"\nstanding = \"common practice\"\n[dose]\nreps = 1\n[[level]]\ndo = \"one\"\n[[level]]\ndo = \"two\"\nindoor = \"two, indoors\"\n[[level]]\ndo = \"three\"\n"

func onLevel(id, from, level string) string { return opened(id, from) + "level = " + level + "\n" }

// Rule 17: of an activity with a ladder the therapist records the rung to begin on.
func TestRule17b_TheRungOfALadder(t *testing.T) {
	activities := "[[activity]]\nid = \"running\"\nkinds = [\"running\"]\n[[activity.needs]]\nearliest_week = 12\n[[activity]]\nid = \"dancing\"\n[[activity.needs]]\nearliest_week = 12\n"
	for _, row := range []struct {
		name, more string
		want       int // 0: not prescribed
		says, why  string
	}{
		{"not opened", "", 0, "", "no rung without the therapist"},
		{"opened", opened("running", "2026-04-06"), 1, "", "the first, where none is named"},
		{"on the second", onLevel("running", "2026-04-06", "2"), 2, "", "as recorded"},
		{"on the last", onLevel("running", "2026-04-06", "3"), 3, "", ""},
		{"moved on", onLevel("running", "2026-03-30", "1") + onLevel("running", "2026-04-06", "3"), 3, "", "the newest counts"},
		{"moved on, typed above", onLevel("running", "2026-04-06", "3") + onLevel("running", "2026-03-30", "1"), 3, "", "by its day, not by its place in the file"},
		{"begun anew", onLevel("running", "2026-03-30", "3") + opened("running", "2026-04-06"), 1, "", "opened again without a rung: the first"},
		{"tomorrow", onLevel("running", "2026-03-30", "2") + onLevel("running", "2026-04-07", "3"), 2, "", "tomorrow's is not yet"},
		{"of another operation", onLevel("running", "2025-03-03", "3") + opened("running", "2026-04-06"), 1, "", "climbed before this operation"},
		{"beyond the ladder", onLevel("running", "2026-04-06", "4"), 0, "the ladder of running has 3 levels, not 4", "a rung that is not there is a mistake, never cut down in silence"},
		{"no ladder", opened("running", "2026-04-06") + onLevel("dancing", "2026-04-06", "2"), 1, "clients/tern-04/client.toml:21: no exercise of program acl-reconstruction has a ladder for dancing", "a level that has no effect is asked about"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-04-06", weeks: 1, more: row.more, files: bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), activities, `"stairs"`),
				tests: map[string]string{"2026-04-06": straightKnees}}
			w.files["programs/exercises/stairs.toml"] = stairs
			p, faults := w.planned(t)
			if !strings.Contains(faults.Error(), row.says) {
				t.Errorf("%v; want %q (%s)", faults, row.says, row.why)
			}
			got := 0
			if p != nil && dose(p, "stairs", unit.Both, 1) != nil {
				got = p.Prescriptions[0].Level
			}
			if got != row.want {
				t.Errorf("level %d, want %d (%s); %v", got, row.want, row.why, faults)
			}
		})
	}
}
