package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// equipment names all that an exercise needs at its place: first what carries the load, then what is held, stood or lain on.
func (h handout) equipment(m move) (names []string) {
	if m.Device == nil {
		return nil
	}
	names = []string{h.machine(m.Device)}
	for _, need := range m.Exercise.Needs {
		if need == m.Device.Kind {
			continue
		}
		if name := h.machine(h.standsBy(m.Device, need)); name != "" && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// standsBy is the first device of a kind at the very place of another one.
func (h handout) standsBy(other *plan.Device, kind unit.DeviceKind) *plan.Device {
	for i := range h.Clinic.Places {
		here, found := h.Clinic.Places[i].Devices, (*plan.Device)(nil)
		at := slices.IndexFunc(here, func(d plan.Device) bool { return d.Kind == kind })
		if at >= 0 {
			found = &here[at]
		}
		for j := range here {
			if &here[j] == other {
				return found
			}
		}
	}
	return nil
}
