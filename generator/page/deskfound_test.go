package page

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// The ratio of two bends compares each leg's newest, so both stand beside it, with the day of one that was measured on another.
func TestFoundHasBothBendsOfTheRatio(t *testing.T) {
	bend := func(on, left, right string) finding.KneeDay {
		k := finding.KneeDay{On: civil(on)}
		for at, typed := range map[*finding.KneeAngles]string{&k.Left: left, &k.Right: right} {
			if typed != "" {
				at.Flexion = basis.Typed(map[string]unit.Degrees{"128": 128, "120": 120, "140": 140}[typed], typed+" °", basis.Origin{File: testFile})
			}
		}
		return k
	}
	for _, row := range []struct {
		name  string
		knees []finding.KneeDay
		want  string
	}{
		{"both on one day", []finding.KneeDay{bend("2026-04-06", "128", "140")}, " | 128° | 140°"},
		{"the other before", []finding.KneeDay{bend("2026-03-09", "120", "140"), bend("2026-04-06", "128", "")}, " | 128° | 140°, Mon 9 March"},
		{"the other since", []finding.KneeDay{bend("2026-03-09", "128", ""), bend("2026-04-06", "", "140")}, ", Mon 9 March | 128° | 140°, Mon 6 April"},
		{"the other alone", []finding.KneeDay{bend("2026-03-09", "", "140")}, ", Mon 9 March |  | 140°"},
		{"the other never", []finding.KneeDay{bend("2026-04-06", "128", "")}, " | 128° | "},
	} {
		p := deskPlan()
		p.Found.Knees = row.knees
		d := &desk{sheet: sheet{deskWords(t)}, p: p}
		i := slices.IndexFunc(d.foundKnee(), func(r []string) bool { return strings.HasPrefix(r[0], d.say("found-bend")) })
		r := d.foundKnee()[i]
		got := strings.NewReplacer("\u00a0", " ", " °", "°").Replace(strings.TrimPrefix(strings.Join(r[:3], " | "), d.say("found-bend")))
		if got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}
