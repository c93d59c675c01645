package finding_test

import (
	"testing"

	"paceleaf/generator/unit"
)

// Rule 28: a sweep test rests on the newest straight end since the event, not only on one of the same day.
func TestTheSweepTestRestsOnTheNewestStraightEnd(t *testing.T) {
	const sweep = "effusion = \"zero\"\n"
	for _, row := range []struct {
		before, first, today string
		want                 unit.Grade
		why                  string
	}{
		{"", "", sweep, "", "nobody ever measured"},
		{"", "left.lacks_extension_deg = 9\n", sweep, unit.Grade3, "it lacked 9° last week, and nobody measured again"},
		{"", "left.lacks_extension_deg = 9\n", sweep + "left.lacks_extension_deg = 4\n", "", "measured today"},
		{"", "left.lacks_extension_deg = 4\n", sweep + "left.lacks_extension_deg = 9\n", unit.Grade3, "measured today, and worse"},
		{"", "left.beyond_straight_deg = 2\n", sweep, "", "beyond straight lacks nothing"},
		{"", "right.lacks_extension_deg = 9\n", sweep, "", "the other knee is not swept"},
		{"left.lacks_extension_deg = 9\n", "", sweep, "", "before the operation it was another knee"},
		{"", "left.lacks_extension_deg = 9\n", sweep + "effusion_method = \"ultrasound\"\n", "", "ultrasound sees all"},
	} {
		f := person{tests: map[string]string{"2025-12-01": row.before, "2026-03-30": row.first, "2026-04-06": row.today}}.findings(t, "2026-04-06")
		if got := f.Knees[len(f.Knees)-1].EffusionHidden; got != row.want || f.Measure("effusion").Hidden != row.want {
			t.Errorf("%q, then %q: hidden %q, want %q (%s)", row.first, row.today, got, row.want, row.why)
		}
	}
	both := person{side: "both", tests: map[string]string{"2026-03-30": "left.lacks_extension_deg = 9\nright.lacks_extension_deg = 0\n", "2026-04-06": sweep + "right.lacks_extension_deg = 0\n"}}.findings(t, "2026-04-06")
	if got := both.Knees[len(both.Knees)-1].EffusionHidden; got != unit.Grade3 {
		t.Errorf("of both knees only the straight one was measured again: hidden %q", got)
	}
}
