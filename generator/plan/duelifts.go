package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// The lifts that give the loads of the recorded phase, and those that were made before.

// lifts are those made before, and the exercises of the recorded phase whose load comes from a lift.
func (d *duer) lifts() (list []DueTest) {
	var ids []string
	add := func(id string) {
		if !slices.Contains(ids, id) {
			ids = append(ids, id)
		}
	}
	phase := judge{p: d.p, c: d.c, event: d.event, asOf: d.on}.recordedPhase()
	for _, s := range phase.Slots {
		for _, id := range s.Choose {
			if e := d.p.Exercises[id]; e.ResistedBy == program.External && d.limits.permits(e, []unit.Day{d.on}).allowed {
				add(id)
				break
			}
		}
	}
	for _, t := range d.days {
		for _, l := range t.Lifts {
			add(l.Exercise)
		}
	}
	for _, id := range ids {
		list = append(list, d.lift(id))
	}
	return list
}

func (d *duer) lift(id string) DueTest {
	due := DueTest{ID: id}
	var last client.Lift
	for _, t := range d.days {
		for _, l := range t.Lifts {
			if l.Exercise == id {
				due.LastOn, last = t.On, l
			}
		}
	}
	e := d.p.Exercises[id]
	like := d.setLike(e)
	if e != nil && e.Side == program.BothLegs {
		due.Values = []DueValue{{"both", set(last.Both), like}}
	} else {
		due.Values = []DueValue{{"left", set(last.Left), like}, {"right", set(last.Right), like}}
	}
	if e != nil {
		if left := d.limits.permits(e, []unit.Day{d.on}); !left.allowed {
			due.Closed = left.because
		}
	}
	return due
}

// set writes a set short.
func set(s client.Set) string {
	if !s.Done() || !s.Plates.OK() || !s.Reserve.OK() {
		return ""
	}
	return fmt.Sprintf("%q", fmt.Sprintf("%s x %s+%s", s.Plates.Step().Typed, s.Reps.Step().Typed, s.Reserve.Step().Typed))
}
