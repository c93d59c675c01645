package plan

import (
	"cmp"
	"fmt"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What the client logged is held against the page that asked for it: the plan of that block as it was issued, worked out
// again. So a logged set has the range, the device and the place of its week.

// told is one line of a log with what was asked for on that day.
type told struct {
	client.DoneSet
	asked  *Prescription
	dose   *WeekDose // of the week; nil where nothing was asked
	week   int       // of the block, from 1
	place  *client.Place
	device *client.Device
	nth    int    // which line of that day, exercise and leg, from 1
	spoilt string // why no load may come from it
}

// logs are what loads may come from: what the logs of the block before say, written up to this block's first day.
type logs struct {
	asked *Plan // of the block before, as it was issued; nil where no log tells of it
	told  []told
}

// Suspicious loads: further than this from what was asked they are asked about, and no load comes from one far above.
// Common practice, no source.
const (
	farAbove = 1.25
	farBelow = 0.5
)

// asIssued is the client as the page of a block was made: nothing that came to light after its first day.
func asIssued(c *client.Client, b *client.Block) *client.Client {
	then := *c
	then.Holds = nil
	then.Blocks = slices.DeleteFunc(slices.Clone(c.Blocks), func(o client.Block) bool { return o.Number > b.Number })
	then.Tests = slices.DeleteFunc(slices.Clone(c.Tests), func(d client.TestDay) bool { return d.On.After(b.Starts) })
	then.Logs = slices.DeleteFunc(slices.Clone(c.Logs), func(l client.Log) bool { return l.Written.After(b.Starts) })
	return &then
}

// before is the block before another one, which logs tell of; nil where there is none.
func before(c *client.Client, b *client.Block) *client.Block {
	var last *client.Block
	for i := range c.Blocks {
		if o := &c.Blocks[i]; o.Number < b.Number && slices.ContainsFunc(c.Logs, func(l client.Log) bool { return l.Block == o.Number }) {
			last = o
		}
	}
	return last
}

// issued works out again the plan of the block before, as it was issued; nil where no log tells of it.
func issued(clinic *client.Clinic, p *program.Program, c *client.Client, b *client.Block) (*Plan, []Mistake) {
	last := before(c, b)
	if last == nil {
		return nil, nil
	}
	plan, _ := compute(clinic, p, asIssued(c, last))
	if plan == nil {
		return nil, []Mistake{{At: last.At, Ask: true, What: fmt.Sprintf("what block %d asked cannot be worked out again: its logs give no load", last.Number), Instead: "see what is wrong with it; the loads come from lifts alone"}}
	}
	return plan, nil
}

// gatherLogs holds the logs of the block before against what it asked.
func gatherLogs(clinic *client.Clinic, p *program.Program, c *client.Client, b *client.Block) (asked *Plan, list []told, wrong []Mistake) {
	asked, wrong = issued(clinic, p, c, b)
	list, more := tell(asked, nil, c, b.Starts)
	return asked, list, append(wrong, more...)
}

// tell holds the lines of the logs of a plan's block against it; first is the page that was in force before something came to
// light, nil where nothing did.
func tell(asked *Plan, first *firstPage, c *client.Client, written unit.Day) (list []told, wrong []Mistake) {
	if asked == nil {
		return nil, nil
	}
	lines := map[string]int{}
	for _, s := range c.DoneUpTo(written) {
		if s.Block != asked.Block.Number || s.Done.On.Before(asked.Event.Date) {
			continue
		}
		t := told{DoneSet: s, week: s.Done.On.WeeksSince(asked.Block.Starts) + 1}
		key := fmt.Sprint(s.Do, s.Side, s.Done.On)
		lines[key]++
		t.nth = lines[key]
		t.find(asked)
		if t.dose == nil && first.inForce(t.Done.On) {
			t.find(first.page())
		}
		wrong = append(wrong, t.judge()...)
		list = append(list, t)
	}
	slices.SortStableFunc(list, func(a, b told) int { return a.Done.On.Compare(b.Done.On) })
	return list, wrong
}

// find looks up what was asked, and where it was done.
func (t *told) find(asked *Plan) {
	if asked == nil {
		return
	}
	for i := range asked.Prescriptions {
		r := &asked.Prescriptions[i]
		if r.Exercise.ID != t.Do || r.Side != t.Side {
			continue
		}
		for j := range r.Weeks {
			if r.Weeks[j].Week == t.week && t.dose == nil {
				t.asked, t.dose, t.device = r, &r.Weeks[j], r.Device
			}
		}
	}
	if t.week >= 1 && t.week <= len(asked.Weeks) {
		t.place = asked.Weeks[t.week-1].Place
	}
	if t.Place != "" {
		t.place = asked.Clinic.Place(t.Place)
	}
	if t.Device != "" && t.place != nil {
		t.device = t.place.Device(t.Device)
	}
}

// judge asks about what was not asked for, and refuses a load in the wrong unit.
func (t *told) judge() (wrong []Mistake) {
	at := t.Done.At
	add := func(ask bool, what, instead string) {
		wrong = append(wrong, Mistake{At: at, Ask: ask, What: what, Instead: instead})
		t.spoilt = cmp.Or(t.spoilt, what)
	}
	load, loaded := t.Load.Value()
	switch {
	case t.dose == nil:
		add(true, fmt.Sprintf("%s, %s, was not asked for on %s: no load comes from it", t.Do, t.Side, t.Done.On), "see whether day, exercise and leg are right")
	case !loaded:
		t.spoilt = "no load was told"
	case t.device == nil || t.place == nil || !weighs(t.device) || t.device.Band():
		add(true, fmt.Sprintf("%s has a load, and no weight can be set on its device", t.Do), "write place and device, or take the load out")
	case t.device.Pounds != t.InLb.OK():
		add(false, fmt.Sprintf("%s is marked in %s, and the load is told in %s", t.device.ID, markedIn(t.device.Pounds), markedIn(t.InLb.OK())), fmt.Sprintf("write %q as it stands on the device", markedIn(t.device.Pounds)))
	case !settable(load, t.asked.Exercise, t.place, t.device):
		add(true, fmt.Sprintf("%s cannot be set to %s: no load comes from it", t.device.ID, t.Load.Step().Typed), "see whether the number, the unit and the device are right")
	case t.dose.Plates.OK() && float64(load) > farAbove*float64(t.dose.Plates.Or(0)):
		add(true, fmt.Sprintf("%s of %s: %s is far above what was asked: no load comes from it", t.Do, t.Done.On, t.Load.Step().Typed), "see whether the number is right; a lift on a test day settles it")
	case t.dose.Plates.OK() && len(t.dose.Each) == 0 && float64(load) < farBelow*float64(t.dose.Plates.Or(0)):
		wrong = append(wrong, Mistake{At: at, Ask: true, What: fmt.Sprintf("%s of %s: %s is far below what was asked", t.Do, t.Done.On, t.Load.Step().Typed), Instead: "see whether the number is right, and ask why"})
	}
	return wrong
}

func markedIn(pounds bool) string {
	if pounds {
		return "lb"
	}
	return "kg"
}

// unknownLogged are exercises of logs that the program does not have, and legs that an exercise does not have.
func unknownLogged(p *program.Program, c *client.Client) (wrong []Mistake) {
	known := func(id string, at basis.Origin) *program.Exercise {
		e := p.Exercises[id]
		if e == nil && id != "" {
			wrong = append(wrong, Mistake{At: at.At("do"), What: fmt.Sprintf("there is no exercise %q in program %s", id, p.ID), Instead: p.Meant(id)})
		}
		return e
	}
	for i := range c.Logs {
		for j := range c.Logs[i].Done {
			d := &c.Logs[i].Done[j]
			e := known(d.Do, d.At)
			if e == nil {
				continue
			}
			if one := e.Side == program.OneLeg; one && d.Both != nil || !one && (d.Left != nil || d.Right != nil) {
				legs := map[bool]string{true: `"left" and "right"`, false: `"both"`}[one]
				wrong = append(wrong, Mistake{At: d.At, What: fmt.Sprintf("%s is not done by that leg", d.Do), Instead: "write it under " + legs})
			}
		}
		for _, n := range c.Logs[i].NotDone {
			known(n.Do, n.At)
		}
	}
	return wrong
}
