package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// A slot that asks for a part of a movement narrows what limits leave, never widens it; where too little of it is left the
// slot takes its next choice, with the reason.
func TestSlotNarrowsTheRange(t *testing.T) {
	const phase = "title = \"Own\"\naim = \"Try.\"\n[[slot]]\nid = \"press\"\nchoose = [\"leg-press-single\", \"wall-sit\"]\nsets = 3\nreps = 10\nreserve = 2\nrange_deg = RANGE\n[[session]]\nid = \"a\"\nslots = [\"press\"]\n"
	for _, row := range []struct{ asked, week, chosen, reach, because, why string }{
		{"[0, 90]", "2026-03-02", "leg-press-single", "0-90", "", "week 8: the limit opens to 90"},
		{"[20, 60]", "2026-03-02", "leg-press-single", "20-60", "", "only the part that was asked for"},
		{"[20, 90]", "2026-02-02", "leg-press-single", "20-60", "", "week 4: the limit of 60 is the stricter"},
		{"[50, 90]", "2026-02-02", "wall-sit", "50-60", "an arc of 10° is left of 50 to 90°", "10 degrees are no movement, but a hold"},
		{"[70, 90]", "2026-02-02", "", "not prescribed", "no part of 70 to 90° is left", "nothing is left of it"},
	} {
		p := who{graft: "patellar-tendon", starts: row.week, stages: "settle 2026-01-05", weeks: 1,
			files: map[string]string{"programs/phases/settle.toml": strings.Replace(phase, "RANGE", row.asked, 1)}}.plan(t)
		got := chosen(p, "press", unit.Left, 1)
		if got != row.chosen {
			t.Errorf("%s on %s: %q is chosen, want %q (%s)", row.asked, row.week, got, row.chosen, row.why)
		}
		side := unit.Left
		if got == "wall-sit" {
			side = unit.Both
		}
		if r := reach(dose(p, got, side, 1)); r != row.reach {
			t.Errorf("%s on %s: through %s, want %s (%s)", row.asked, row.week, r, row.reach, row.why)
		}
		if b := because(p, "leg-press-single", 1); !strings.Contains(b, row.because) {
			t.Errorf("%s on %s: passed over because %q, want %q", row.asked, row.week, b, row.because)
		}
	}
}
