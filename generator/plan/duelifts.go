package plan

import (
	"cmp"
	"fmt"
	"maps"
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
				if alone := d.alone(e); alone != "" {
					add(alone)
				}
				break
			}
		}
	}
	for _, t := range d.days {
		for _, l := range t.Lifts {
			add(l.Exercise)
			if alone := d.alone(d.p.Exercises[l.Exercise]); alone != "" {
				add(alone)
			}
		}
	}
	for _, id := range ids {
		list = append(list, d.lift(id))
	}
	return list
}

// alone is the lift of each leg that a lift with both legs waits for (rules 25): on the same device, of the same muscle first. An
// easier or harder neighbour comes before any other; empty where the program has none.
func (d *duer) alone(both *program.Exercise) string {
	if both == nil || both.Side != program.BothLegs || both.ResistedBy != program.External {
		return ""
	}
	device := d.deviceOf(both)
	if device == nil || !weighs(device) {
		return ""
	}
	fits := func(id string) bool {
		e := d.p.Exercises[id]
		return e != nil && e.Side == program.OneLeg && e.ResistedBy == program.External && e.Trains[0] == both.Trains[0] && d.deviceOf(e) == device
	}
	for _, id := range append([]string{both.Harder, both.Easier}, slices.Sorted(maps.Keys(d.p.Exercises))...) {
		if fits(id) {
			return id
		}
	}
	return ""
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
		due.Easy = d.toFailure(e)
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

// setLike is a set that the client's own device can be set to, in the unit that it is marked in; empty where none is known. Three are
// left in reserve: so much is admitted from the first day on which the exercise is.
func (d *duer) setLike(e *program.Exercise) string {
	place, device := d.where(e)
	if device == nil || !weighs(device) || device.Band() {
		return ""
	}
	mark, factor := "kg", 1.0
	if device.Pounds {
		mark, factor = "lb", unit.KilogramsPerPound
	}
	return fmt.Sprintf("\"%g %s x 8+3\"", float64(unit.CutTo(unit.Kilograms(lightly(place, device)/factor), 0.01)), mark)
}

// where is the place and the device on which the client does an exercise; no device where none is known.
func (d *duer) where(e *program.Exercise) (*client.Place, *client.Device) {
	if e == nil {
		return nil, nil
	}
	var setup *client.Setup
	if s, typed := d.c.Setups[e.ID]; typed {
		setup = &s
	}
	place := d.clinic.Place(cmp.Or(setupPlace(setup), d.c.Place))
	if place == nil {
		return nil, nil
	}
	device, _ := deviceFor(e, place, setup)
	return place, device
}

func (d *duer) deviceOf(e *program.Exercise) *client.Device {
	_, device := d.where(e)
	return device
}

func setupPlace(s *client.Setup) string {
	if s == nil {
		return ""
	}
	return s.Place
}

// lightly is a light setting of a device: two steps above the lightest, or the lightest where the device ends before.
func lightly(place *client.Place, d *client.Device) float64 {
	low, step := d.Lightest.Or(0), stepOf(place, d).Or(0)
	light := low + 2*step
	if heaviest, ok := d.Heaviest.Value(); ok && light > heaviest {
		light = low
	}
	return float64(light)
}
