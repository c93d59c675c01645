package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Rule 6: of two instructions that one author gave on one day neither is the later: the strictest holds whichever stands
// first in the file, and both lines are asked about.
func TestRule06_SaidOnOneDay(t *testing.T) {
	auk := func(kind, allow, from, lifts string) string {
		return limit(kind, allow, from, lifts, "surgeon", "Dr Auk", "2026-01-05")
	}
	const narrow, wide = "range_deg = [0, 50]", "range_deg = [0, 80]"
	for _, row := range []struct {
		name, first, second string
		want, asks, why     string // asks: at both lines
	}{
		{"the narrow one first", auk("loaded-bend", narrow, "2026-01-05", ""), auk("loaded-bend", wide, "2026-01-05", ""), "0-50", "both", "the strictest"},
		{"the wide one first", auk("loaded-bend", wide, "2026-01-05", ""), auk("loaded-bend", narrow, "2026-01-05", ""), "0-50", "both", "the order of lines decides nothing"},
		{"the wide one begins later", auk("loaded-bend", narrow, "2026-01-05", ""), auk("loaded-bend", wide, "2026-01-26", ""), "0-50", "both", "nobody ended the narrow one"},
		{"the narrow one is over", auk("loaded-bend", narrow, "2026-01-05", "2026-01-26"), auk("loaded-bend", wide, "2026-01-26", ""), "0-80", "", "a letter of two steps"},
		{"the same twice", auk("loaded-bend", narrow, "2026-01-05", ""), auk("loaded-bend", narrow, "2026-01-05", ""), "0-50", "", "they do not differ"},
		{"said later", auk("loaded-bend", narrow, "2026-01-05", ""), limit("loaded-bend", wide, "2026-01-26", "", "surgeon", "Dr Auk", "2026-01-26"), "0-80", "", "the later word"},
	} {
		w := who{starts: "2026-02-02", weeks: 1, files: own(`"squat"`), more: row.first + row.second}
		p, faults := w.planned(t)
		if p == nil {
			t.Fatalf("%s: %v", row.name, faults)
		}
		if got := reach(dose(p, "squat", unit.Left, 1)) + reach(dose(p, "squat", unit.Both, 1)); !strings.Contains(got, row.want) {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
		if asked := strings.Count(faults.Error(), "neither is the later"); asked != map[string]int{"both": 2}[row.asks] || asked > 0 && !bothLines(faults.Error()) {
			t.Errorf("%s: %v; want %q", row.name, faults, row.asks)
		}
	}
}

// bothLines reports whether the lines of the first and the second [[limit]] are named.
func bothLines(said string) bool {
	return strings.Contains(said, "client.toml:14: one of two") && strings.Contains(said, "client.toml:22: one of two")
}
