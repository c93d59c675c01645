package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// On a measured band the client stretches to a length instead of putting on a weight, where a set with that very band was tested.
// Without one the exercise is done as its dose says, without a length.

// onBand reports whether loads of this exercise are lengths of a band.
func (l *loader) onBand() bool { return l.device != nil && l.device.Band() && l.whyNot == "" }

// stretched puts the length of a week's load into its dose; outside the measured points there is none.
func (l *loader) stretched(w *WeekDose, load basis.Num[unit.Kilograms]) {
	w.Stretch = finding.BandLength(l.weekID(w.Week, "length"), load, l.place, l.device)
	if !w.Stretch.OK() {
		w.Why = w.Stretch.Why()
		return
	}
	w.Moved = finding.BandPull(l.weekID(w.Week, "moved"), w.Stretch, l.place, l.device)
	l.afterCut(w)
}

var byNoStep = basis.Rule{Name: "a band has no steps"}

// bandStep stands in for the step of a band.
func bandStep(place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	return basis.Given(finding.DeviceID(place, d, "step"), byNoStep, unit.Kilograms(0), "stretched as far as asked")
}
