package program_test

import (
	"strings"
	"testing"
)

// Doses by the clock, sessions, lighter weeks, notes, ends: what contradicts itself is told before a client meets it.
func TestLanguageJudged(t *testing.T) {
	dose := func(lines string) map[string]string {
		return map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10", lines, 1)}
	}
	session := func(lines string) map[string]string { return map[string]string{"phases/one.toml": "+" + lines} }
	own := func(lines string) map[string]string { return map[string]string{"own.toml": "+" + lines} }
	enter := func(lines string) map[string]string { return map[string]string{"phases/one.toml": "+" + lines} }
	const deload = "[[deload]]\nweeks = [4]\n"
	for _, row := range []struct {
		name string
		over map[string]string
		want string
		why  string
	}{
		{"timed", dose("sets = 3\nwork_s = 30\nrest_s = 30"), "", ""},
		{"rounds", dose("rounds = 6\nwork_s = 60\nrest_s = 120\neffort = 7"), "", ""},
		{"minutes by talk", dose("minutes = 20\ntalk = \"sentences\""), "", ""},
		{"rounds without a rest", dose("rounds = 6\nwork_s = 60"), "has rounds without both of their parts", "there would be no easy part"},
		{"rounds and sets", dose("rounds = 6\nwork_s = 60\nrest_s = 60\nsets = 3"), "counts rounds and something else too", ""},
		{"work and repetitions", dose("reps = 10\nwork_s = 60"), "has work_s beside another amount", "which of them?"},
		{"effort of repetitions", dose("reps = 10\neffort = 7"), "says how hard it feels, but counts no time", "repetitions have a reserve"},
		{"effort and talk", dose("minutes = 20\neffort = 4\ntalk = \"words\""), "says how hard in two ways", ""},
		{"a talk that is none", dose("minutes = 20\ntalk = \"songs\""), `talk "songs"`, ""},
		{"reserve of minutes", dose("minutes = 20\nreserve = 2"), "keeps repetitions in reserve, but counts none", ""},
		{"longer than a day", dose("minutes = 100\ntimes_a_day = 5"), "asks for 500 minutes of one day", "more than eight hours"},
		{"as long as a day", dose("minutes = 96\ntimes_a_day = 5"), "", "480 minutes"},
		{"holds and rests count", dose("sets = 20\nreps = 100\nhold_s = 15\nrest_s = 0"), "asks for 500 minutes", "20 × 100 × 15 s"},
		{"nothing", dose("sets = 3"), "does not say how much", ""},
		{"a wave that contradicts", dose("reps = 10\n[[slot.wave]]\nfrom_week = 2\nwork_s = 30"), "has work_s beside another amount", "waves are laid over"},
		{"waves in disorder", dose("reps = 10\n[[slot.wave]]\nfrom_week = 3\nreps = 8\n[[slot.wave]]\nfrom_week = 2\nreps = 6"), "week 2 does not come after week 3", "the last one would win"},
		{"every other day", session("every_days = 2\nfrom_day = 2\n"), "", ""},
		{"a day that never comes", session("every_days = 2\nfrom_day = 3\n"), "begins on day 3 of every 2", ""},
		{"daily every other day", session("daily = true\nevery_days = 2\n"), "is done daily and every 2 days", ""},
		{"a day without its rhythm", session("from_day = 2\n"), "from_day without every_days", ""},
		{"a session twice", session("[[session]]\nid = \"a\"\nslots = [\"s\"]\n"), `session "a" stands twice`, ""},
		{"a lighter week", session(deload + "sets_percent = 60\n"), "", ""},
		{"a lighter week of nothing", session(deload), "does not say what is less", ""},
		{"one week, two ways", session(deload + "sets_percent = 60\n" + deload + "load_percent = 90\n"), "a week stands in two lighter weeks", ""},
		{"heavier is not lighter", session(deload + "load_percent = 110\n"), "load_percent 110 is outside 50 to 100", "it may only take off"},
		{"published, by nobody", session(deload + "sets_percent = 60\nstanding = \"published\"\n"), `standing "published" without a source`, ""},
		{"an end", own("[end]\nsays = \"Done.\"\nneeds = [ { earliest_week = 12 } ]\n"), "", ""},
		{"an end without words", own("[end]\nneeds = [ { earliest_week = 12 } ]\n"), "says is missing", ""},
		{"an end that nobody reaches", own("[end]\nsays = \"Done.\"\nneeds = [ { measure = \"pain\", below = 0 } ]\n"), "pain cannot be below 0: the end is never reached", ""},
		{"a reason to stop", own("[[stop]]\nurgency = \"soon\"\nsays = \"It itches.\"\n"), "", ""},
		{"a reason without haste", own("[[stop]]\nurgency = \"later\"\nsays = \"It itches.\"\n"), `urgency "later"`, ""},
		{"a note that is not there", map[string]string{"own.toml": "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\"]\nnotes = [\"why\"]\n"}, `there is no note "why"; add programs/notes/why.toml`, ""},
		{"a phase twice", map[string]string{"own.toml": "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\", \"one\"]\n"}, `phase "one" stands twice`, "the second is never reached"},
		{"an activity twice", own(strings.Repeat("[[activity]]\nid = \"run\"\nneeds = [ { earliest_week = 3 } ]\n", 2)), `activity "run" stands twice`, ""},
		{"all of two", enter("[[enter]]\nany = [ { all = [ { measure = \"pain\", at_most = 2 }, { earliest_week = 4 } ] }, { earliest_week = 8 } ]\n"), "", ""},
		{"all of a misspelt one", enter("[[enter]]\nall = [ { measure = \"pian\", at_most = 2 } ]\n"), `measure "pian" is not known`, "all is read as deep as any"},
		{"all and a mark", enter("[[enter]]\nmeasure = \"pain\"\nat_most = 2\nall = [ { earliest_week = 4 } ]\n"), "a criterion asks for one thing", ""},
		{"marks that exclude one another", enter("[[enter]]\nmeasure = \"flexion\"\nat_least_deg = 130\n[[enter]]\nmeasure = \"flexion\"\nat_most_deg = 120\n"), "phase one is never reached", ""},
		{"of different people", enter("[[enter]]\nmeasure = \"flexion\"\nat_least_deg = 130\nwhen.sport = [\"contact\"]\n[[enter]]\nmeasure = \"flexion\"\nat_most_deg = 120\n"), "", "one of the two is not asked of everybody"},
		{"above the scale", enter("[[enter]]\nmeasure = \"lefs\"\nat_least = 81\n"), "lefs cannot be at least 81", "it ends at 80"},
		{"at the end of the scale", enter("[[enter]]\nmeasure = \"lefs\"\nat_least = 80\n"), "", ""},
		{"below all swelling", enter("[[enter]]\nmeasure = \"effusion\"\nbelow = \"zero\"\n"), "effusion cannot be below zero", ""},
		{"easier in a circle", map[string]string{"exercises/kick.toml": "+easier = \"kick\"\n"}, "easier goes in a circle: kick → kick", ""},
	} {
		_, faults := made(t, row.over)
		wrong := faults.Wrong()
		switch {
		case row.want == "" && len(wrong) > 0, row.want != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.want)):
			t.Errorf("%s: %v, want %q (%s)", row.name, wrong, row.want, row.why)
		}
	}
}

// A newer word on how hard takes the older one's place; rounds and work go from wave to wave.
func TestWavesOfTheClock(t *testing.T) {
	p, faults := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10",
		"rounds = 4\nwork_s = 30\nrest_s = 60\neffort = 6\n[[slot.wave]]\nfrom_week = 2\nrounds = 6\ntalk = \"words\"\n[[slot.wave]]\nfrom_week = 3\nwork_s = 45\neffort = 8\n", 1)})
	if len(faults.Wrong()) > 0 {
		t.Fatal(faults)
	}
	s := &p.Phases[0].Slots[0]
	if d := s.DoseIn(2); *d.Rounds != 6 || *d.WorkFor != 30 || d.Effort != nil || d.Talk != "words" {
		t.Errorf("week 2: %+v", d)
	}
	if d := s.DoseIn(3); *d.Rounds != 6 || *d.WorkFor != 45 || *d.Effort != 8 || d.Talk != "" {
		t.Errorf("week 3: %+v", d)
	}
}

// What a lighter week leaves of doses that count in other ways: cut down, never none, and only the first count of a dose.
func TestLighterDoses(t *testing.T) {
	p, faults := made(t, map[string]string{"phases/one.toml": "+[[deload]]\nweeks = [2]\nsets_percent = 60\n"})
	if len(faults.Wrong()) > 0 {
		t.Fatal(faults)
	}
	d := p.Phases[0].DeloadIn(2)
	if d == nil || p.Phases[0].DeloadIn(1) != nil {
		t.Fatal("the lighter week is not week 2")
	}
	for _, row := range []struct{ lines, want, why string }{
		{"sets = 3\nreps = 10", "1 × 10", "1.8 sets are 1"}, {"sets = 5\nreps = 10", "3 × 10", "repetitions stay"}, {"minutes = 20", "12 min", "no sets"},
		{"foot_contacts = 40", "24 contacts", "no sets"}, {"reps = 10", "10", "nothing to take off: one set it is"},
	} {
		q, _ := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10", row.lines, 1)})
		if got := written(d.Lighter(q.Phases[0].Slots[0].Dose)); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.lines, got, row.want, row.why)
		}
	}
}
