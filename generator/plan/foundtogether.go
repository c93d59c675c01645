package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
)

// togetherBefore is the week from which a client may look for a weight alone; before it only with the therapist (rules 24). Common
// practice, no source.
const togetherBefore = 6

// foundTogether is why an exercise is passed over in an early week away: there is no therapist to find its weight with, so the
// slot takes its next choice.
const foundTogether basis.Said = "its weight is not known there, and in the first weeks it is found only with the therapist"

// aloneEarly reports whether a week is one of the first and is spent away.
func (p *planner) aloneEarly(w Week) bool {
	return w.Away != nil && p.event.Kind != client.Start && w.SinceEvent < togetherBefore
}
