package generator_test

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/templates"
)

// Published programmes, cell by cell, against what ships: for each week of a table a made-up client is built through the whole
// generator, and what the printed page says is held against the cell.

// fewestProgramCells is how many cells must have been checked; more is better.
const fewestProgramCells = 240

// spanText is a number, or two with "to" between.
var spanText = regexp.MustCompile(`^[0-9.]+( to [0-9.]+)?$`)

var sourceKey = regexp.MustCompile(`^[a-z0-9-]+`)

// TestPublishedPrograms holds every cell against the printed page of every week that it speaks of.
func TestPublishedPrograms(t *testing.T) {
	printer, err := page.NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	b := &weekPrinter{printer, map[string]*program.Program{}, map[string]printedWeek{}}
	by, weeks := map[string]int{}, 0
	for _, c := range doseCells(t) {
		work := sourceKey.FindString(c.source)
		by[work+", "+c.mark]++
		for _, week := range c.weeks {
			weeks++
			if got := c.printed(t, b, week); !c.holds(t, got) {
				t.Errorf("%s: %s, week %d: the page says %q, the source %q (%s)", c.file, c.id, week, got, c.wanted, c.source)
			}
		}
	}
	n := 0
	for _, key := range slices.Sorted(maps.Keys(by)) {
		t.Logf("%3d cells of %s", by[key], key)
		n += by[key]
	}
	t.Logf("%d cells in %d weeks, %d pages", n, weeks, len(b.done))
	if n < fewestProgramCells {
		t.Errorf("%d cells were checked; want at least %d", n, fewestProgramCells)
	}
}

// holds reports whether what is printed is the cell's figure, or lies within its span.
func (c doseCell) holds(t *testing.T, got string) bool {
	t.Helper()
	if got == c.wanted {
		return true
	}
	if _, _, span := strings.Cut(c.wanted, " to "); !span || c.what == "range" {
		return false
	}
	if !spanText.MatchString(got) {
		return false
	}
	from, to := spanOf(t, got, "")
	low, high := spanOf(t, c.wanted, "")
	return low <= from && to <= high
}

// printed is what the page of a week says of a cell.
func (c doseCell) printed(t *testing.T, b *weekPrinter, week int) string {
	t.Helper()
	if measure, gate := strings.CutPrefix(c.what, "enter "); gate {
		return c.gate(t, b, measure)
	}
	w := b.of(t, c.program, c.phase, week)
	switch c.what {
	case "exercises":
		return strconv.Itoa(len(heads.FindAllString(w.text, -1)))
	case "sessions_a_week":
		ph, _ := w.plan.Program.Phase(c.phase)
		return strconv.Itoa(ph.SessionsAWeek)
	case "every_days":
		return w.rhythm(c.exercise)
	case "share", "hold_percent":
		return w.share(c)
	}
	box := w.box(c.exercise)
	if c.what == "there" {
		return map[bool]string{true: "yes", false: "no"}[box != ""]
	}
	return readBox(box, c.what)
}

func number(n *int) string {
	if n == nil {
		return "not said"
	}
	return strconv.Itoa(*n)
}

// gate is a mark of a phase, or of the program's end, as the plan of a client in the phase before it weighs it.
func (c doseCell) gate(t *testing.T, b *weekPrinter, measure string) string {
	t.Helper()
	p := shippedProgram(t, c.program)
	_, i := p.Phase(c.phase)
	if c.phase == "end" {
		i = len(p.Phases)
	}
	if i < 1 {
		return "no such gate"
	}
	made := b.of(t, c.program, p.Phases[i-1].ID, 1).plan
	asked := made.Stage.Criteria
	if c.phase == "end" {
		asked = made.End.Criteria
	}
	for _, k := range asked {
		switch {
		case measure == "time" && k.Rule.EarliestWeek != nil:
			return number(k.Rule.EarliestWeek)
		case k.Measure == measure:
			return k.Sense + " " + strings.TrimRight(strings.TrimSuffix(strings.TrimSuffix(k.Wanted.Typed, k.Wanted.Unit), " "), " %°")
		}
	}
	return "no such gate"
}
