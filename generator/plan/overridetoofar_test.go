package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Rules 21 and 24: not even a surgeon's load lies above the estimated maximum; one that leaves less in reserve than the dose asks
// is flagged and asked about.
func TestRule24_AnOverrideTooFar(t *testing.T) {
	typed := func(more string) string {
		return override("side = \"left\"\nplates_kg = " + more + "\nreason = \"surgeon: Dr Auk, 2026-04-01, letter\"")
	}
	for _, row := range []struct {
		name, block string
		says        string
		refused     bool
		flagged     bool
		why         string
	}{
		{"the working load", typed("52.5"), "", false, false, "as computed"},
		{"above it", typed("70"), "client/blocks/1.toml:7: leg-press-single.left: the load of the override can be moved about 2.5 times, and 10 times with 2 in reserve are asked for", false, true, "70 of 76 can be moved 2.6 times"},
		{"with fewer repetitions", typed("70\nreps = 1\nreserve = 1"), "", false, false, "2 to failure at 70: 2.57 are predicted"},
		{"the maximum", typed("75"), "asked for", false, true, "not above 76"},
		{"above the maximum", typed("77.5"), "client/blocks/1.toml:7: leg-press-single, left: with what is put on, 77.5 kg would move, and the estimated maximum for one repetition is 76 kg", true, false, "60 kg × 8 to failure is 76"},
	} {
		w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", "")
		w.block = row.block
		p, faults := w.planned(t)
		said := strings.ReplaceAll(faults.Error(), "clients/tern-04", "client")
		if refused := len(faults.Wrong()) > 0; refused != row.refused || !strings.Contains(said, row.says) || row.says == "" && strings.Contains(said, "override") {
			t.Errorf("%s: %s; want %q, refused %v (%s)", row.name, said, row.says, row.refused, row.why)
		}
		if row.refused {
			continue
		}
		var flags []plan.Flag
		for _, f := range p.Flags {
			if f.ID == "override-above-load" && f.About == "leg-press-single."+string(unit.Left) {
				flags = append(flags, f)
			}
		}
		if len(flags) > 1 || (len(flags) == 1) != row.flagged {
			t.Errorf("%s: flags %v, want %v (%s)", row.name, flags, row.flagged, row.why)
		}
	}
}
