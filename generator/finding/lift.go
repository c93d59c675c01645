package finding

import (
	"cmp"
	"fmt"

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
	f.put(f.trusted(measured(l.Exercise+".lsi", t.LSI, d.On, append(operated.Doubts, other.Doubts...)...), t.LSI))
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
	leg.Moved = moved(name, s, place, device, d.On)
	toFailure := basis.Try2(name("to-failure"), formula.ByToFailure, formula.ToFailure, leg.Reps, leg.Reserve)
	leg.OneRM = basis.Try2(name("one-rm"), formula.OneRMRule(toFailure.Or(0)), formula.OneRM, leg.Moved, toFailure).On(d.On)
	if n, ok := toFailure.Value(); ok && n > formula.OneRMDoubtedAbove {
		leg.Doubts = append(leg.Doubts, f.doubt(leg.OneRM.ID(), "many-reps", fmt.Sprintf("more than %g repetitions to failure: the estimate is doubtful", float64(formula.OneRMDoubtedAbove))))
	}
	return leg
}

// moved is all that moves: what is put on with the carriage or bar, or through the ratio of a cable.
func moved(name func(string) string, s client.Set, place *client.Place, device *client.Device, on unit.Day) basis.Num[unit.Kilograms] {
	if s.Moved.OK() {
		return s.Moved.Named(name("moved")).On(on)
	}
	plates := s.Plates.Named(name("plates")).On(on)
	return Moved(name("moved"), plates, place, device).On(on)
}

// DeviceID names a number of a device. Its place belongs to the name: two places may call their machines alike.
func DeviceID(place *client.Place, device *client.Device, quantity string) string {
	return "device." + place.ID + "-" + device.ID + "." + quantity
}

// Moved is the moved load of what is put on or pinned at a device.
func Moved(id string, plates basis.Num[unit.Kilograms], place *client.Place, device *client.Device) basis.Num[unit.Kilograms] {
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
