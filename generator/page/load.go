package page

import (
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// stacks are the machines on which a pin chooses the weight.
var stacks = []string{"-stack", "cable", "stack"}

// loadOf is what to put on or to pin, in the unit that the equipment is marked in; "" where the exercise has no load.
func (h handout) loadOf(p plan.Prescription, d plan.WeekDose) string {
	plates, ok := d.Plates.Value()
	w := h.w
	lb := marked(p.Device)
	switch {
	case d.FindYourWeight || !ok:
		return ""
	case plates == 0 && p.Body != nil:
		return w.Say("load.body-alone")
	case plates == 0:
		return w.Say("load.none")
	case len(d.PerSide) > 0:
		return w.Say("load.each-side", "load", h.load(total(d.PerSide), lb))
	case p.Device != nil && onStack(p.Device.Kind):
		return w.Say("load.stack", "load", h.load(plates, lb))
	}
	return h.load(plates, lb)
}

func total(plates []unit.Kilograms) (sum unit.Kilograms) {
	for _, p := range plates {
		sum += p
	}
	return sum
}

func onStack(kind unit.DeviceKind) bool {
	for _, s := range stacks {
		if strings.HasSuffix(string(kind), s) {
			return true
		}
	}
	return false
}

// load writes a weight in kilograms or pounds.
func (h handout) load(kg unit.Kilograms, pounds bool) string {
	if pounds {
		return h.w.Say("load.lb", "load", h.w.Number(float64(kg)/unit.KilogramsPerPound, 1))
	}
	return h.w.Say("load.kg", "load", h.w.Number(float64(kg), 2))
}

// plates lists the plates of each side, where there is more than one.
func (h handout) plates(p plan.Prescription, d plan.WeekDose) string {
	if len(d.PerSide) < 2 || d.FindYourWeight || len(d.Each) > 0 {
		return ""
	}
	lb := marked(p.Device)
	one := make([]string, len(d.PerSide))
	for i, kg := range d.PerSide {
		one[i] = h.load(kg, lb)
	}
	return h.w.Say("load.plates", "plates", strings.Join(one, " + "), "all", h.load(total(d.PerSide)*2, lb))
}

func marked(d *plan.Device) bool { return d != nil && d.Pounds }

// setUp is how to set the machine, how fast to move, and what is not counted.
func (h handout) setUp(m move) Node {
	w := h.w
	facts := []Fact{fact(w.Say("setup.machine"), h.w.Join(h.equipment(m)))}
	if s := m.setup(); s != nil {
		facts = append(facts, fact(w.Say("setup.seat"), s.Seat), fact(w.Say("setup.back"), s.Back), fact(w.Say("setup.pad"), s.Pad))
	}
	facts = append(facts,
		fact(w.Say("setup.not-counted"), h.notCounted(m)),
		fact(w.Say("setup.tempo"), h.tempo(m)))
	return factual("setup", facts...)
}

func (m move) setup() *plan.Setup {
	for _, p := range m.Legs {
		if p.Setup != nil {
			return p.Setup
		}
	}
	return nil
}

func (h handout) machine(d *plan.Device) string {
	switch {
	case d == nil:
		return ""
	case d.Name != "":
		return d.Name
	case h.w.Has("device." + string(d.Kind)):
		return h.w.Say("device." + string(d.Kind))
	}
	return string(d.Kind)
}

// notCounted is what moves too but is not part of the number in the box.
func (h handout) notCounted(m move) string {
	d := m.Device
	if d == nil || !m.anyWeek(func(d plan.WeekDose) bool { return d.Plates.OK() || d.FindYourWeight }) {
		return ""
	}
	if kg, ok := d.Carriage.Value(); ok && kg > 0 {
		return h.w.Say("setup.carriage", "load", h.load(kg, d.Pounds))
	}
	if kg, ok := d.Bar.Value(); ok && kg > 0 {
		return h.w.Say("setup.bar", "load", h.load(kg, d.Pounds))
	}
	return ""
}

// tempo is how fast: 2 s up, hold 1 s, 3 s down. What is 0 is not said, nor a hold where the dose has another one.
func (h handout) tempo(m move) string {
	lift, hold, lower := m.Legs[0].Slot.Speed(m.Exercise)
	if m.anyWeek(func(d plan.WeekDose) bool { return d.Dose.HoldFor != nil && *d.Dose.HoldFor != hold }) {
		hold = 0
	}
	var parts []string
	for _, t := range []struct {
		key string
		s   unit.Seconds
	}{{"lift", lift}, {"hold", hold}, {"lower", lower}} {
		if t.s > 0 {
			parts = append(parts, h.w.Say("tempo."+t.key, "time", h.time(t.s)))
		}
	}
	return strings.Join(parts, ", ")
}
