package finding

import (
	"cmp"
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// lift takes one lift: the moved load, the estimated maximum of each leg, their symmetry.
func (f *finder) lift(d *client.TestDay, l *client.Lift) {
	ids := f.stem(l.Exercise, d, func(t *client.TestDay) bool {
		for i := range t.Lifts {
			if t.Lifts[i].Exercise == l.Exercise {
				return true
			}
		}
		return false
	})
	device, place := f.device(l)
	t := LiftTest{On: d.On, Exercise: l.Exercise, Place: place.ID, Range: l.Range}
	if device != nil {
		t.Device = device.ID
	}
	t.Left, t.Right, t.Both = f.set(ids, d, unit.Left, l.Left, place, device), f.set(ids, d, unit.Right, l.Right, place, device), f.set(ids, d, unit.Both, l.Both, place, device)
	operated, other := t.OfSide(f.operated()), t.OfSide(f.other())
	t.LSI = tenth(ids.id("", "lsi"), basis.Try2(ids.id("", "symmetry"), formula.BySymmetry, formula.Symmetry[unit.Kilograms], operated.OneRM, other.OneRM)).On(d.On)
	f.Lifts = append(f.Lifts, t)
	if d.On.Before(f.event.Date) {
		return
	}
	m := f.trusted(measured(l.Exercise+".lsi", t.LSI, d.On, append(operated.Doubts, other.Doubts...)...), t.LSI)
	m.Alike = Alike{Device: strings.TrimSuffix(t.Place+" "+t.Device, " ")}
	if l.Range != nil {
		m.Alike.Range = fmt.Sprintf("%g° to %g°", float64(l.Range.Straightest), float64(l.Range.MostBent))
	}
	f.put(m)
}

// device is where the lift was made: what the day says, else the set-up, else nothing known of the load but itself.
func (f *finder) device(l *client.Lift) (*client.Device, *client.Place) {
	setup := f.c.Setups[l.Exercise]
	at := cmp.Or(l.Place, setup.Place, f.c.Place)
	place := f.clinic.Place(at)
	if place == nil {
		return nil, &client.Place{ID: at}
	}
	return place.Device(cmp.Or(l.Device, setup.Device)), place
}

// set computes one leg's set.
func (f *finder) set(ids stem, d *client.TestDay, side unit.Side, s client.Set, place *client.Place, device *client.Device) LiftLeg {
	leg := LiftLeg{NotTested: s.NotTested, StoppedForPain: s.StoppedForPain}
	name := func(quantity string) string { return ids.id(string(side), quantity) }
	if s.StoppedForPain {
		leg.NotTested = "stopped for pain"
	} else if leg.NotTested == "" && !s.Done() {
		leg.NotTested = "not tested"
	}
	if leg.NotTested != "" {
		leg.OneRM = basis.Refused[unit.Kilograms](name("one-rm"), formula.ByOneRM, leg.NotTested)
		return leg
	}
	leg.Reps, leg.Reserve = s.Reps.Named(name("reps")).On(d.On), s.Reserve.Named(name("reserve")).On(d.On)
	way := f.ways[ids.thing]
	leg.Moved = moved(name, s, place, device, BodyOf(way.Body, f.c.Sex, f.mass(d)), d.On).On(d.On)
	toFailure := basis.Try2(name("to-failure"), formula.ByToFailure, formula.ToFailure, leg.Reps, leg.Reserve)
	leg.OneRM, leg.Span = way.OneRM(name("one-rm"), leg.Moved, toFailure).On(d.On), SpanOf(name("one-rm"), leg.Moved, toFailure)
	if n, ok := toFailure.Value(); ok && n > formula.OneRMDoubtedAbove {
		leg.Doubts = append(leg.Doubts, f.doubt(leg.OneRM.ID(), "many-reps", basis.Say("more than {a} repetitions to failure: the estimate is doubtful", float64(formula.OneRMDoubtedAbove))))
	}
	return leg
}

// moved is all that moves: what is put on with the carriage or bar, or through the ratio of a cable, and a part of the body.
func moved(name func(string) string, s client.Set, place *client.Place, device *client.Device, body *Body, on unit.Day) basis.Num[unit.Kilograms] {
	if s.Moved.OK() && body != nil {
		return body.With(name("moved"), s.Moved.Named(name("moved-added")).On(on))
	}
	if s.Stretched.OK() {
		if device == nil || !device.Band() {
			return basis.Refused[unit.Kilograms](name("moved"), byPlain, "the band was not measured: write rest_cm and two points of it in clinic.toml")
		}
		return BandPull(name("moved"), s.Stretched.Named(name("stretched")).On(on), place, device)
	}
	if s.Moved.OK() {
		return s.Moved.Named(name("moved"))
	}
	return Moved(name("moved"), s.Plates.Named(name("plates")).On(on), place, device, body)
}

// DeviceID names a number of a device. Its place belongs to the name: two places may call their machines alike.
func DeviceID(place *client.Place, device *client.Device, quantity string) string {
	return "device." + place.ID + "-" + device.ID + "." + quantity
}

// Moved is the moved load of what is put on or pinned at a device, with the part of the body that moves too; nil: none does.
func Moved(id string, plates basis.Num[unit.Kilograms], place *client.Place, device *client.Device, body *Body) basis.Num[unit.Kilograms] {
	if body != nil {
		return body.With(id, atDevice(id+"-added", plates, place, device))
	}
	return atDevice(id, plates, place, device)
}

// atDevice is what moves at a device for what is put on or pinned.
func atDevice(id string, plates basis.Num[unit.Kilograms], place *client.Place, device *client.Device) basis.Num[unit.Kilograms] {
	if device != nil && device.Ratio.OK() {
		return basis.Try2(id, formula.ByFelt, formula.Felt, plates, device.Ratio.Named(DeviceID(place, device, "ratio")))
	}
	if own := Own(place, device); own.OK() {
		return basis.Of2(id, formula.ByMovedLoad, formula.MovedLoad, plates, own)
	}
	return basis.Of1(id, byPlain, func(p unit.Kilograms) unit.Kilograms { return p }, plates)
}

var byPlain = basis.Rule{Name: "nothing else moves with it", Sum: "$1", Source: "device without carriage or bar"}

// Own is what a device moves besides the plates: its carriage or its bar.
func Own(place *client.Place, device *client.Device) basis.Num[unit.Kilograms] {
	switch {
	case device == nil:
		return basis.Num[unit.Kilograms]{}
	case device.Carriage.OK():
		return device.Carriage.Named(DeviceID(place, device, "carriage"))
	case device.Bar.OK():
		return device.Bar.Named(DeviceID(place, device, "bar"))
	}
	return basis.Num[unit.Kilograms]{}
}
