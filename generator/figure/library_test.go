package figure

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// exercise is what a test needs of an exercise of the library and of its pose.
type exercise struct {
	id       string
	Title    string      `key:"title"`
	Describe string      `key:"describe"`
	Range    *unit.Reach `key:"range"`
	Figure   Pose        `key:"figure"`
}

// exercises reads every exercise of the library with its pose, sorted.
func exercises(t testing.TB) (all []exercise) {
	t.Helper()
	files, err := filepath.Glob("../../programs/exercises/*.toml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no exercises: %v", err)
	}
	for _, name := range files {
		all = append(all, read(t, name))
	}
	return all
}

// read reads what the figure needs from an exercise's own file; the other keys are judged where they are read.
func read(t testing.TB, name string) exercise {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	e := exercise{id: strings.TrimSuffix(filepath.Base(name), ".toml")}
	for _, f := range source.TOML(name, data, &e) {
		if strings.HasPrefix(f.Key, "figure") {
			t.Errorf("%v", f)
		}
	}
	return e
}

// limits are ranges that a limit may leave of a natural one: all of it, and four narrower ones.
func limits(natural *unit.Reach) []unit.Reach {
	if natural == nil {
		return nil
	}
	lo, hi := natural.Straightest, natural.MostBent
	all := []unit.Reach{*natural}
	if lo == hi {
		return all
	}
	at := func(a, b unit.Degrees) unit.Reach {
		return unit.Reach{Straightest: lo + (hi-lo)*a/8, MostBent: lo + (hi-lo)*b/8}
	}
	for _, r := range []unit.Reach{at(0, 4), at(4, 8), at(2, 6), at(2, 8)} {
		r.Straightest, r.MostBent = unit.Degrees(int(r.Straightest)), unit.Degrees(int(r.MostBent))
		all = append(all, r)
	}
	return all
}

// Every exercise of the library has a pose.
func TestEveryExerciseIsDrawn(t *testing.T) {
	for _, e := range exercises(t) {
		if !e.Figure.Drawn() {
			t.Errorf("%s has no pose", e.id)
		}
	}
}
