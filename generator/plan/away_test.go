package plan_test

import (
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

func away(from, until, place string) string {
	return "[[away]]\nfrom = " + from + "\nuntil = " + until + "\nplace = \"" + place + "\"\nemergency = \"112\"\n"
}

// Rule 24: nothing is carried across machines: a week away has the load of a lift on what stands there, or none.
func TestRule24b_AwayOnAnotherMachine(t *testing.T) {
	there := func(set string) string {
		return "[[lift]]\nexercise = \"leg-press-single\"\nplace = \"heavy\"\ndevice = \"big-press\"\nrange_deg = [0, 90]\nleft = \"" + set + "\"\nright = \"" + set + "\"\n"
	}
	pounds := "[[place]]\nid = \"abroad\"\n[[place.device]]\nid = \"lb-press\"\nkind = \"angled-leg-press\"\nplates_lb = [45, 25, 10, 5, 2.5]\n"
	abroad := "[[lift]]\nexercise = \"leg-press-single\"\nplace = \"abroad\"\ndevice = \"lb-press\"\nrange_deg = [0, 90]\nleft = \"140 lb x 8+0\"\nright = \"140 lb x 8+0\"\n"
	for _, row := range []struct{ name, place, more, tested, want, why string }{
		{"lifted at home only", "heavy", "", "", "52.5 find 52.5 55", "the same kind of press, another machine"},
		{"lifted there a week earlier", "heavy", "", there("20 kg x 8+0"), "52.5 12.5 52.5 55", "65 moved, 82.3 at most, × 0.714 − 45 of carriage = 13.8: its own numbers, with no growth of another machine"},
		{"no press there", "hotel", "", "", "52.5 - 52.5 55", "what is not there is not done, and earns nothing"},
		{"marked in pounds", "abroad", pounds, abroad, "52.5 56.6 52.5 55", "140 lb to failure: 129.8 lb allowed, cut to 125 lb, which are 56.699 kg"},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pressed("leg-press-single", "60 kg x 8+0", "90 kg x 8+0", away("2026-04-13", "2026-04-19", row.place))
			w.weeks = 4
			w.files["clinic.toml"] = clinicText + row.more
			w.tests["2026-03-30"] = row.tested
			p := w.plan(t)
			got := strings.Fields(loads(p, "leg-press-single", unit.Left))
			for i := range got {
				got[i] = got[i][:min(4, len(got[i]))]
			}
			if strings.Join(got, " ") != row.want {
				t.Errorf("%v, want %s (%s)", got, row.want, row.why)
			}
			if p.Weeks[1].Away == nil || p.Weeks[1].Place.ID != row.place || p.Weeks[0].Away != nil || p.Weeks[2].Away != nil {
				t.Errorf("the second week alone is spent at %s: %+v", row.place, p.Weeks)
			}
		})
	}
}

// Rule 3: each time away is told once, however many weeks it touches, and a second one is told too.
func TestRule03b_EachTimeAwayIsTold(t *testing.T) {
	for _, row := range []struct{ name, more, want, why string }{
		{"one week", away("2026-04-13", "2026-04-19", "hotel"), "04-13", ""},
		{"over two weeks", away("2026-04-16", "2026-04-22", "hotel"), "04-16", "told once"},
		{"twice at one place", away("2026-04-13", "2026-04-14", "hotel") + away("2026-04-29", "2026-04-30", "hotel"), "04-13 04-29", "with a week at home between"},
		{"twice, week after week", away("2026-04-13", "2026-04-14", "hotel") + away("2026-04-21", "2026-04-22", "hotel"), "04-13 04-21", "two journeys, not one"},
		{"two places", away("2026-04-13", "2026-04-14", "hotel") + away("2026-04-21", "2026-04-22", "heavy"), "04-13 04-21", ""},
		{"begun before the block", away("2026-04-01", "2026-04-08", "hotel"), "04-01", "its first day, though it lies before"},
		{"over", away("2026-03-01", "2026-04-05", "hotel"), "", "it ended the day before"},
		{"after the block", away("2026-05-04", "2026-05-10", "hotel"), "", ""},
	} {
		var got []string
		for _, d := range (who{starts: "2026-04-06", more: row.more}).plan(t).Dates {
			if d.Kind == "away" {
				got = append(got, d.On.String()[5:])
			}
		}
		if strings.Join(got, " ") != row.want {
			t.Errorf("%s: %v, want %q (%s)", row.name, got, row.want, row.why)
		}
	}
}
