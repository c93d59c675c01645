package plan

import (
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// What goes by the clock or by a count: it makes no load, and the worksheet tells what was told.

// setsOn is how many sets a list of lines tells of a day; sets of another load stand in a line of their own.
func setsOn(list []*told, on unit.Day) (n int) {
	for _, t := range list {
		if t.Done.On == on {
			n += len(t.Reps) + len(t.Time)
		}
	}
	return n
}

// counted is what a line tells besides loads; empty where it tells nothing.
func (t *told) counted() basis.Said {
	count := func(n basis.Num[unit.Count]) int { return int(n.Or(0)) }
	switch {
	case len(t.Time) > 0:
		return t.timed()
	case t.Contacts.OK():
		return basis.Say("{a} landings on {b}", count(t.Contacts), t.Done.On)
	case t.Rounds.OK():
		return basis.Say("{a} rounds on {b}", count(t.Rounds), t.Done.On)
	case t.Times.OK():
		return basis.Say("{a} times on {b}", count(t.Times), t.Done.On)
	}
	return ""
}

// timed is how long each set took, in minutes where all are whole ones.
func (t *told) timed() basis.Said {
	minutes := true
	for _, n := range t.Time {
		minutes = minutes && int(n.Or(0))%60 == 0
	}
	texts := make([]string, len(t.Time))
	for i, n := range t.Time {
		v := float64(n.Or(0))
		if minutes {
			v /= 60
		}
		texts[i] = strconv.FormatFloat(v, 'f', -1, 64)
	}
	if list := strings.Join(texts, ", "); minutes {
		return basis.Say("{a} min on {b}", list, t.Done.On)
	} else {
		return basis.Say("{a} s on {b}", list, t.Done.On)
	}
}
