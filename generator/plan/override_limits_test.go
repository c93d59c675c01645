package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Rules 6, 9 and 24: what a therapist types over a plan may tighten it; it opens neither all-out effort that is closed nor a
// load that no lift stands behind.
func TestRule24_OverridesOpenNothing(t *testing.T) {
	for _, row := range []struct {
		name, starts, lift, override string
		reserve                      int
		changed                      string
		why                          string
	}{
		{"all out in week 9", "2026-03-09", "60 kg x 8+3", "reserve = 0", 2, "reserve 0 refused", "maximal effort is closed before week 12"},
		{"one in reserve in week 9", "2026-03-09", "60 kg x 8+3", "reserve = 1", 2, "reserve 1 refused", "under 2 in reserve counts as maximal"},
		{"more in reserve in week 9", "2026-03-09", "60 kg x 8+3", "reserve = 4", 4, "reserve 2 → 4", "easier is always let through"},
		{"all out in week 12", "2026-04-06", "60 kg x 8+3", "reserve = 0", 0, "reserve 2 → 0", "it is open from week 12 on"},
		{"a load without a lift", "2026-04-06", "", "plates_kg = 100", 2, "100 kg is not used", "there is no lift of this exercise on this machine"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := who{date: "2026-01-05", starts: row.starts, weeks: 1, more: "[setup.leg-press-single]\ndevice = \"press\"\n", files: own(`"leg-press-single"`),
				block: "[[override]]\nexercise = \"leg-press-single\"\nside = \"left\"\n" + row.override + "\nreason = \"wish\"\n"}
			if row.lift != "" {
				w.tests = map[string]string{row.starts: calm + "[[lift]]\nexercise = \"leg-press-single\"\nleft = \"" + row.lift + "\"\nright = \"" + row.lift + "\"\n"}
			}
			p := w.plan(t)
			for _, r := range p.Prescriptions {
				if r.Side != unit.Left {
					continue
				}
				d := r.Weeks[0]
				if *d.Dose.Reserve != row.reserve {
					t.Errorf("reserve %d, want %d (%s)", *d.Dose.Reserve, row.reserve, row.why)
				}
				if row.lift == "" && (d.Plates.OK() || !d.FindYourWeight) {
					t.Errorf("a load was taken: %s", row.why)
				}
			}
			if len(p.Overrides) != 1 || !strings.Contains(basis.Listed(p.Overrides[0].Changed...).String(), row.changed) {
				t.Errorf("the worksheet says %q, want %q", p.Overrides[0].Changed, row.changed)
			}
		})
	}
}
