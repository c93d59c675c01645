package unit

import (
	"fmt"
	"time"
)

// Day is a civil day: no hour, no zone. The zero Day is no day.
type Day struct {
	Year  int
	Month time.Month
	Date  int
}

// Unit of a day, for the trail of a number: none.
func (Day) Unit() string { return "" }

// ParseDay reads "2026-04-06" and refuses days that the calendar does not have.
func ParseDay(s string) (Day, error) {
	t, err := time.Parse("2006-01-02", s)
	if err != nil {
		return Day{}, fmt.Errorf("%q is not a day; write year-month-day, as in 2026-04-06", s)
	}
	return dayOf(t), nil
}

// dayOf keeps the civil part of a time that stands in UTC.
func dayOf(t time.Time) Day { return Day{t.Year(), t.Month(), t.Day()} }

// utc is the day's noonless instant, used only to count days: UTC has no clock changes.
func (d Day) utc() time.Time { return time.Date(d.Year, d.Month, d.Date, 0, 0, 0, 0, time.UTC) }

// IsZero reports whether d is no day.
func (d Day) IsZero() bool { return d == Day{} }

// String is the ISO 8601 writing.
func (d Day) String() string {
	if d.IsZero() {
		return ""
	}
	return fmt.Sprintf("%04d-%02d-%02d", d.Year, int(d.Month), d.Date)
}

// MarshalText writes the ISO 8601 day; no day is empty.
func (d Day) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads the ISO 8601 day; empty is no day.
func (d *Day) UnmarshalText(b []byte) (err error) {
	*d = Day{}
	if len(b) > 0 {
		*d, err = ParseDay(string(b))
	}
	return err
}

// AddDays returns the day n days later (earlier where n is negative).
func (d Day) AddDays(n int) Day { return dayOf(d.utc().AddDate(0, 0, n)) }

// AddWeeks returns the day n times seven days later.
func (d Day) AddWeeks(n int) Day { return d.AddDays(7 * n) }

// AddMonths returns the same date n calendar months later, clamped to the last day of a shorter month:
// 30 May 2025 + 9 months = 28 February 2026.
func (d Day) AddMonths(n int) Day {
	m := int(d.Month) - 1 + n
	year, month := d.Year+floorDiv(m, 12), time.Month(m-12*floorDiv(m, 12)+1)
	last := time.Date(year, month+1, 0, 0, 0, 0, 0, time.UTC).Day()
	return Day{year, month, min(d.Date, last)}
}

// Sub returns the days from e to d.
func (d Day) Sub(e Day) int { return int(d.utc().Sub(e.utc()).Hours() / 24) }

// WeeksSince returns the full weeks from e to d: week 4 begins on day 28. Before e it is negative (day -1 is week -1).
func (d Day) WeeksSince(e Day) int { return floorDiv(d.Sub(e), 7) }

// MonthsSince returns the full calendar months from e to d, with the clamping of AddMonths.
func (d Day) MonthsSince(e Day) int {
	n := (d.Year-e.Year)*12 + int(d.Month) - int(e.Month)
	for e.AddMonths(n).After(d) {
		n--
	}
	return n
}

// Before reports whether d lies before e.
func (d Day) Before(e Day) bool { return d.Compare(e) < 0 }

// After reports whether d lies after e.
func (d Day) After(e Day) bool { return d.Compare(e) > 0 }

// Compare is -1, 0 or 1, as d lies before, on or after e.
func (d Day) Compare(e Day) int { return d.utc().Compare(e.utc()) }

// Weekday is the day of the week.
func (d Day) Weekday() time.Weekday { return d.utc().Weekday() }

func floorDiv(a, b int) int {
	q := a / b
	if a%b != 0 && (a < 0) != (b < 0) {
		q--
	}
	return q
}
