package plan_test

import (
	"strings"
	"testing"
)

// How long a session takes: worked by hand, five minutes of warming up and one minute to begin each exercise, the rest once for both
// legs, as they take turns; up to the next five.
func TestMinutes(t *testing.T) {
	for _, row := range []struct {
		name, choose, dose string
		want               int // 0: no length
		why                string
	}{
		{"a slow set", `"timed"`, "sets = 3\nreps = 10\nreserve = 2\nrest_s = 160", 20, "180 s of work a leg, 480 s of rest once, 60 s to begin, 300 s to warm up: 1200 s, 20 min on the dot"},
		{"a second more", `"timed"`, "sets = 3\nreps = 10\nreserve = 2\nrest_s = 161", 25, "1203 s are more than 20 min"},
		{"no speed", `"quick"`, "sets = 3\nreps = 15\nreserve = 2", 15, "180 s a leg, 60 s, 300 s: 720 s are 12 min"},
		{"minutes", `"rolling"`, "minutes = 20", 30, "20 min + 1 min for both legs + 5 = 26"},
		{"held", `"still"`, "sets = 3\nreps = 5\nhold_s = 10\nrest_s = 30", 15, "150 s a leg, 90 s of rest once, 60 s, 300 s: 750 s"},
		{"foot contacts", `"hops"`, "sets = 2\nfoot_contacts = 30\nrest_s = 60", 20, "240 s a leg, 120 s of rest once, 60 s, 300 s: 960 s are 16 min"},
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

// A session's length is that of its longest week: a week is spent at one place, and what is done at two is not added up.
func TestMinutesOfOnePlace(t *testing.T) {
	for _, row := range []struct {
		name, more string
		want       int
		why        string
	}{
		{"at home all the time", "", 20, "a leg's 3 × 10 takes 180 s: 360 s of timed work, 480 s of rest once, 60 s, 300 s: 1200 s"},
		{"week 2 at the hotel", away("2026-06-08", "2026-06-14", "hotel"), 20, "the hotel's 3 × 10 without a press is as long; both in one sum would be 35 min"},
	} {
		w := who{starts: "2026-06-01", weeks: 3, more: row.more, files: bare(rows("kneeling", "", "", "{ week = 0, allowed = true }"), "", `"pressed", "timed"`)}
		phase := "programs/phases/settle.toml"
		w.files[phase] = strings.Replace(w.files[phase], "sets = 3\nreps = 10\nreserve = 2\nweekly_percent = 2.5", "sets = 3\nreps = 10\nreserve = 2\nrest_s = 160", 1)
		for id, needs := range map[string]string{"pressed": "needs = [\"angled-leg-press\"]\n", "timed": ""} {
			w.files["programs/exercises/"+id+".toml"] = "title = \"" + id + "\"\ndescribe = \"Do.\"\ntrains = [\"quadriceps\"]\nkinds = []\nside = \"one\"\ncontraction = [\"concentric\"]\nresisted_by = \"body\"\nstanding = \"common practice\"\nlift_s = 2\nhold_s = 1\nlower_s = 3\n" + needs
		}
		p := w.plan(t)
		if got := p.Minutes["a"]; got != row.want {
			t.Errorf("%s: %d min, want %d (%s)", row.name, got, row.want, row.why)
		}
		done := map[string]bool{}
		for _, r := range p.Prescriptions {
			done[r.Exercise.ID] = true
		}
		if done["timed"] != (row.more != "") || !done["pressed"] {
			t.Errorf("%s: the row does not show what it says: %v", row.name, done)
		}
	}
}
