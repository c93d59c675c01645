package unit

import (
	"testing"
	"time"
)

func d(s string) Day {
	day, err := ParseDay(s)
	if err != nil {
		panic(err)
	}
	return day
}

func TestWeeksSince(t *testing.T) {
	for _, row := range []struct {
		on, since string
		want      int
		why       string
	}{
		{"2026-01-12", "2026-01-12", 0, "the day itself"},
		{"2026-01-18", "2026-01-12", 0, "day 6"},
		{"2026-01-19", "2026-01-12", 1, "day 7"},
		{"2026-02-08", "2026-01-12", 3, "day 27"},
		{"2026-02-09", "2026-01-12", 4, "week 4 begins on day 28"},
		{"2026-01-11", "2026-01-12", -1, "the day before is week −1, not week 0"},
		{"2026-01-05", "2026-01-12", -1, "seven days before"},
		{"2026-01-04", "2026-01-12", -2, "eight days before"},
		{"2026-03-29", "2026-03-23", 0, "the clock goes forward in Europe on the last day"},
		{"2026-03-30", "2026-03-23", 1, "the day after has 6 × 24 + 23 hours behind it in Berlin"},
		{"2026-10-26", "2026-10-19", 1, "the clock goes back"},
		{"2024-02-29", "2024-02-22", 1, "a leap day"},
		{"2024-03-07", "2024-02-29", 1, "from a leap day"},
	} {
		if got := d(row.on).WeeksSince(d(row.since)); got != row.want {
			t.Errorf("%s since %s: week %d, want %d (%s)", row.on, row.since, got, row.want, row.why)
		}
	}
}

func TestMonths(t *testing.T) {
	for _, row := range []struct {
		from string
		n    int
		want string
		why  string
	}{
		{"2025-05-30", 9, "2026-02-28", "clamped"},
		{"2023-05-30", 9, "2024-02-29", "clamped in a leap year"},
		{"2024-02-29", 12, "2025-02-28", "a leap day a year later"},
		{"2024-02-29", 48, "2028-02-29", "… and four years later"},
		{"2026-01-31", 1, "2026-02-28", ""},
		{"2026-01-31", 2, "2026-03-31", "clamping one month does not clamp the next"},
		{"2025-12-15", 1, "2026-01-15", "over the year's end"},
		{"2026-01-15", -1, "2025-12-15", "back over it"},
		{"2026-03-31", -1, "2026-02-28", "back, clamped"},
		{"2026-01-15", -13, "2024-12-15", ""},
	} {
		if got := d(row.from).AddMonths(row.n).String(); got != row.want {
			t.Errorf("%s %+d months: %s, want %s (%s)", row.from, row.n, got, row.want, row.why)
		}
	}
	for _, row := range []struct {
		on, since string
		want      int
		why       string
	}{
		{"2026-02-27", "2025-05-30", 8, "a day short of nine"},
		{"2026-02-28", "2025-05-30", 9, "clamped: nine"},
		{"2026-03-29", "2025-05-30", 9, ""},
		{"2026-03-30", "2025-05-30", 10, ""},
		{"2026-01-12", "2026-01-12", 0, ""},
		{"2026-01-11", "2026-01-12", -1, "before it"},
	} {
		if got := d(row.on).MonthsSince(d(row.since)); got != row.want {
			t.Errorf("%s since %s: %d months, want %d (%s)", row.on, row.since, got, row.want, row.why)
		}
	}
}

// Adding and counting agree on every day of nine years, wherever the machine stands.
func TestCountingAgreesInEveryZone(t *testing.T) {
	here := time.Local
	defer func() { time.Local = here }()
	for _, name := range []string{"UTC", "Europe/Berlin", "America/St_Johns", "Pacific/Kiritimati", "Pacific/Apia", "Africa/Monrovia"} {
		zone, err := time.LoadLocation(name)
		if err != nil {
			continue
		}
		time.Local = zone
		first := d("2020-01-01")
		for n := range 3300 {
			on := first.AddDays(n)
			if got := on.Sub(first); got != n {
				t.Fatalf("%s: %s lies %d days after, not %d", name, on, got, n)
			}
			if back, err := ParseDay(on.String()); err != nil || back != on {
				t.Fatalf("%s: %s is read back as %v", name, on, back)
			}
			if on.MonthsSince(first) != 12*(on.Year-2020)+int(on.Month)-1 {
				t.Fatalf("%s: months to %s", name, on)
			}
		}
	}
}

func TestParseDay(t *testing.T) {
	for _, bad := range []string{"", "2026-02-29", "2026-04-31", "2026-13-01", "2026-4-6", "06.04.2026", "2026-04-06T00:00:00Z", "0000-00-00"} {
		if got, err := ParseDay(bad); err == nil {
			t.Errorf("%q is read as %s", bad, got)
		}
	}
	var none Day
	if !none.IsZero() || none.String() != "" {
		t.Errorf("no day is %q", none)
	}
	if err := none.UnmarshalText([]byte("2026-04-06")); err != nil || none != d("2026-04-06") {
		t.Errorf("%v %v", none, err)
	}
	if err := none.UnmarshalText(nil); err != nil || !none.IsZero() {
		t.Errorf("an empty text is no day: %v %v", none, err)
	}
}
