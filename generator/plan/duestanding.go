package plan

import (
	"cmp"
	"fmt"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// standing are the Y-balance and the rise from a seat: where a criterion measures them or they were made before; else, in a program
// that asks for hops, from the day on which the operated leg may do them.
func (d *duer) standing() (list []DueTest) {
	hops := d.measured(func(test, _ string) bool { return strings.HasPrefix(test, "hop-") })
	for _, due := range []DueTest{d.yBalance(), d.rise()} {
		asked := d.measured(func(test, _ string) bool { return test == due.ID })
		if len(asked) > 0 || !due.LastOn.IsZero() || len(hops) > 0 && due.Closed == "" {
			list = append(list, due)
		}
	}
	return list
}

func (d *duer) yBalance() DueTest {
	tester := d.tester()
	due := DueTest{ID: client.YBalanceTest, Closed: tester.closed(standingKinds, "", &yBalanceReach, nil)}
	var last client.YBalance
	for _, t := range d.days {
		if t.YBalance.Left.Done() || t.YBalance.Right.Done() {
			due.LastOn, last = t.On, t.YBalance
		}
	}
	for _, leg := range []struct {
		name string
		of   client.ReachSide
	}{{"left", last.Left}, {"right", last.Right}} {
		due.Values = append(due.Values, DueValue{leg.name + ".anterior_cm", listed(leg.of.Anterior), "[58, 60, 59]"},
			DueValue{leg.name + ".posteromedial_cm", listed(leg.of.Posteromedial), "[98, 101, 100]"},
			DueValue{leg.name + ".posterolateral_cm", listed(leg.of.Posterolateral), "[92, 95, 94]"})
		if side := unit.Side(leg.name); !d.c.StandingLeg(&client.YBalance{}, side).OK() {
			due.Values = append(due.Values, DueValue{leg.name + ".leg_cm", typed(leg.of.Leg), "88"})
		}
	}
	return due
}

func (d *duer) rise() DueTest {
	tester := d.tester()
	due := DueTest{ID: client.RiseTest, Closed: tester.closed(standingKinds, "", &riseReach, nil)}
	var last client.Rise
	for _, t := range d.days {
		if t.Rise.Left.Seat.OK() || t.Rise.Right.Seat.OK() {
			due.LastOn, last = t.On, t.Rise
		}
	}
	due.Values = []DueValue{{"left.seat_cm", typed(last.Left.Seat), "40"}, {"right.seat_cm", typed(last.Right.Seat), "40"}}
	return due
}

// setLike is a set that the client's own device can be set to, in the unit that it is marked in; empty where none is known. Three are
// left in reserve: so much is admitted from the first day on which the exercise is.
func (d *duer) setLike(e *program.Exercise) string {
	if e == nil {
		return ""
	}
	var setup *client.Setup
	if s, typed := d.c.Setups[e.ID]; typed {
		setup = &s
	}
	place := d.clinic.Place(cmp.Or(setupPlace(setup), d.c.Place))
	if place == nil {
		return ""
	}
	device, _ := deviceFor(e, place, setup)
	if device == nil || !weighs(device) || device.Band() {
		return ""
	}
	mark, factor := "kg", 1.0
	if device.Pounds {
		mark, factor = "lb", unit.KilogramsPerPound
	}
	return fmt.Sprintf("\"%g %s x 8+3\"", float64(unit.CutTo(unit.Kilograms(lightly(place, device)/factor), 0.01)), mark)
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
