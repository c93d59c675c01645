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
	// Because is of one that is new why it was passed over before, of one that is gone why now; else what the symptoms of that knee are,
	// where they ask for something.
	Because basis.Said
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
		case late(now) && (c.Before == nil || late(c.Before)):
			continue // the first week asks for it in neither block
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

// late reports whether an exercise has no first week: it begins, or is first chosen, in a later one.
func late(r *Prescription) bool { return r.Weeks[0].Week > 1 }

// prescribed is the prescription of the same exercise and leg: of several that of the same slot, else the first.
func (p *Plan) prescribed(like *Prescription) (first *Prescription) {
	for i := range p.Prescriptions {
		r := &p.Prescriptions[i]
		switch {
		case r.Exercise.ID != like.Exercise.ID || r.Side != like.Side:
		case r.slotID() == like.slotID():
			return r
		case first == nil:
			first = r
		}
	}
	return first
}

func (r *Prescription) slotID() string {
	if r.Slot == nil {
		return ""
	}
	return r.Slot.ID
}

// droppedFor is why an exercise of a leg was passed over; empty where nobody asked for it.
func (p *Plan) droppedFor(like *Prescription) basis.Said {
	i := slices.IndexFunc(p.Dropped, func(d Dropped) bool { return d.Exercise == like.Exercise.ID && d.Side == like.Side })
	if i < 0 {
		return ""
	}
	return p.Dropped[i].Because
}

// sameDose reports whether two prescriptions ask for the same in their first weeks, and in the first week of the block.
func sameDose(a, b *Prescription) bool {
	x, y := a.Weeks[0], b.Weeks[0]
	return late(a) == late(b) && a.Level == b.Level && sameWork(x.Dose, y.Dose) && x.FindYourWeight == y.FindYourWeight && sameAs(x.Range, y.Range) &&
		sameNum(x.Plates, y.Plates) && sameNum(x.HoldAt, y.HoldAt) && sameNum(x.Stretch, y.Stretch) && sameNum(x.Pressure, y.Pressure) && slices.EqualFunc(x.Each, y.Each, sameSet)
}

func sameSet(a, b SetDose) bool { return sameAs(a.Reps, b.Reps) && sameNum(a.Plates, b.Plates) }

// sameNum reports whether two numbers are alike: what is missing is like nothing but what is missing too.
func sameNum[Q unit.Quantity](a, b basis.Num[Q]) bool {
	x, known := a.Value()
	y, too := b.Value()
	return known == too && (!known || x == y)
}

// sameWork compares what a therapist would call the dose; effort in words, tempo and notes are none.
func sameWork(a, b program.Dose) bool {
	for _, pair := range [][2]*int{{a.Sets, b.Sets}, {a.Reps, b.Reps}, {a.RepsTo, b.RepsTo}, {a.Reserve, b.Reserve}, {a.Minutes, b.Minutes}, {a.Contacts, b.Contacts}, {a.Rounds, b.Rounds}, {a.TimesADay, b.TimesADay}} {
		if !sameAs(pair[0], pair[1]) {
			return false
		}
	}
	return sameAs(a.HoldFor, b.HoldFor) && sameAs(a.WorkFor, b.WorkFor)
}
