package formula_test

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const published = "../../testdata/published/formula"

// cell is one value of a worked table: a formula or a chain of them, its inputs, and what the source says came out.
type cell struct {
	id, function string
	inputs       []float64
	wanted       float64
	digits       int
	source       string
}

// Every cell of testdata/published/formula comes out, to the digits that it is printed with; and the rule's sum gives the same.
func TestPublished(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(published, "*.csv"))
	files = slices.DeleteFunc(files, func(f string) bool { return filepath.Base(f) == "gaps.csv" }) // of TestGaps
	if err != nil || len(files) == 0 {
		t.Fatalf("no worked tables in %s: %v", published, err)
	}
	reached, all := map[string]bool{}, 0
	for _, name := range files {
		source, cells := read(t, name)
		byHand := 0
		for _, c := range cells {
			c.check(t, filepath.Base(name))
			reached[c.function] = true
			if strings.HasPrefix(c.source, "worked by hand") {
				byHand++
			}
		}
		all += len(cells)
		t.Logf("%s: %d cells, %d printed in the source, %d worked by hand; %s", filepath.Base(name), len(cells), len(cells)-byHand, byHand, source)
	}
	t.Logf("%d cells in %d files", all, len(files))
	for name := range chains {
		if !reached[name] {
			t.Errorf("no cell goes through the chain %q", name)
		}
	}
}

func (c cell) check(t *testing.T, file string) {
	t.Helper()
	var got float64
	var err error
	if chain, ok := chains[c.function]; ok {
		got, err = chain(c.inputs)
	} else {
		got, err = call(c.function, c.inputs...)
	}
	if err != nil {
		t.Errorf("%s: %s: %v", file, c.id, err)
		return
	}
	// half of the last digit, and a hair for floats
	if half := 0.5 * math.Pow10(-c.digits); math.Abs(got-c.wanted) > half+1e-9 {
		t.Errorf("%s: %s: %s(%v) = %v; the source says %v", file, c.id, c.function, c.inputs, got, c.wanted)
	}
	if _, ok := shelf[c.function]; ok {
		sumGives(t, c.function, c.inputs, got)
	}
}

// sumGives holds the sum of a formula's rule, with the inputs filled in, to the formula's result.
func sumGives(t *testing.T, name string, in []float64, want float64) {
	t.Helper()
	by, in := ruleOf(name, in)
	if by.Sum == "" {
		if !unsummed[name] {
			t.Errorf("%s has no sum for %v", name, in)
		}
		return // read off, not reckoned
	}
	filled := fill(by.Sum, in)
	got, err := calculate(filled)
	if err != nil {
		t.Errorf("%s: %v", name, err)
	} else if math.Abs(got-want) > 1e-9*max(1, math.Abs(want)) {
		t.Errorf("%s: the sum %s gives %v, the formula %v", name, filled, got, want)
	}
}

// read reads a worked table: a head of comments whose first names the source, a line of column names, then the cells.
func read(t *testing.T, name string) (source string, cells []cell) {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	head, _, _ := strings.Cut(string(text), "\n")
	source, ok := strings.CutPrefix(head, "# Source: ")
	if !ok {
		t.Errorf("%s:1: the first line does not name the source; write # Source: …", filepath.Base(name))
	}
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment, r.FieldsPerRecord = '#', 6
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", filepath.Base(name), err)
	}
	if len(rows) < 2 {
		t.Fatalf("%s: no cell; take the file away or fill it", filepath.Base(name))
	}
	if got := strings.Join(rows[0], ","); got != "id,function,inputs,wanted,digits,source" {
		t.Fatalf("%s: the columns are %s", filepath.Base(name), got)
	}
	seen := map[string]bool{}
	for _, row := range rows[1:] {
		c := cell{id: row[0], function: row[1], source: row[5]}
		for _, word := range strings.Fields(row[2]) {
			c.inputs = append(c.inputs, input(t, name, word)...)
		}
		c.wanted, c.digits = float(t, name, row[3]), int(float(t, name, row[4]))
		if c.source == "" || c.id == "" || seen[c.id] {
			t.Errorf("%s: %q: a cell needs an id of its own and a source", filepath.Base(name), c.id)
		}
		seen[c.id] = true
		cells = append(cells, c)
	}
	return source, cells
}

// input is a number, a word that a formula takes, "-" for an item that was not answered, or @ and the name of a series.
func input(t *testing.T, file, word string) []float64 {
	t.Helper()
	if name, ok := strings.CutPrefix(word, "@"); ok {
		return seriesNamed(t, name)
	}
	if v, ok := words[word]; ok {
		return []float64{v}
	}
	return []float64{float(t, file, word)}
}

// seriesNamed reads the pairs of a series: x, then y.
func seriesNamed(t *testing.T, name string) (in []float64) {
	t.Helper()
	file := filepath.Join(published, "series", name+".txt")
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(text), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		for _, word := range strings.Fields(line) {
			in = append(in, float(t, file, word))
		}
	}
	if len(in)%2 != 0 || len(in) == 0 {
		t.Fatalf("%s holds %d numbers, which make no pairs", name, len(in))
	}
	return in
}

func float(t *testing.T, file, word string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(word, 64)
	if err != nil {
		t.Fatalf("%s: %q is not a number", filepath.Base(file), word)
	}
	return v
}
