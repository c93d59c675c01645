package plan

import (
	"fmt"

	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Waivers (rules 16): the therapist waives a criterion by name, with a reason and a day. A waiver is a word about one state
// of the knee: the next operation of that knee ends it.

// lastOperation is the day from which words about the event's knee hold: of the event, or of a later operation of that knee.
func lastOperation(c *client.Client, event *client.Event, on unit.Day) unit.Day {
	last := event.Date
	for _, e := range c.Events {
		if e.Kind == client.Operation && sameKnee(e.Side, event.Side) && !e.Date.After(on) {
			last = later(last, e.Date)
		}
	}
	return last
}

// sameKnee reports whether two sides have a knee in common.
func sameKnee(a, b unit.Side) bool { return a == b || a == unit.Both || b == unit.Both }

// operatedBefore reports whether the event's knee was operated on before a day: then a waiver without a day may be of that time.
func operatedBefore(c *client.Client, event *client.Event, day unit.Day) bool {
	for _, e := range c.Events {
		if e.Kind == client.Operation && sameKnee(e.Side, event.Side) && e.Date.Before(day) {
			return true
		}
	}
	return false
}

// waives reports whether a waiver counts on a day.
func waives(w *client.Waived, c *client.Client, event *client.Event, on unit.Day) bool {
	last := lastOperation(c, event, on)
	if w.From.IsZero() {
		return !operatedBefore(c, event, last)
	}
	return !w.From.Before(last) && !w.From.After(on)
}

// oldWaivers asks about waivers that an operation has ended.
func oldWaivers(c *client.Client, event *client.Event, on unit.Day) (asked []Mistake) {
	last := lastOperation(c, event, on)
	for i := range c.Waived {
		w := &c.Waived[i]
		ask := func(what string) {
			asked = append(asked, Mistake{At: w.At.At("criterion"), Ask: true, What: what,
				Instead: "waive it anew, with from on or after that day and its reason, or take it out"})
		}
		switch {
		case w.From.IsZero() && operatedBefore(c, event, last):
			ask(fmt.Sprintf("the waiver of %s has no day, and this knee was operated on again on %s: it does not count", w.Criterion, last))
		case !w.From.IsZero() && w.From.Before(last):
			ask(fmt.Sprintf("the waiver of %s is of %s, before the operation of %s: it does not count", w.Criterion, w.From, last))
		}
	}
	return asked
}
