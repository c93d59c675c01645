package plan_test

import (
	"strings"
	"testing"
)

// How long a session takes: worked by hand, five minutes of warming up and one minute to begin each box, up to the next five.
func TestMinutes(t *testing.T) {
	for _, row := range []struct {
		name, choose, dose string
		want               int // 0: no length
		why                string
	}{
		{"a slow set", `"timed"`, "sets = 3\nreps = 10\nreserve = 2\nrest_s = 120", 25, "3 × (10 × 6 s + 120 s) + 60 s = 600 s a leg, 1500 s with the warm-up: 25 min on the dot"},
		{"a second more", `"timed"`, "sets = 3\nreps = 10\nreserve = 2\nrest_s = 121", 30, "1506 s are more than 25 min"},
		{"no speed", `"quick"`, "sets = 3\nreps = 15\nreserve = 2", 15, "3 × 15 × 4 s + 60 s = 240 s a leg, 780 s: 13 min"},
		{"minutes", `"rolling"`, "minutes = 20", 30, "20 min + 1 min for both legs + 5 = 26"},
		{"held", `"still"`, "sets = 3\nreps = 5\nhold_s = 10\nrest_s = 30", 15, "3 × (50 s + 30 s) + 60 s = 300 s a leg, 900 s: 15 min"},
		{"foot contacts", `"hops"`, "sets = 2\nfoot_contacts = 30\nrest_s = 60", 20, "2 × (30 × 4 s + 60 s) + 60 s = 420 s a leg, 1140 s: 19 min"},
		{"all through the day", `"still"`, "reps = 10\nhold_s = 5\ntimes_a_day = 5", 0, "done in parts: it has no length"},
		{"nothing to do", `"leg-press-single"`, "sets = 3\nreps = 10\nreserve = 2", 0, "the place has no press"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{starts: "2026-06-01", weeks: 1, files: bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), "", row.choose)}
			if row.name == "nothing to do" {
				w.place = "hotel"
			}
			phase := "programs/phases/settle.toml"
			w.files[phase] = strings.Replace(w.files[phase], "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5", row.dose, 1)
			exercise := func(id, contraction, by, more string) {
				side := "one"
				if id == "rolling" {
					side = "both"
				}
				w.files["programs/exercises/"+id+".toml"] = "title = \"" + id + "\"\ndescribe = \"Do.\"\ntrains = [\"quadriceps\"]\nkinds = []\nside = \"" + side + "\"\ncontraction = [\"" + contraction +
					"\"]\nresisted_by = \"" + by + "\"\nstanding = \"common practice\"\n" + more
			}
			exercise("timed", "concentric", "body", "lift_s = 2\nhold_s = 1\nlower_s = 3\n")
			exercise("quick", "concentric", "body", "")
			exercise("still", "isometric", "body", "")
			exercise("rolling", "concentric", "time", "")
			exercise("hops", "stretch-shortening", "foot-contacts", "")
			got, there := w.plan(t).Minutes["a"]
			if got != row.want || there != (row.want != 0) {
				t.Errorf("%d min, want %d (%s)", got, row.want, row.why)
			}
		})
	}
}
