package plan_test

import (
	"fmt"
	"strings"
	"testing"
)

// The relative rate of groups: at 70 the rule of thumb says 1.60 and the source's form 1.84 (1.22 to 3.45); six months are three
// before nine, 8.50 times; nine months and later are 1 (measurement.md, 6). Nobody unlike those who were studied gets a number.
func TestGroups(t *testing.T) {
	base := who{date: "2026-01-05", starts: "2026-07-06", born: "1998-04", tests: map[string]string{"2026-07-06": force("70")}}
	for _, row := range []struct {
		name   string
		change func(*who)
		want   string
	}{
		{"six months", func(*who) {}, "1.60 1.84 1.22 3.45 8.50"},
		{"nine months", func(w *who) { w.date = "2025-10-06" }, "1.60 1.84 1.22 3.45 1.00"},
		{"two years", func(w *who) { w.date = "2024-07-01" }, "1.60 1.84 1.22 3.45 1.00"},
		{"four months is too far from what was seen", func(w *who) { w.date = "2026-03-02"; w.tests = nil }, "more than four months before nine"},
		{"above 90 is 1", func(w *who) { w.tests = map[string]string{"2026-07-06": force("95")} }, "1.00 1.00 1.00 1.00 8.50"},
		{"below 60", func(w *who) { w.tests = map[string]string{"2026-07-06": force("55")} }, "below 60 lies outside"},
		{"in doubt", func(w *who) { w.tests = map[string]string{"2026-07-06": force("70, 50")} }, "the test is in doubt"},
		{"under 18", func(w *who) { w.born = "2009-06" }, "not like: under 18"},
		{"age not known", func(w *who) { w.born = "" }, "not like: the age is not known"},
		{"no twisting sport", func(w *who) { w.sport = "straight-line" }, "not like: no twisting"},
		{"the other leg", func(w *who) { w.other = "injured-before" }, "not like: the other leg"},
	} {
		w := base
		row.change(&w)
		g := w.plan(t).Groups
		var got string
		switch {
		case g.NotLike != "":
			got = "not like: " + g.NotLike.String()
		case !g.Rate.OK() || !g.Early.OK():
			got = g.Rate.Why().String() + g.Early.Why().String()
		default:
			got = fmt.Sprintf("%.2f %.2f %.2f %.2f %.2f", g.Linear.Or(0), g.Rate.Or(0), g.Low.Or(0), g.High.Or(0), g.Early.Or(0))
		}
		if !strings.Contains(got, row.want) {
			t.Errorf("%s: %s, want %s", row.name, got, row.want)
		}
		if g.Show {
			t.Errorf("%s: shown, and the clinic has not asked", row.name)
		}
	}
	asked := base
	asked.files = map[string]string{"clinic.toml": strings.Replace(clinicText, "emergency", "show_relative_rate = true\nemergency", 1)}
	if !asked.plan(t).Groups.Show {
		t.Error("not shown, although the clinic has asked")
	}
}

// A test of reach or of rising bends the standing knee under the body: what forbids that refuses the test, of that leg alone.
func TestReachAndRiseObeyLimits(t *testing.T) {
	limit := "[[limit]]\nkind = \"loaded-bend\"\nrange_deg = [0, 60]\nfrom = 2026-01-05\nset_by = \"surgeon\"\nname = \"Dr Auk\"\nsaid = 2026-01-05\nroute = \"letter\"\n"
	day := "by = \"imbali\"\neffusion = \"zero\"\n[single_leg_rise]\nleft.seat_cm = 40\nright.seat_cm = 35\n[y_balance]\nleft.anterior_cm = [60]\nright.anterior_cm = [62]\n"
	for more, refused := range map[string]bool{"": false, limit: true} {
		p := who{date: "2025-10-06", starts: "2026-07-06", more: more, tests: map[string]string{"2026-07-06": day}}.plan(t)
		rise, reach := p.Found.Rises[0], p.Found.Reaches[0]
		if rise.Left.Score.OK() == refused || reach.Left.Anterior.OK() == refused || !rise.Right.Score.OK() || !reach.Right.Anterior.OK() {
			t.Errorf("limit %v: rise %q, reach %q", refused, rise.Left.NotTested, reach.Left.NotTested)
		}
	}
}
