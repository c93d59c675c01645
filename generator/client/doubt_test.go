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
		{"a stage of 2062", "2026-01-05", clientMore("[[stage]]\nid = \"settle\"\nfrom = 2062-01-05\nby = \"imbali\"\n"), "stage settle begins 2062-01-05, long after", "two digits swapped: it would never begin"},
		{"a stage of next week", "2026-01-05", clientMore("[[stage]]\nid = \"settle\"\nfrom = 2026-06-08\nby = \"imbali\"\n"), "", "it may be recorded before its block is begun"},
		{"opened in 2062", "2026-01-05", clientMore("[[opened]]\nid = \"running\"\nfrom = 2062-04-06\nby = \"imbali\"\n"), "running begins 2062-04-06, long after", "it would never open"},
		{"a limit of 2062", "2026-01-05", clientMore(surgeonSays("2062-01-05", "")), "was said on 2026-01-05 and begins only 2062-01-05", "it would never bind"},
		{"a limit to 2062", "2026-01-05", clientMore(surgeonSays("2026-01-05", "lifts = 2062-02-05\n")), "holds from 2026-01-05 to 2062-02-05", "it would never end"},
		{"a limit of a year", "2026-01-05", clientMore(surgeonSays("2026-01-05", "lifts = 2027-01-05\n")), "", "a surgeon may say so"},
		{"a second operation in 2062", "2026-01-05", clientMore("[[event]]\nkind = \"injury\"\ndate = 2062-02-05\nside = \"left\"\n"), "this event is of 2062-02-05", "it would count from the wrong day"},
		{"a bend less than its test", "2026-01-05", map[string]string{"tests/2026-04-06.toml": "left.flexion_deg = 12\n[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft = \"40 kg x 8+2\"\nright = \"80 kg x 8+2\"\n"}, "the left knee bends to 12° on 2026-04-06, and leg-press-single was tested at 90°", "a nought was lost"},
		{"a bend as far as its test", "2026-01-05", map[string]string{"tests/2026-04-06.toml": "left.flexion_deg = 90\n[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\nleft = \"40 kg x 8+2\"\nright = \"80 kg x 8+2\"\n"}, "", "it reached the end"},
	} {
		t.Run(row.name, func(t *testing.T) {
			files := map[string]string{"blocks/1.toml": "starts = 2026-05-04\nweeks = 4\nby = \"imbali\"\n"}
			for name, text := range row.files {
				files[name] = text
			}
			also := files[more]
			delete(files, more)
			c, faults := read(t, operation(row.date, "left", gave)+also, files)
			said := append(faults, c.Suspicious(unit.Left)...).Error()
			if row.want == "" && said != "" || !strings.Contains(said, row.want) {
				t.Errorf("said %q, want %q (%s)", said, row.want, row.why)
			}
		})
	}
}

// more stands for text that goes into client.toml itself.
const more = ""

func clientMore(text string) map[string]string { return map[string]string{more: text} }

// surgeonSays is a limit of a surgeon from a day.
func surgeonSays(from, lifts string) string {
	return "[[limit]]\nkind = \"kneeling\"\nallowed = false\nfrom = " + from + "\n" + lifts + "set_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
}
