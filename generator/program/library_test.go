package program_test

import (
	"fmt"
	"io/fs"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// The library is every file of programs/exercises, not only those that a program names today: a clinic may put any of them in
// its own program. Each check is a function that lists what is wrong, so that TestLibraryChecksCanFail can spoil an exercise
// and see it found.

// shelf is the folder of the shipped programs.
var shelf = os.DirFS("../../programs")

// library reads all exercises through one program whose only slot chooses every one of them.
func library(t *testing.T) map[string]*program.Exercise {
	t.Helper()
	names, _ := fs.Glob(shelf, "exercises/*.toml")
	var ids []string
	for _, name := range names {
		ids = append(ids, fmt.Sprintf("%q", strings.TrimSuffix(strings.TrimPrefix(name, "exercises/"), ".toml")))
	}
	whole := "title = \"Whole\"\ncounts_from = \"start\"\nphases = [\"whole\"]\n"
	for _, id := range []string{"running", "jumping", "turning"} {
		whole += fmt.Sprintf("[[activity]]\nid = %q\nneeds = [ { earliest_week = 1, standing = \"tool default\" } ]\n", id)
	}
	phase := "title = \"All\"\naim = \"Try.\"\n[[slot]]\nid = \"s\"\nchoose = [" + strings.Join(ids, ", ") + "]\nsets = 3\nreps = 10\n[[session]]\nid = \"a\"\nslots = [\"s\"]\n"
	over := fstest.MapFS{"whole.toml": {Data: []byte(whole)}, "phases/whole.toml": {Data: []byte(phase)}}
	p, faults := program.Library{Folder: source.Over(over, shelf)}.Program("whole")
	for _, f := range faults {
		if f.File == "programs/phases/whole.toml" {
			continue // one slot for all of them: its dose fits few
		}
		t.Errorf("%s", f)
	}
	if p == nil || len(p.Exercises) != len(ids) {
		t.Fatalf("%d files, and not as many exercises", len(ids))
	}
	return p.Exercises
}

func TestLibrary(t *testing.T) {
	all := library(t)
	if len(all) < 60 {
		t.Errorf("%d exercises, at least 60 are promised", len(all))
	}
	titles := map[string]string{}
	for _, id := range slices.Sorted(maps.Keys(all)) {
		e := all[id]
		for _, wrong := range slices.Concat(ofID(id), ofWords(e), ofKinds(e), ofNeighbours(e, all)) {
			t.Errorf("programs/exercises/%s: %s", id, wrong)
		}
		if other := titles[e.Title]; other != "" {
			t.Errorf("programs/exercises/%s: the title %q is that of %s too", id, e.Title, other)
		}
		titles[e.Title] = id
	}
	pages, _ := fs.Glob(shelf, "exercises/*.md")
	for _, name := range pages {
		if id := strings.TrimSuffix(strings.TrimPrefix(name, "exercises/"), ".md"); all[id] == nil {
			t.Errorf("programs/%s has no %s.toml beside it", name, id)
		}
	}
}

var kebab = regexp.MustCompile(`^[a-z]+(-[a-z0-9]+)*$`)

func ofID(id string) []string {
	if !kebab.MatchString(id) || len(id) > 40 {
		return []string{"the id is not in small letters, digits and hyphens, or is longer than 40"}
	}
	return nil
}

// ofWords holds what a client reads: all seven headings, grade 6 or below by both formulas over the whole page, no sentence
// above 15 words (handout-standards.md 1.3), nothing that promises and nothing to compute.
func ofWords(e *program.Exercise) (wrong []string) {
	w := e.Words
	for head, n := range map[string][2]int{"Set up": {len(w.Setup), 1}, "Steps": {len(w.Steps), 3}, "Cues": {len(w.Cues), 2}, "Watch for": {len(w.Faults), 2},
		"What is normal": {len(w.Normal), 1}, "Ease off if": {len(w.EaseOff), 1}, "Stop if": {len(w.Stop), 1}} {
		if n[0] < n[1] {
			wrong = append(wrong, fmt.Sprintf("too little under %q", head))
		}
	}
	return append(wrong, hard(pageOf(e)...)...)
}

// pageOf is all that a client reads of an exercise.
func pageOf(e *program.Exercise) []string {
	w := e.Words
	page := slices.Concat([]string{e.Title, e.Describe, w.Setup, w.Normal, w.EaseOff, w.Stop}, w.Steps, w.Faults)
	for _, c := range w.Cues {
		page = append(page, c.Text)
	}
	return page
}

var (
	stops    = regexp.MustCompile(`[.?!](\s+|$)|\n`)
	promises = regexp.MustCompile(`(?i)%|\b(safe|safely|cleared|harmless|guaranteed?|percent)\b`)
)

// hard lists what is too hard in texts for a client, or should not be said to one.
func hard(texts ...string) (wrong []string) {
	c := words.Count(texts...)
	if c.Words < 100 {
		wrong = append(wrong, fmt.Sprintf("%d words, under 100 no grade can be told", c.Words))
	}
	if g := c.Grade(); g.ColemanLiau > 6 || g.ARI > 6 {
		wrong = append(wrong, fmt.Sprintf("grade %.1f by Coleman and Liau, %.1f by ARI, above 6", g.ColemanLiau, g.ARI))
	}
	for _, text := range texts {
		for _, s := range stops.Split(text, -1) {
			if n := len(strings.Fields(s)); n > 15 {
				wrong = append(wrong, fmt.Sprintf("a sentence of %d words: %s", n, s))
			}
		}
		if said := promises.FindString(text); said != "" {
			wrong = append(wrong, fmt.Sprintf("%q is not for a client", said))
		}
	}
	return wrong
}

var weighed = []unit.DeviceKind{"angled-leg-press", "horizontal-leg-press", "knee-extension-stack", "leg-curl-stack", "leg-curl-seated-stack", "hack-squat", "barbell", "dumbbell", "cable", "ankle-weight", "band", "sled", "stack"}

// ofKinds holds that no kind of limit which speaks of an exercise is forgotten: a forgotten one binds nothing.
func ofKinds(e *program.Exercise) (wrong []string) {
	trains := func(m ...program.Muscle) bool {
		return slices.ContainsFunc(m, func(x program.Muscle) bool { return slices.Contains(e.Trains, x) })
	}
	does := func(c program.Contraction) bool { return slices.Contains(e.Contraction, c) }
	onBike := slices.Contains(e.Needs, "bike")
	bends := e.Range != nil
	for _, row := range []struct {
		kind  unit.Kind
		asked bool
		why   string
	}{
		{unit.WeightBearing, e.Chain == program.ClosedChain && !onBike, "the foot or the leg bears"},
		{unit.AddedWeight, slices.ContainsFunc(e.Needs, func(d unit.DeviceKind) bool { return slices.Contains(weighed, d) }) || e.ResistedBy == program.External, "something pulls or weighs on the leg"},
		{unit.HamstringWork, trains("hamstrings"), "it works the hamstrings"},
		{unit.StraighteningUnderLoad, e.Chain == program.OpenChain && trains("quadriceps") && bends && e.Range.MostBent > 0, "the free shin is straightened"},
		{unit.LoadedBend, e.Chain == program.ClosedChain && bends && !onBike && !does(program.Passive) && trains("quadriceps", "gluteals", "balance"), "the knee bends and bears"},
		{unit.PassiveBend, does(program.Passive) && bends, "something else bends the knee"},
		{unit.ActiveBend, e.Chain == program.OpenChain && bends, "the knee bends by its own muscles, or is held bent"},
		{unit.Impact, e.ResistedBy == program.FootContacts || does(program.Stretch), "the feet leave the floor"},
		{unit.Running, e.Activity == "running", "it is running"},
		{unit.Twisting, e.Activity == "turning", "it turns"},
		{unit.Kneeling, strings.Contains(strings.ToLower(e.Title+e.Words.Setup+strings.Join(e.Words.Steps, " ")), "kneel") || strings.Contains(e.Title, "on the knees"), "its words kneel"},
	} {
		if row.asked && !e.Names(row.kind) {
			wrong = append(wrong, fmt.Sprintf("%s is not among its kinds: %s", row.kind, row.why))
		}
	}
	if !bends && slices.ContainsFunc(e.Kinds, unit.Kind.Bends) {
		wrong = append(wrong, "a kind that limits bend, and no range")
	}
	return wrong
}

// ofNeighbours holds the order of easier and harder. Whoever is named answers with a neighbour on that side; a ladder does not, for
// it is climbed by its own rule. Nothing is easier than itself by any way round. And nothing that neither runs, jumps nor turns
// names what needs an activity opened: a program without that activity could use neither.
func ofNeighbours(e *program.Exercise, all map[string]*program.Exercise) (wrong []string) {
	if up := all[e.Harder]; up != nil && up.Easier == "" {
		wrong = append(wrong, fmt.Sprintf("%s is harder, and names nothing easier", up.ID))
	}
	if down := all[e.Easier]; down != nil && down.Harder == "" && len(down.Levels) == 0 && e.Activity == "" {
		wrong = append(wrong, fmt.Sprintf("%s is easier, and names nothing harder", down.ID))
	}
	if slices.Contains(above(e, all), e) {
		wrong = append(wrong, "it is harder than itself, by way of its neighbours")
	}
	if leaps := func(x *program.Exercise) bool {
		return x.Names(unit.Running) || x.Names(unit.Impact) || x.Names(unit.Twisting)
	}; !leaps(e) {
		for _, next := range []*program.Exercise{all[e.Easier], all[e.Harder]} {
			if next != nil && next.Activity != "" {
				wrong = append(wrong, fmt.Sprintf("its neighbour %s waits for the activity %s", next.ID, next.Activity))
			}
		}
	}
	return wrong
}

// above are all exercises harder than e, by either key.
func above(e *program.Exercise, all map[string]*program.Exercise) (harder []*program.Exercise) {
	next := []*program.Exercise{e}
	for len(next) > 0 {
		x := next[0]
		next = next[1:]
		for _, y := range all {
			if (x.Harder == y.ID || y.Easier == x.ID) && !slices.Contains(harder, y) {
				harder, next = append(harder, y), append(next, y)
			}
		}
	}
	return harder
}

// Every check finds what it is for, in an exercise that was right before it was spoiled.
func TestLibraryChecksCanFail(t *testing.T) {
	all := library(t)
	for _, row := range []struct {
		id    string
		spoil func(*program.Exercise)
		want  string
	}{
		{"squat", func(e *program.Exercise) {}, ""},
		{"squat", func(e *program.Exercise) { e.Words.Normal = "" }, `too little under "What is normal"`},
		{"squat", func(e *program.Exercise) { e.Words.Cues = nil; e.Words.Faults = nil; e.Words.Setup = "Stand." }, "under 100 no grade"},
		{"squat", func(e *program.Exercise) {
			e.Words.Setup = strings.Repeat("Extraordinary circumstances notwithstanding. ", 9)
		}, "above 6"},
		{"squat", func(e *program.Exercise) { e.Words.Stop = strings.Repeat("so ", 16) }, "a sentence of 16 words"},
		{"squat", func(e *program.Exercise) { e.Words.Normal = "This is safe." }, `"safe" is not for a client`},
		{"squat", func(e *program.Exercise) { e.Kinds = []unit.Kind{unit.WeightBearing} }, "loaded-bend is not among"},
		{"squat-weight", func(e *program.Exercise) { e.Kinds = []unit.Kind{unit.WeightBearing, unit.LoadedBend} }, "added-weight is not among"},
		{"short-kick", func(e *program.Exercise) { e.Kinds = []unit.Kind{unit.ActiveBend} }, "straightening-under-load is not among"},
		{"nordic-curl", func(e *program.Exercise) { e.Kinds = []unit.Kind{unit.ActiveBend, unit.HamstringWork} }, "kneeling is not among"},
		{"jog-in-place", func(e *program.Exercise) { e.Kinds = []unit.Kind{unit.WeightBearing, unit.LoadedBend} }, "impact is not among"},
		{"squat", func(e *program.Exercise) { e.Harder = "mini-squat" }, "harder than itself"},
		{"squat", func(e *program.Exercise) { e.Harder = "jog-in-place" }, "waits for the activity running"},
		{"squat", func(e *program.Exercise) { e.Harder = "ankle-pump" }, "names nothing easier"},
		{"squat", func(e *program.Exercise) { e.Easier = "nordic-curl" }, "names nothing harder"},
	} {
		spoilt := *all[row.id]
		row.spoil(&spoilt)
		with := maps.Clone(all)
		with[row.id] = &spoilt
		found := strings.Join(slices.Concat(ofWords(&spoilt), ofKinds(&spoilt), ofNeighbours(&spoilt, with)), "; ")
		if row.want == "" && found != "" || !strings.Contains(found, row.want) {
			t.Errorf("%s: found %q, want %q", row.id, found, row.want)
		}
	}
	if len(ofID("Big_Squat")) == 0 {
		t.Error("an id in capitals passes")
	}
}
