package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What a block asks otherwise than the block before it did, and why. The block before is worked out again as it was issued, from the
// program's files of today. It is told on the worksheet alone, and nothing reads it.

// SinceBlock holds two blocks against each other, the first week of each: only that one is due.
type SinceBlock struct {
	Block   *client.Block  // the one before
	Stage   *program.Phase // its stage, where it was another one
	Changes []DoseChange
}

// DoseChange is one exercise of one leg that is asked for otherwise, for the first time, or no more.
type DoseChange struct {
	Exercise *program.Exercise
	Side     unit.Side
	Role     string
	Before   *Prescription // nil: it is new
	Now      *Prescription // nil: it is asked no more
	Because  basis.Said    // of one that is new, why it was passed over before; of one that is gone, why now; else what holds its load
}

// sinceBlock is nil for a first block, and where the block before counted from another event or cannot be worked out again.
// asked is that block where its logs have been held against it already.
func (p *Plan) sinceBlock(asked *Plan) *SinceBlock {
	last := blockBefore(p.Client, p.Block)
	if last == nil {
		return nil
	}
	if asked == nil || asked.Block.Number != last.Number {
		asked, _ = compute(p.Clinic, p.Program, asIssued(p.Client, last))
	}
	if asked == nil || asked.Event.Date != p.Event.Date {
		return nil
	}
	since := &SinceBlock{Block: last}
	if was := asked.Stage.Set; was != nil && p.Stage.Set != nil && was.ID != p.Stage.Set.ID {
		since.Stage = was
	}
	for i := range p.Prescriptions {
		now := &p.Prescriptions[i]
		c := DoseChange{Exercise: now.Exercise, Side: now.Side, Role: now.Role, Before: asked.prescribed(now), Now: now}
		switch {
		case c.Before == nil:
			c.Because = asked.droppedFor(now)
		case sameDose(c.Before, now):
			continue
		case p.Symptoms.Action.Rank() > NoAction.Rank() && now.Role != "other":
			c.Because = p.Symptoms.Because
		}
		since.Changes = append(since.Changes, c)
	}
	for i := range asked.Prescriptions {
		if was := &asked.Prescriptions[i]; p.prescribed(was) == nil {
			since.Changes = append(since.Changes, DoseChange{Exercise: was.Exercise, Side: was.Side, Role: was.Role, Before: was, Because: p.droppedFor(was)})
		}
	}
	return since
}

func blockBefore(c *client.Client, b *client.Block) (last *client.Block) {
	for i := range c.Blocks {
		if o := &c.Blocks[i]; o.Number < b.Number {
			last = o
		}
	}
	return last
}

// prescribed is the prescription of the same exercise and leg.
func (p *Plan) prescribed(like *Prescription) *Prescription {
	for i := range p.Prescriptions {
		if r := &p.Prescriptions[i]; r.Exercise.ID == like.Exercise.ID && r.Side == like.Side {
			return r
		}
	}
	return nil
}

// droppedFor is why an exercise of a leg was passed over; empty where nobody asked for it.
func (p *Plan) droppedFor(like *Prescription) basis.Said {
	i := slices.IndexFunc(p.Dropped, func(d Dropped) bool { return d.Exercise == like.Exercise.ID && d.Side == like.Side })
	if i < 0 {
		return ""
	}
	return p.Dropped[i].Because
}

// sameDose reports whether two prescriptions ask for the same in their first weeks.
func sameDose(a, b *Prescription) bool {
	x, y := a.Weeks[0], b.Weeks[0]
	return sameWork(x.Dose, y.Dose) && x.FindYourWeight == y.FindYourWeight && x.Plates.Or(0) == y.Plates.Or(0) && sameReach(x.Range, y.Range) && a.Level == b.Level
}

// sameWork compares what a therapist would call the dose; effort in words, tempo and notes are none.
func sameWork(a, b program.Dose) bool {
	for _, pair := range [][2]*int{{a.Sets, b.Sets}, {a.Reps, b.Reps}, {a.RepsTo, b.RepsTo}, {a.Reserve, b.Reserve}, {a.Minutes, b.Minutes}, {a.Contacts, b.Contacts}, {a.Rounds, b.Rounds}, {a.TimesADay, b.TimesADay}} {
		if (pair[0] == nil) != (pair[1] == nil) || pair[0] != nil && *pair[0] != *pair[1] {
			return false
		}
	}
	return (a.HoldFor == nil) == (b.HoldFor == nil) && (a.HoldFor == nil || *a.HoldFor == *b.HoldFor)
}

func sameReach(a, b *unit.Reach) bool {
	return (a == nil) == (b == nil) && (a == nil || *a == *b)
}
