package generator_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// gapsFile lists what was read and is not shipped; it may only shrink.
const (
	gapsFile        = "gaps.csv"
	mostProgramGaps = 26
)

// TestPublishedProgramGaps: what is known to be missing is written down with its reason, and the list does not grow.
func TestPublishedProgramGaps(t *testing.T) {
	data, err := os.ReadFile("../testdata/published/programs/" + gapsFile)
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(strings.NewReader(string(data)))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	by := map[string]int{}
	for _, row := range rows[1:] {
		by[row[4]]++
		if !slices.Contains(shippedPrograms(t), row[1]) || row[2] == "" || row[5] == "" {
			t.Errorf("%s: no such program, or nothing said", row[0])
		}
	}
	if n := len(rows) - 1; n > mostProgramGaps {
		t.Errorf("%d gaps; there were %d", n, mostProgramGaps)
	}
	t.Logf("%d gaps: %v", len(rows)-1, by)
}

// doseCell is one row of testdata/published/programs: one figure of a source for one exercise in some weeks of a phase.
type doseCell struct {
	file, id, program, phase, exercise, what, wanted, source, mark string
	weeks                                                          []int
}

func doseCells(t *testing.T) (cells []doseCell) {
	t.Helper()
	files, err := filepath.Glob("../testdata/published/programs/*.csv")
	if err != nil || len(files) == 0 {
		t.Fatal("no tables", err)
	}
	seen := map[string]bool{}
	for _, name := range files {
		if filepath.Base(name) == gapsFile {
			continue
		}
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		r := csv.NewReader(strings.NewReader(string(data)))
		r.Comment = '#'
		rows, err := r.ReadAll()
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, row := range rows[1:] {
			c := doseCell{filepath.Base(name), row[0], row[1], row[2], row[4], row[5], row[6], row[7], row[8], weeksIn(t, row[3])}
			if seen[c.id] {
				t.Errorf("%s: %s stands twice", c.file, c.id)
			}
			seen[c.id] = true
			cells = append(cells, c)
		}
	}
	return cells
}

// weeksIn are the weeks of "3" or "4 to 6"; a cell that speaks of no week is looked up once.
func weeksIn(t *testing.T, text string) (weeks []int) {
	t.Helper()
	low, high := spanOf(t, text, "1")
	for n := int(low); n <= int(high); n++ {
		weeks = append(weeks, n)
	}
	return weeks
}

// spanOf are the ends of "3" or "4 to 6".
func spanOf(t *testing.T, text, instead string) (low, high float64) {
	t.Helper()
	if text == "" {
		text = instead
	}
	first, last, span := strings.Cut(text, " to ")
	if !span {
		last = first
	}
	low, err := strconv.ParseFloat(first, 64)
	if err == nil {
		high, err = strconv.ParseFloat(last, 64)
	}
	if err != nil {
		t.Fatalf("%q is no number and no span", text)
	}
	return low, high
}
