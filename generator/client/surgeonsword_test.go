package client_test

import (
	"fmt"
	"strings"
	"testing"
)

// A surgeon's reason may raise a load above the computed one: who, when and how it came are asked for.
func TestSurgeonsWord(t *testing.T) {
	for _, row := range []struct{ reason, want, why string }{
		{"surgeon: Dr Auk, 2026-04-01, letter", "", "all three"},
		{"surgeon: by a call of 2026-04-01 from Dr Auk", "", "in any order"},
		{"surgeon", "it does not say who said it, on which day, how it came (operation-note, letter, call)", "nothing"},
		{"surgeon: asked for it", "it does not say who said it, on which day, how it came", "no name, no date"},
		{"surgeon: Dr Auk, letter", "it does not say on which day;", "no date"},
		{"surgeon: Dr Auk, 2026-04-01", "it does not say how it came", "no route"},
		{"surgeon: 2026-04-01, call", "it does not say who said it;", "no name"},
		{"wish", "", "not the surgeon's"},
	} {
		block := fmt.Sprintf("starts = 2026-04-06\nweeks = 4\nby = \"imbali\"\n[[override]]\nexercise = \"squat\"\nsets = 2\nreason = %q\n", row.reason)
		_, faults := read(t, operation("2026-01-05", "left", gave), map[string]string{"blocks/1.toml": block})
		said := faults.Error()
		if len(faults.Wrong()) > 0 || strings.Contains(said, "surgeon's, and") != (row.want != "") || !strings.Contains(said, row.want) {
			t.Errorf("%q: %s; want %q (%s)", row.reason, said, row.want, row.why)
		}
	}
}
