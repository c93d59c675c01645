package page

import (
	"strings"
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// TestWhyOfALoad: a load that the page leaves to be found says why there is none, and one of a device in pounds says what to set there.
func TestWhyOfALoad(t *testing.T) {
	p := deskPlan()
	pressed := basis.Typed(unit.Kilograms(80*unit.KilogramsPerPound), "80 lb", basis.Origin{File: testFile}).Named("curl.left.w1.load")
	p.Prescriptions = []plan.Prescription{
		{Exercise: &program.Exercise{ID: "press"}, Side: unit.Both, Weeks: []plan.WeekDose{{Week: 1, FindYourWeight: true, Why: "no lift of each leg alone on this machine"}}},
		{Exercise: &program.Exercise{ID: "curl"}, Side: unit.Left, Device: &client.Device{Pounds: true}, Weeks: []plan.WeekDose{{Week: 1, Plates: pressed}}},
		{Exercise: &program.Exercise{ID: "curl"}, Side: unit.Right, Device: &client.Device{}, Weeks: []plan.WeekDose{{Week: 1, Plates: pressed.Named("curl.right.w1.load")}}},
	}
	for _, row := range []struct{ id, want, not, why string }{
		{"press.both.w1.load", "press.both.w1.load — find your weight: no lift of each leg alone on this machine", "nearest", "a reason, not a list of other names"},
		{"curl.left.w1.load", "curl.left.w1.load: 80 lb on the device", "", "the sum is in kilograms, the pin is not"},
		{"curl.right.w1.load", "curl.right.w1.load = ", " lb on the device", "marked in kilograms"},
		{"", "          — find your weight: no lift", "", "the list names it too"},
	} {
		text, ok := WhyText(p, row.id, nil)
		if !ok || !strings.Contains(text, row.want) || row.not != "" && strings.Contains(text, row.not) {
			t.Errorf("%q: no %q (%s) in\n%s", row.id, row.want, row.why, text)
		}
	}
	if data, ok := WhyJSON(p, "press.both.w1.load", nil); !ok || !strings.Contains(string(data), `"find_your_weight": "no lift of each leg alone on this machine"`) {
		t.Errorf("as JSON: %v, %s", ok, data)
	}
}
