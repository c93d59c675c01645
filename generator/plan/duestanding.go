package plan

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
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
		for _, way := range []struct {
			key, like string
			trials    []basis.Num[unit.Metres]
		}{
			{"anterior", "[58, 60, 59]", leg.of.Anterior},
			{"posteromedial", "[98, 101, 100]", leg.of.Posteromedial},
			{"posterolateral", "[92, 95, 94]", leg.of.Posterolateral},
		} {
			due.Values = append(due.Values, inCentimetres(DueValue{keyed(d, leg.name+"."+way.key, way.trials...), listed(way.trials), way.like}))
		}
		if side := unit.Side(leg.name); !d.c.StandingLeg(&client.YBalance{}, side).OK() {
			due.Values = append(due.Values, inCentimetres(DueValue{keyed(d, leg.name+".leg", leg.of.Leg), typed(leg.of.Leg), "88"}))
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
	for _, leg := range []struct {
		key  string
		seat basis.Num[unit.Metres]
	}{{"left.seat", last.Left.Seat}, {"right.seat", last.Right.Seat}} {
		due.Values = append(due.Values, inCentimetres(DueValue{keyed(d, leg.key, leg.seat), typed(leg.seat), "40"}))
	}
	return due
}

// inCentimetres takes the example away where the key is in another unit than it.
func inCentimetres(v DueValue) DueValue {
	if !strings.HasSuffix(v.Key, "_cm") {
		v.Like = ""
	}
	return v
}
