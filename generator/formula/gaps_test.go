package formula_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What was read nowhere is refused. A gap that starts to answer has been filled: its row leaves the list, and its cell goes
// into a worked table.
func TestGaps(t *testing.T) {
	file := filepath.Join(published, "gaps.csv")
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment, r.FieldsPerRecord = '#', 5
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range rows[1:] {
		var in []float64
		for _, word := range strings.Fields(row[2]) {
			in = append(in, input(t, file, word)...)
		}
		if v, err := call(row[1], in...); err == nil {
			t.Errorf("%s answers with %v: was %s read in its source?", row[0], v, row[1])
		} else if strings.Contains(err.Error(), "shelf") || row[4] == "" {
			t.Errorf("%s: %v; a gap names a formula and why it is one", row[0], err)
		}
	}
	t.Logf("%d known gaps", len(rows)-1)
}
