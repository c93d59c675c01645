package page

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/plan"
)

// passedOver are the choices of the block that an id asks about: an exercise, and its leg and week where the id names them.
func passedOver(p *plan.Plan, id string) (asked []plan.Dropped) {
	for _, d := range p.Dropped {
		if aboutDropped(d, id) {
			asked = append(asked, d)
		}
	}
	return asked
}

func aboutDropped(d plan.Dropped, id string) bool {
	rest, is := strings.CutPrefix(id+".", d.Exercise+".")
	if !is {
		return false
	}
	for _, part := range strings.Split(rest, ".") {
		switch part {
		case string(d.Side), fmt.Sprintf("w%d", d.Week), "load", "":
		default:
			return false
		}
	}
	return true
}

// whyPassed says why an exercise has no number in this block: it is paused, or was passed over for another choice.
func whyPassed(p *plan.Plan, id string, asked []plan.Dropped) []string {
	lines := []string{id + " — there is no number: the exercise is not in this block"}
	paused := false
	for _, d := range asked {
		state := "passed over"
		if d.Paused {
			state, paused = "PAUSED", true
		}
		if line := fmt.Sprintf("  %s, week %d: %s; %s", d.Side, d.Week, state, d.Because); !slices.Contains(lines, line) {
			lines = append(lines, line)
		}
	}
	if paused {
		lines = append(lines, waitsFor(p)...)
	}
	return lines
}

// waitsFor says what must happen before a pause ends.
func waitsFor(p *plan.Plan) []string {
	waits := "a later test day that looks at swelling and pain and asks for no pause"
	if p.Symptoms.Action == plan.Contact {
		waits = "the responsible clinician, then " + waits
	}
	return []string{"  waits for " + waits, "  to write that day: paceleaf start test " + p.Client.Code}
}

// pausedOf is the id under which the pause of an exercise is listed.
func pausedOf(d plan.Dropped) string { return d.Exercise + "." + string(d.Side) }
