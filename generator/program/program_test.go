package program_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

const exercise = "title = \"Kick\"\ndescribe = \"Kick.\"\ntrains = [\"quadriceps\"]\nkinds = []\nside = \"one\"\ncontraction = [\"concentric\"]\nresisted_by = \"body\"\nstanding = \"common practice\"\n"

const phase = "title = \"One\"\naim = \"Try.\"\n[[slot]]\nid = \"s\"\nchoose = [\"kick\"]\nsets = 3\nreps = 10\n[[session]]\nid = \"a\"\nslots = [\"s\"]\n"

// made reads a program of one phase, one slot and one exercise, with what is laid over it.
func made(t *testing.T, over map[string]string) (*program.Program, source.Faults) {
	t.Helper()
	files := fstest.MapFS{}
	for name, text := range map[string]string{"own.toml": "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\"]\n", "phases/one.toml": phase,
		"exercises/kick.toml": exercise, "exercises/kick.md": "## Steps\n\n1. Kick.\n", "sources.toml": "[book]\ntitle = \"A book\"\n"} {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	for name, text := range over {
		if was := files[name]; was != nil && strings.HasPrefix(text, "+") {
			text = string(was.Data) + text[1:]
		}
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return program.Library{Folder: source.Over(files)}.Program("own")
}

// What a program says of goals, ladders, daily sessions, activities and errors is judged before a client meets it.
func TestProgramsJudged(t *testing.T) {
	goal := func(lines string) map[string]string { return map[string]string{"own.toml": "+[[goal]]\n" + lines} }
	kick := func(lines string) map[string]string { return map[string]string{"exercises/kick.toml": "+" + lines} }
	for _, row := range []struct {
		name string
		over map[string]string
		want string
		why  string
	}{
		{"as it is", nil, "", ""},
		{"a goal", goal("measure = \"flexion\"\nat_least_deg = 120\nby_week = 6\ntell = \"surgeon\"\n"), "", ""},
		{"a goal of a test", goal("measure = \"knee-extension.lsi\"\nat_least_percent = 80\nby_week = 12\n"), "", "test.quantity is free"},
		{"a goal that is misspelt", goal("measure = \"flexon\"\nat_least_deg = 120\nby_week = 6\n"), `measure "flexon" is not known`, "nothing would ever be found under it"},
		{"a goal without a mark", goal("measure = \"flexion\"\nby_week = 6\n"), `the goal of "flexion" needs one mark`, ""},
		{"a goal of two marks", goal("measure = \"flexion\"\nat_least_deg = 90\nat_most_deg = 140\nby_week = 6\n"), `the goal of "flexion" needs one mark`, ""},
		{"a goal without a week", goal("measure = \"flexion\"\nat_least_deg = 90\n"), "by_week is missing", ""},
		{"told to nobody we know", goal("measure = \"flexion\"\nat_least_deg = 90\nby_week = 2\ntell = \"mother\"\n"), `tell "mother"`, ""},
		{"a published goal without a source", goal("measure = \"flexion\"\nat_least_deg = 90\nby_week = 2\nstanding = \"published\"\n"), `standing "published" without a source`, ""},
		{"a goal of an unknown source", goal("measure = \"flexion\"\nat_least_deg = 90\nby_week = 2\nsource = \"bok\"\n"), `source "bok" is not in programs/sources.toml`, ""},
		{"a ladder", kick("[[level]]\ndo = \"one\"\n[[level]]\ndo = \"two\"\nindoor = \"inside\"\n"), "", ""},
		{"a rung without words", kick("[[level]]\nindoor = \"inside\"\n"), "do is missing", "a client would read nothing"},
		{"an activity that is not there", kick("activity = \"flying\"\n"), `program own has no activity "flying"`, "it would be closed for ever, or open"},
		{"hamstrings, not how", kick("hamstring_work = \"hard\"\n"), `hamstring_work "hard"`, ""},
		{"a donor's limit", map[string]string{"own.toml": "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\"]\nlimits = [\"l\"]\n", "limits/l.toml": "[[limit]]\nkind = \"kneeling\"\nwhen.leg = \"donor\"\nlifts_week = 6\nsteps = [ { week = 0, allowed = false } ]\n"}, "", ""},
		{"a limit of no leg", map[string]string{"own.toml": "title = \"Own\"\ncounts_from = \"start\"\nphases = [\"one\"]\nlimits = [\"l\"]\n", "limits/l.toml": "[[limit]]\nkind = \"kneeling\"\nwhen.leg = \"doner\"\nlifts_week = 6\nsteps = [ { week = 0, allowed = false } ]\n"}, `leg "doner"`, "misspelt, it would bind nobody"},
		{"an error", map[string]string{"errors.toml": "[[error]]\nmeasure = \"hop-single.lsi\"\nsem_percent = 3.5\nsource = \"book\"\nstanding = \"published\"\n"}, "", ""},
		{"an error of no source", map[string]string{"errors.toml": "[[error]]\nmeasure = \"hop-single.lsi\"\nsem_percent = 3.5\nstanding = \"published\"\n"}, `standing "published" without a source`, ""},
		{"an error without its number", map[string]string{"errors.toml": "[[error]]\nmeasure = \"hop-single.lsi\"\nstanding = \"tool default\"\n"}, "sem", ""},
	} {
		_, faults := made(t, row.over)
		wrong := faults.Wrong()
		switch {
		case row.want == "" && len(wrong) > 0, row.want != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.want)):
			t.Errorf("%s: %v, want %q (%s)", row.name, wrong, row.want, row.why)
		}
	}
}

// The dose of an exercise: the slot's, or its own where the slot's is of another kind.
func TestDoseFor(t *testing.T) {
	for _, row := range []struct{ name, slot, exercise, want, why string }{
		{"repetitions", "sets = 3\nreps = 10", exercise, "3 × 10", "the slot's fits"},
		{"held, in a slot of repetitions", "sets = 3\nreps = 10", strings.Replace(exercise, "concentric", "isometric", 1) + "[dose]\nsets = 5\nreps = 1\nhold_s = 30\n", "5 × 1 held 30", "its own"},
		{"held, without a dose of its own", "sets = 3\nreps = 10", strings.Replace(exercise, "concentric", "isometric", 1), "3 × 10", "there is nothing better"},
		{"held, in a slot that holds", "sets = 3\nreps = 2\nhold_s = 20", strings.Replace(exercise, "concentric", "isometric", 1) + "[dose]\nreps = 1\nhold_s = 30\n", "3 × 2 held 20", "the slot's fits"},
		{"moved, in a slot that holds", "sets = 3\nreps = 2\nhold_s = 20", exercise + "[dose]\nsets = 2\nreps = 8\n", "2 × 8", "a moved exercise is not held"},
		{"hops, in a slot of repetitions", "sets = 3\nreps = 10", strings.Replace(exercise, "\"body\"", "\"foot-contacts\"", 1) + "[dose]\nsets = 2\nfoot_contacts = 20\n", "2 × 20 contacts", "contacts are counted, not repetitions"},
		{"timed, in a slot of minutes", "minutes = 20", strings.Replace(exercise, "\"body\"", "\"time\"", 1) + "[dose]\nminutes = 5\n", "20 min", "the slot's fits"},
		{"repetitions, in a slot of minutes", "minutes = 20", exercise + "[dose]\nreps = 1\n", "1", "a ladder in a slot of minutes is done once"},
	} {
		p, faults := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10", row.slot, 1), "exercises/kick.toml": row.exercise})
		if len(faults.Wrong()) > 0 {
			t.Fatalf("%s: %v", row.name, faults)
		}
		if got := written(p.Phases[0].Slots[0].DoseFor(p.Exercises["kick"], 1)); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
	}
}

// written is a dose in short.
func written(d program.Dose) string {
	var parts []string
	if d.Sets != nil {
		parts = append(parts, fmt.Sprint(*d.Sets), "×")
	}
	if d.Reps != nil {
		parts = append(parts, fmt.Sprint(*d.Reps))
	}
	if d.Contacts != nil {
		parts = append(parts, fmt.Sprint(*d.Contacts), "contacts")
	}
	if d.HoldFor != nil {
		parts = append(parts, "held", fmt.Sprintf("%g", float64(*d.HoldFor)))
	}
	if d.Minutes != nil {
		parts = append(parts, fmt.Sprint(*d.Minutes), "min")
	}
	return strings.Join(parts, " ")
}

// Rule 22: a wave changes what it names, from its week of the phase on.
func TestDoseIn(t *testing.T) {
	waves := "[[slot.wave]]\nfrom_week = 3\nreps = 8\nreserve = 1\n[[slot.wave]]\nfrom_week = 5\nsets = 4\n"
	p, faults := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10\n", "sets = 3\nreps = 10\nreserve = 3\n"+waves, 1)})
	if len(faults.Wrong()) > 0 {
		t.Fatal(faults)
	}
	for _, row := range []struct {
		week    int
		want    string
		reserve int
		why     string
	}{
		{1, "3 × 10", 3, "no wave yet"}, {2, "3 × 10", 3, "the last week before the first"}, {3, "3 × 8", 1, "repetitions and reserve"},
		{4, "3 × 8", 1, "until the next"}, {5, "4 × 8", 1, "sets alone: the rest stays as the wave before left it"}, {50, "4 × 8", 1, "the last one holds on"},
	} {
		d := p.Phases[0].Slots[0].DoseIn(row.week)
		if got := written(d); got != row.want || *d.Reserve != row.reserve {
			t.Errorf("week %d: %s, reserve %d; want %s, %d (%s)", row.week, got, *d.Reserve, row.want, row.reserve, row.why)
		}
	}
}

// An exercise names kinds; of muscles at rest and of hops alike.
func TestExerciseIs(t *testing.T) {
	e := program.Exercise{Kinds: []unit.Kind{unit.Impact}, Contraction: []program.Contraction{program.Isometric}}
	if !e.Names(unit.Impact) || e.Names(unit.Running) || !e.Isometric() {
		t.Error("an exercise does not know what it is")
	}
	if e.Contraction = append(e.Contraction, "concentric"); e.Isometric() {
		t.Error("an exercise that also moves is not held still")
	}
}
