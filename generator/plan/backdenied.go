package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// What keeps a week from counting beside the sets themselves. A knee that hurts on a day without a session is no calmer for it.

// unrestIn says what the client told against the knee on any day of a week, with a session or without.
func (b *backer) unrestIn(week int) basis.Said {
	for _, w := range b.Weeks {
		if w.Number != week {
			continue
		}
		for _, on := range daysFrom(w.Starts, 7) {
			if why, _ := unrest(b.found, on); why != "" {
				return why
			}
		}
	}
	return ""
}

// denied says what keeps the week after the completed one from being earned although that one was done: what the knee asks for now. A
// pause holds both legs (the other one goes on with no more than it has), anything less the event's knee. After the last week of the block
// before, it is the next block that waits.
func (b *backer) denied(r *Prescription, completed int) basis.Said {
	if completed == 0 || b.Plan != b.now && completed < b.Block.Weeks {
		return "" // the week after it is past, and its own line says how it went
	}
	next := 1
	if b.Plan == b.now {
		next = min(completed+1, b.Block.Weeks)
	}
	asked, because := b.now.Symptoms.in(next)
	ofKnee := r.Side == unit.Both || b.now.Event.Side == unit.Both || r.Side == b.now.Event.Side
	if asked == NoAction || asked.Rank() < Pause.Rank() && !ofKnee {
		return ""
	}
	return basis.Say("{a}: {b}", asked, because)
}
