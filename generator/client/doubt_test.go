package client_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Slips of the pen that would become a weight, an opened door or an emptied limit: a score above its scale is a mistake,
// the rest is asked about.
func TestSlipsAreAsked(t *testing.T) {
	lift := func(left, right string) string {
		return "[[lift]]\nexercise = \"leg-press-single\"\nleft = \"" + left + "\"\nright = \"" + right + "\"\n"
	}
	for _, row := range []struct {
		name  string
		date  string
		files map[string]string
		want  string // part of what is said; "" where nothing is
		why   string
	}{
		{"a score of its scale", "2026-01-05", map[string]string{"tests/2026-04-06.toml": "[[questionnaire]]\nid = \"acl-rsi\"\nscore = 58\n"}, "", "0 to 100"},
		{"a score above its scale", "2026-01-05", map[string]string{"tests/2026-04-06.toml": "[[questionnaire]]\nid = \"acl-rsi\"\nscore = 580\n"}, "outside 0 to 100", "it would open sport"},
		{"a lift grown by half", "2026-01-05", map[string]string{"tests/2026-04-06.toml": lift("40 kg x 8+2", "80 kg x 8+2"), "tests/2026-05-04.toml": lift("60 kg x 8+2", "80 kg x 8+2")}, "", "training does that"},
		{"a lift grown tenfold", "2026-01-05", map[string]string{"tests/2026-04-06.toml": lift("20 kg x 8+2", "70 kg x 8+2"), "tests/2026-05-04.toml": lift("250 kg x 8+2", "70 kg x 8+2")}, "more than twice the last one", "a nought too many"},
		{"the operated leg lifts more", "2026-01-05", map[string]string{"tests/2026-04-06.toml": lift("90 kg x 8+2", "60 kg x 8+2")}, "15 percent more", "left and right may be swapped"},
		{"first seen after 38 weeks", "2025-07-14", map[string]string{"tests/2026-04-06.toml": "mass_kg = 64\n"}, "", "a client may come late"},
		{"first seen after a year", "2025-01-05", map[string]string{"tests/2026-01-12.toml": "mass_kg = 64\n"}, "the first thing recorded after this operation", "the year may be one too early"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := map[string]string{"blocks/1.toml": "starts = 2026-05-04\nweeks = 4\nby = \"imbali\"\n"}
			for name, text := range row.files {
				files[name] = text
			}
			c, faults := read(t, operation(row.date, "left", gave), files)
			said := append(faults, c.Suspicious(unit.Left)...).Error()
			if row.want == "" && said != "" || !strings.Contains(said, row.want) {
				t.Errorf("said %q, want %q (%s)", said, row.want, row.why)
			}
		})
	}
}
