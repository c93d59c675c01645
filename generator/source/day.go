package source

import (
	"fmt"
	"reflect"
	"time"

	"paceleaf/generator/unit"
)

// localDate is the name under which the library gives a date without an hour. Its instant stands in the zone of the
// machine, so only year, month and day are taken of it.
const localDate = "date-local"

// civil marks a day that was read by ourselves as one without an hour, as the library does.
var civil = time.FixedZone(localDate, 0)

// Years that a clinic writes, chosen: a birth to a plan; anything else is a slip of the finger.
const (
	firstYear = 1900
	lastYear  = 2100
)

func (w *walker) fillDay(f *field, v reflect.Value, raw any, at spot) {
	switch d := raw.(type) {
	case time.Time:
		w.day(v, d, at)
	case string:
		day, err := unit.ParseDay(d)
		if err == nil && w.json {
			w.day(v, time.Date(day.Year, day.Month, day.Date, 0, 0, 0, 0, civil), at)
			return
		}
		if err != nil {
			w.wrong(at, fmt.Sprintf("%s %q is a text", at.key, clipped(d)), f.sample(at))
			return
		}
		w.wrong(at, fmt.Sprintf("%s %q is in quotes", at.key, d), fmt.Sprintf("write %s = %s without quotes", at.key, day))
	default:
		w.wrongKind(f, raw, at)
	}
}

func (w *walker) day(v reflect.Value, t time.Time, at spot) {
	day := unit.Day{Year: t.Year(), Month: t.Month(), Date: t.Day()}
	switch {
	case t.Location().String() == "time-local":
		w.wrong(at, at.key+" is an hour", fmt.Sprintf("write year-month-day, as in %s = 2026-04-06", at.key))
	case t.Location().String() != localDate:
		w.wrong(at, at.key+" has an hour", fmt.Sprintf("write the day alone: %s = %s", at.key, day))
	case day.Year < firstYear || day.Year > lastYear:
		w.wrong(at, fmt.Sprintf("%s %s is not between %d and %d", at.key, day, firstYear, lastYear), "check the year")
	default:
		v.Set(reflect.ValueOf(day))
	}
}
