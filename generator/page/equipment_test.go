package page

import (
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// All that an exercise needs is named, and it is that of the place where it is done.
func TestAllEquipmentIsNamed(t *testing.T) {
	p := samplePlan()
	at := func(id string, devices ...client.Device) client.Place { return client.Place{ID: id, Devices: devices} }
	p.Clinic.Places = []client.Place{
		at("gym", client.Device{ID: "bar", Kind: "barbell"}, client.Device{ID: "rack", Kind: "rack", Name: "the black rack"}),
		at("hotel", client.Device{ID: "bar", Kind: "barbell"}, client.Device{ID: "rack", Kind: "rack", Name: "the cage"}, client.Device{ID: "mat", Kind: "mat"}),
	}
	h := handout{p, sampleWords(t)}
	for _, c := range []struct {
		name   string
		device *plan.Device
		needs  []unit.DeviceKind
		want   string
	}{
		{"nothing", nil, nil, ""},
		{"one", &p.Clinic.Places[0].Devices[0], []unit.DeviceKind{"barbell"}, "Barbell"},
		{"two", &p.Clinic.Places[0].Devices[0], []unit.DeviceKind{"barbell", "rack"}, "Barbell, the black rack"},
		{"two at the other place, alike by name", &p.Clinic.Places[1].Devices[0], []unit.DeviceKind{"rack", "barbell", "mat"}, "Barbell, the cage, Mat"},
	} {
		m := move{Exercise: &program.Exercise{Needs: c.needs}, Device: c.device}
		if got := strings.Join(h.equipment(m), ", "); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
