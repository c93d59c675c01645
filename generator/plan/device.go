package plan

import (
	"cmp"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// deviceFor finds what a place offers for an exercise: the device that carries the load, or why the exercise cannot be
// done there. Of several devices of a kind the set-up's own is taken, else the first.
func deviceFor(e *program.Exercise, place *client.Place, setup *client.Setup) (device *client.Device, lacks basis.Said) {
	for _, need := range e.Needs {
		found := pick(place, need, setup)
		if found == nil {
			return nil, basis.Say("{a} has no {b}", place.ID, need)
		}
		if device == nil || !weighs(device) && weighs(found) {
			device = found
		}
	}
	return device, ""
}

func pick(place *client.Place, kind unit.DeviceKind, setup *client.Setup) (found *client.Device) {
	for i := range place.Devices {
		d := &place.Devices[i]
		if d.Kind != kind {
			continue
		}
		if setup != nil && setup.Device == d.ID {
			return d
		}
		if found == nil {
			found = d
		}
	}
	return found
}

// weighs reports whether a load can be set on the device.
func weighs(d *client.Device) bool {
	return len(d.Plates) > 0 || d.Step.OK() || d.Band()
}

// The one rounding of loads: down to what the device can be set to.
var (
	ByCut      = basis.Rule{Name: "cut to step", Sum: "down($1 ÷ $2) × $2", Source: "one rounding, toward caution"}
	byCutStack = basis.Rule{Name: "cut to step", Sum: "$3 + down(($1 − $3) ÷ $2) × $2", Source: "one rounding, toward caution"}
	byCutAddOn = basis.Rule{Name: "cut to step", Sum: "$3 + max(down(($1 − $3) ÷ $2) × $2, down(($1 − $3 − $4) ÷ $2) × $2 + $4)", Source: "one rounding, toward caution"}
	byPlates   = basis.Rule{Name: "step of the device: twice its smallest plate", Sum: "2 × $1", Source: "plates are loaded in pairs"}
	bySingle   = basis.Rule{Name: "step of the device: its smallest plate", Sum: "$1", Source: "plates are loaded one by one"}
)

// stepOf is the smallest change of load of a device.
func stepOf(place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	if d.Band() {
		return bandStep(place, d)
	}
	id := finding.DeviceID(place, d, "")
	if len(d.Plates) == 0 {
		return d.Step.Named(id + "step")
	}
	smallest := slices.MinFunc(d.Plates, func(a, b basis.Num[unit.Kilograms]) int { return cmp.Compare(a.Or(0), b.Or(0)) }).Named(id + "smallest-plate")
	if d.Single {
		return basis.Of1(id+"step", bySingle, func(p unit.Kilograms) unit.Kilograms { return p }, smallest)
	}
	return basis.Of1(id+"step", byPlates, func(p unit.Kilograms) unit.Kilograms { return unit.Kilograms(2 * float64(p)) }, smallest)
}

// cutToDevice is the heaviest setting of the device that is not above x; refused where even the lightest is.
func cutToDevice(id string, x basis.Num[unit.Kilograms], place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	step := stepOf(place, d)
	if heaviest, ok := d.Heaviest.Value(); ok && x.Or(0) > heaviest {
		x = basis.Of2(id+"-limit", byHeaviest, func(a, b unit.Kilograms) unit.Kilograms { return min(a, b) }, x, d.Heaviest.Named(finding.DeviceID(place, d, "heaviest")))
	}
	if len(d.Plates) > 0 || !d.Lightest.OK() {
		cut := basis.Cut(id, ByCut, unit.CutTo[unit.Kilograms], x, step)
		if v, ok := cut.Value(); ok && v <= 0 && !finding.Own(place, d).OK() {
			return basis.Refused[unit.Kilograms](id, ByCut, lighterThanPin, x.Step(), step.Step()) // nothing on a machine that weighs nothing
		}
		return cut
	}
	lightest := d.Lightest.Named(finding.DeviceID(place, d, "lightest"))
	if v, ok := x.Value(); ok && v < lightest.Or(0) {
		return basis.Refused[unit.Kilograms](id, byCutStack, lighterThanPin, x.Step(), lightest.Step())
	}
	if d.AddOn.OK() {
		addOn := d.AddOn.Named(finding.DeviceID(place, d, "add-on"))
		return basis.Of4(id, byCutAddOn, func(x, step, low, add unit.Kilograms) unit.Kilograms {
			plain := unit.CutTo(x-low, step)
			if x-low-add >= 0 {
				plain = max(plain, unit.CutTo(x-low-add, step)+add)
			}
			return low + plain
		}, x, step, lightest, addOn)
	}
	return basis.Of3(id, byCutStack, func(x, step, low unit.Kilograms) unit.Kilograms { return low + unit.CutTo(x-low, step) }, x, step, lightest)
}

// lighterThanPin is the reason of a load that a machine cannot be set to.
const lighterThanPin = "the load lies under the lightest weight of the machine"

var byHeaviest = basis.Rule{Name: "no more than the machine holds", Sum: "min($1, $2)", Source: "clinic.toml"}

// putOn is what is set at the device for a moved load, before the cut: without what moves with it, through its ratio.
func putOn(id string, moved basis.Num[unit.Kilograms], place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	if d.Ratio.OK() {
		return basis.Try2(id, formula.ByPinned, formula.Pinned, moved, d.Ratio.Named(finding.DeviceID(place, d, "ratio")))
	}
	if own := finding.Own(place, d); own.OK() {
		return basis.Try2(id, formula.ByPutOn, formula.PutOn, moved, own)
	}
	return moved
}

// perSide are the plates on each side, heaviest first; nil where the device has no plates, takes them one by one, or
// nothing is put on.
func perSide(plates unit.Kilograms, d *client.Device) (list []unit.Kilograms) {
	if len(d.Plates) == 0 || d.Single {
		return nil
	}
	sizes := make([]unit.Kilograms, len(d.Plates))
	for i, p := range d.Plates {
		sizes[i] = p.Or(0)
	}
	slices.Sort(sizes)
	slices.Reverse(sizes)
	left := unit.Kilograms(float64(plates) / 2)
	for _, size := range sizes {
		for left >= size-crumb {
			list = append(list, size)
			left -= size
		}
	}
	return list
}

// crumb forgives the last bits of a float when plates are counted; far below the smallest plate.
const crumb unit.Kilograms = 1e-6

// pinFor is the hole of the set-up that stops at an angle: the most bent pin not beyond it. 0: none.
func pinFor(setup *client.Setup, reach *unit.Reach) (pin int, at unit.Degrees) {
	if setup == nil || reach == nil {
		return 0, 0
	}
	for i, deg := range setup.Pins {
		if deg <= reach.MostBent && (pin == 0 || deg > at) {
			pin, at = i+1, deg
		}
	}
	return pin, at
}
