package plan

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A lift of a test day and its device (rules 9, 24). A lift that names none was made on the only one that fits; where several fit,
// the therapist is asked. A weight that the device cannot be set to is a slip, and no load comes from it, as from a log.

// mostUnsaid is the weight above which a device must say what it holds. Common practice, no source.
const mostUnsaid unit.Kilograms = 300

// liftsOnDevices returns the client with every lift on its device and without weights that cannot be set, and a question for each.
func liftsOnDevices(clinic *client.Clinic, p *program.Program, c *client.Client) (*client.Client, []Mistake) {
	kept := *c
	kept.Tests = slices.Clone(c.Tests)
	s := settler{clinic: clinic, c: c}
	for i := range kept.Tests {
		d := &kept.Tests[i]
		d.Lifts = slices.Clone(d.Lifts)
		for j := range d.Lifts {
			if e := p.Exercises[d.Lifts[j].Exercise]; e != nil {
				s.settle(e, &d.Lifts[j])
			}
		}
	}
	return &kept, s.asked
}

// settler holds lifts against the devices of a clinic.
type settler struct {
	clinic *client.Clinic
	c      *client.Client
	asked  []Mistake
}

func (s *settler) settle(e *program.Exercise, l *client.Lift) {
	setup := s.c.Setups[l.Exercise]
	place := s.clinic.Place(cmp.Or(l.Place, setup.Place, s.c.Place))
	if place == nil || !l.Left.Done() && !l.Right.Done() && !l.Both.Done() {
		return
	}
	if cmp.Or(l.Device, setup.Device) == "" {
		l.Device = s.onlyOne(e, l, place)
	}
	device := place.Device(cmp.Or(l.Device, setup.Device))
	if device == nil || !weighs(device) || device.Band() {
		return
	}
	for _, leg := range []struct {
		name string
		set  *client.Set
	}{{"left", &l.Left}, {"right", &l.Right}, {"both", &l.Both}} {
		why := cannotSet(leg.set, e, place, device)
		if why == "" {
			continue
		}
		s.asked = append(s.asked, Mistake{At: l.At.At(leg.name), Ask: true, What: fmt.Sprintf("%s, %s: %s: no load comes from it", l.Exercise, leg.name, why),
			Instead: "see whether the number, the unit and the device are right, here and in clinic.toml"})
		*leg.set = client.Set{At: leg.set.At, NotTested: basis.Say(refusedTest, why)}
	}
}

// onlyOne is the only device of a place that fits an exercise; empty where there is none, and where several ask for a word.
func (s *settler) onlyOne(e *program.Exercise, l *client.Lift, place *client.Place) string {
	var fit []string
	for i := range place.Devices {
		if d := &place.Devices[i]; weighs(d) && slices.Contains(e.Needs, d.Kind) {
			fit = append(fit, d.ID)
		}
	}
	switch len(fit) {
	case 0:
		return ""
	case 1:
		return fit[0]
	}
	s.asked = append(s.asked, Mistake{At: l.At.At("exercise"), Ask: true, What: fmt.Sprintf("%s does not say on which device it was lifted, and several of %s fit (%s): no load comes from it", l.Exercise, place.ID, strings.Join(fit, ", ")),
		Instead: fmt.Sprintf("write device = %q, or another of them, here or under [setup.%s]", fit[0], l.Exercise)})
	return ""
}

// cannotSet says why a typed weight cannot have been set on a device; empty where it can. All that was moved may have been weighed, and
// is held against what the device moves by itself and what it holds, not against its steps.
func cannotSet(s *client.Set, e *program.Exercise, place *client.Place, device *client.Device) basis.Said {
	put, typed := s.Plates, typedAs(s.Plates)
	if !put.OK() && s.Moved.OK() {
		typed = typedAs(s.Moved) + " moved"
		if put = putOn("", s.Moved, place, device); !put.OK() {
			return basis.Say("{a} moves {b} kg by itself, and {c} is typed", device.ID, shown(finding.Own(place, device).Or(0)), typed)
		}
	}
	load, ok := put.Value()
	heaviest, known := device.Heaviest.Value()
	switch {
	case !ok:
		return ""
	case known && load > heaviest+crumb:
		return basis.Say("{a} holds {b} kg at most, and {c} is typed", device.ID, shown(heaviest), typed)
	case !known && load > mostUnsaid:
		return basis.Say("{a} does not say what it holds (heaviest_kg), and {b} is typed", device.ID, typed)
	case load > 0 && load < device.Lightest.Or(0)-crumb, (load == 0 || s.Plates.OK()) && !settable(load, e, place, device):
		return basis.Say("{a} cannot be set to {b}", device.ID, typed)
	}
	return ""
}

// typedAs is a weight as it was typed.
func typedAs(n basis.Num[unit.Kilograms]) string {
	if n.Step() == nil {
		return ""
	}
	return n.Step().Typed
}

// settable reports whether a weight can be set on a device.
func settable(load unit.Kilograms, e *program.Exercise, place *client.Place, device *client.Device) bool {
	if load == 0 {
		return finding.Own(place, device).OK() || e.MovesBody != ""
	}
	cut := cutToDevice("", basis.Typed(load+crumb, "", basis.Origin{}), place, device)
	return cut.OK() && max(load-cut.Or(0), cut.Or(0)-load) <= 2*crumb
}
