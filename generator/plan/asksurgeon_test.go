package plan_test

import (
	"strings"
	"testing"
)

// Rule 6: where nobody has said what holds, the strictest does, and the surgeon is asked: what was done, how to walk on it, and
// the weeks of a procedure of which nothing was read. The question ends with the limits that it is about.
func TestRule06g_TheSurgeonIsAsked(t *testing.T) {
	const word = "[[limit]]\nkind = \"weight-bearing\"\nallowed = true\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
	const brace = "[[limit]]\nkind = \"brace\"\nallowed = true\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
	for _, row := range []struct {
		name, also, starts, more string
		about                    string // of the flags, in order
		asks                     bool   // check asks too
		why                      string
	}{
		{"a graft alone", "", "2026-01-19", "", "walking and brace", false, "the rows on walking and brace are a tool default"},
		{"the surgeon's word on walking", "", "2026-01-19", word, "walking and brace", false, "the brace is still nobody's word"},
		{"on both", "", "2026-01-19", word + brace, "", false, "all is said"},
		{"week 8", "", "2026-03-02", "", "", false, "these rows have ended"},
		{"of unknown kind", `["meniscus-repair-unknown"]`, "2026-01-19", word + brace, "meniscus-repair-unknown", true, "strictest of all repairs until it is known"},
		{"of unknown kind, week 40", `["meniscus-repair-unknown"]`, "2026-10-12", "", "", false, "none of its limits is left"},
		{"unknown site", `["cartilage-unknown"]`, "2026-01-19", word + brace, "cartilage-unknown", true, "the stricter of two sites"},
		{"nothing was read", `["lateral-tenodesis"]`, "2026-01-19", word + brace, "lateral-tenodesis", false, "its rows are ours"},
		{"read", `["meniscus-repair-root"]`, "2026-01-19", word + brace, "", false, "its rows have sources"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p, faults := who{date: "2026-01-05", also: row.also, starts: row.starts, more: row.more, weeks: 1}.planned(t)
			if p == nil {
				t.Fatal(faults)
			}
			var about []string
			for _, f := range p.Flags {
				if f.ID == "ask-surgeon" {
					about = append(about, f.About)
				}
			}
			if got := strings.Join(about, ", "); got != row.about {
				t.Errorf("flags about %q, want %q: %s", got, row.about, row.why)
			}
			asks := 0
			for _, f := range faults {
				if strings.Contains(f.Error(), "nobody has written what was done") {
					asks++
				}
			}
			if want := map[bool]int{true: 1}[row.asks]; asks != want {
				t.Errorf("check asks %d times, want %d: %s", asks, want, row.why)
			}
		})
	}
}
