package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// What is set at a device for a load, where the body moves too (rules 19): its part is taken off first, what is left is put on.
// Shares, growth and steps have been reckoned with both together.

// put is what to put on or to pin in a week for a load as moved; refused where the device cannot be set so low.
func (l *loader) put(week int, load basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
	return l.putAs("", week, load)
}

// putAs is put of one set, whose name its ids carry.
func (l *loader) putAs(set string, week int, load basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
	id := l.weekID(week, set+"load")
	if l.body == nil {
		return cutToDevice(id, putOn(l.weekID(week, set+"put-on"), load, l.place, l.device), l.place, l.device)
	}
	added := l.body.Without(l.weekID(week, set+"added"), load)
	if !added.OK() {
		return added
	}
	if v := added.Or(0); !finding.Own(l.place, l.device).OK() && v < l.smallest().Or(0) {
		return basis.Of2(id, byBodyAlone, func(_, _ unit.Kilograms) unit.Kilograms { return 0 }, added, l.smallest())
	}
	return cutToDevice(id, putOn(l.weekID(week, set+"put-on"), added, l.place, l.device), l.place, l.device)
}

var byBodyAlone = basis.Rule{Name: "the body alone: what is left to add lies under the smallest weight", Sum: "0 × down($1 ÷ $2)", Source: "one rounding, toward caution"}

// smallest is the lightest weight that the device has.
func (l *loader) smallest() basis.Num[unit.Kilograms] {
	if l.device.Lightest.OK() && l.device.Lightest.Or(0) > 0 {
		return l.device.Lightest.Named(finding.DeviceID(l.place, l.device, "lightest"))
	}
	return stepOf(l.place, l.device)
}
