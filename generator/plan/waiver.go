package plan

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
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

// mayWaive reports whether a criterion may be waived: any but swelling, pain and extension; these too where nothing that
// the step brings lands on the knee and no operation heals in it. A worn knee that never straightens would else stay in its
// first stage for good.
func (j judge) mayWaive(c Criterion) bool {
	return c.waivable() || stepWithoutImpact(j.p, j.c, j.event, c.Of, j.asOf)
}

// stepWithoutImpact reports whether a criterion's owner is a phase without impact, of a knee on which weeks are not counted from an
// operation and that had none since. Activities, and the end, are no such step.
func stepWithoutImpact(p *program.Program, c *client.Client, event *client.Event, of string, on unit.Day) bool {
	ph, _ := p.Phase(of)
	if ph == nil || event.Kind == client.Operation || lastOperation(c, event, on).Compare(event.Date) != 0 {
		return false
	}
	for i := range ph.Slots {
		for _, id := range ph.Slots[i].Choose {
			if e := p.Exercises[id]; e == nil || isImpact(e) {
				return false
			}
		}
	}
	return true
}

// wrongWaivers are waivers of what the program does not ask, and of what nobody may waive.
func wrongWaivers(p *program.Program, c *client.Client, event *client.Event, on unit.Day) (wrong []Mistake) {
	known, fixed := criterionIDs(p), notWaivable(p)
	for i := range c.Waived {
		w := &c.Waived[i]
		of, measure, _ := strings.Cut(w.Criterion, ".")
		m := Mistake{At: w.At.At("criterion")}
		switch {
		case !slices.Contains(known, unnumbered(w.Criterion)) && !slices.Contains(known, w.Criterion):
			m.What = fmt.Sprintf("there is no criterion %q in program %s", w.Criterion, p.ID)
			m.Instead = "write stage or activity, then the measure, as in running.hop-single.lsi; the worksheet lists them"
		case (!waivable(unnumbered(measure)) || fixed[w.Criterion]) && !stepWithoutImpact(p, c, event, of, on):
			m.What = fmt.Sprintf("%s cannot be waived: swelling, pain and extension come before any impact, and after an operation before any stage", w.Criterion)
			m.Instead = "take the waiver out; where a knee does not straighten, look at its swelling in another way and say so by effusion_method"
		default:
			continue
		}
		wrong = append(wrong, m)
	}
	return wrong
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
