package words

import (
	"strconv"
	"strings"

	"paceleaf/generator/unit"
)

// Day writes a day that cannot be misread: Mon 6 April 2026. No day is no text.
func (w *Words) Day(d unit.Day) string { return w.day("date.full", d) }

// ShortDay writes 6 April, where the year stands nearby.
func (w *Words) ShortDay(d unit.Day) string { return w.day("date.short", d) }

// DayMonth writes Mon 6 April.
func (w *Words) DayMonth(d unit.Day) string { return w.day("date.day", d) }

// Weekday writes Monday.
func (w *Words) Weekday(d unit.Day) string {
	if d.IsZero() {
		return ""
	}
	return w.Say("weekday." + strings.ToLower(d.Weekday().String()))
}

func (w *Words) day(key string, d unit.Day) string {
	if d.IsZero() {
		return ""
	}
	return w.Say(key, "weekday", w.Say("weekday-short."+strings.ToLower(d.Weekday().String()[:3])), "date", strconv.Itoa(d.Date),
		"month", w.Say("month."+strings.ToLower(d.Month.String())), "year", strconv.Itoa(d.Year))
}
