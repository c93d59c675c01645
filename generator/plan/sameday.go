package plan

import (
	"fmt"
	"reflect"

	"paceleaf/generator/unit"
)

// Two instructions of one author and one day (rules 6): nobody can say which is the later, so the strictest of them holds,
// and the therapist is asked.

// saidTogether asks about instructions of one kind that one author gave on one day, that run together on a day from then on, and
// that do not say the same.
func (l *limits) saidTogether(then unit.Day) (asked []Mistake) {
	for i, b := range l.windows {
		for _, a := range l.windows[:i] {
			if !a.beside(b, then) {
				continue
			}
			for _, w := range []*window{a, b} { // at the line of each
				asked = append(asked, Mistake{At: w.At.At("kind"), Ask: true,
					What:    fmt.Sprintf("one of two instructions of %s that %s gave on %s: neither is the later, so the strictest of both holds", w.Kind, w.Name, w.Said),
					Instead: "end the earlier one by lifts, or keep one of the two"})
			}
		}
	}
	return asked
}

// beside reports whether two windows are different instructions of one kind, author and day that run together on or after a day.
func (w *window) beside(o *window, then unit.Day) bool {
	if w.class != instructed || o.class != instructed || w.author != o.author || w.Said != o.Said || w.Kind != o.Kind {
		return false
	}
	both := later(later(w.From, o.From), then)
	return w.covers(both) && o.covers(both) && w.meets(o) && !reflect.DeepEqual(w.Allow, o.Allow)
}

// meets reports whether two windows of one kind speak of one exercise: without a narrower kind they speak of all.
func (w *window) meets(o *window) bool {
	return len(w.On) == 0 || len(o.On) == 0 || o.speaksOf(w.Kind, w.On)
}
