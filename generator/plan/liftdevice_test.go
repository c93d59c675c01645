package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Rule 24: a weight that a device cannot be set to is a slip, on a test day as in a log: it is asked about, and no load comes from it.
func TestRule24_AWeightThatCannotBeSet(t *testing.T) {
	for _, row := range []struct{ exercise, left, says, why string }{
		{"knee-extension-machine", "40 kg x 8+0", "", "the last pin"},
		{"knee-extension-machine", "21.25 kg x 8+0", "", "20 and the add-on"},
		{"knee-extension-machine", "200 kg x 8+0", "stack holds 40 kg at most, and 200 kg is typed", "more than it holds"},
		{"knee-extension-machine", "9 kg x 8+0", "stack cannot be set to 9 kg", "between two pins"},
		{"knee-extension-machine", "4 kg x 8+0", "stack cannot be set to 4 kg", "under the lightest"},
		{"knee-extension-machine", "moved 21 kg x 8+0", "", "all that was moved may have been weighed: no step is asked of it"},
		{"knee-extension-machine", "moved 41 kg x 8+0", "stack holds 40 kg at most, and 41 kg moved is typed", "more than it holds"},
		{"knee-extension-machine", "moved 4 kg x 8+0", "stack cannot be set to 4 kg moved", "under the lightest"},
		{"leg-press-single", "60 kg x 8+0", "", "plates in pairs"},
		{"leg-press-single", "61 kg x 8+0", "press cannot be set to 61 kg", "no pair makes 1 kg"},
		{"leg-press-single", "60 lb x 8+0", "press cannot be set to 60 lb", "it is marked in kg"},
		{"leg-press-single", "500 kg x 8+0", "press does not say what it holds (heaviest_kg), and 500 kg is typed", "beyond belief, until the device says so"},
	} {
		w := pressed(row.exercise, row.left, "40 kg x 8+0", "")
		w.weeks = 1
		p, faults := w.planned(t)
		if p == nil {
			t.Fatalf("%s: %v", row.left, faults)
		}
		said := faults.Error()
		asked := strings.Contains(said, "clients/tern-04/tests/2026-04-06.toml:15: "+row.exercise+", left: "+row.says+": no load comes from it")
		if asked != (row.says != "") || len(faults.Wrong()) > 0 {
			t.Errorf("%s, %s: %s; want %q (%s)", row.exercise, row.left, said, row.says, row.why)
		}
		if d := dose(p, row.exercise, unit.Left, 1); d == nil || d.Plates.OK() == (row.says != "") {
			t.Errorf("%s, %s: %+v (%s)", row.exercise, row.left, d, row.why)
		}
		if d := dose(p, row.exercise, unit.Right, 1); d == nil || !d.Plates.OK() {
			t.Errorf("%s, %s: the other leg's lift is sound: %+v", row.exercise, row.left, d)
		}
	}
}

// Rule 19, 24: all that was moved is held against what the machine moves by itself, and through its ratio against what it holds.
func TestRule24_AllThatWasMoved(t *testing.T) {
	moved := func(kg float64) string {
		return fmt.Sprintf("left.moved_kg = %g\nleft.reps = 8\nleft.reserve = 0\nright.moved_kg = 150\nright.reps = 8\nright.reserve = 0\n", kg)
	}
	for _, row := range []struct {
		device string
		kg     float64
		says   string
	}{
		{"carriage_kg = 45\nheaviest_kg = 200", 105, ""},
		{"carriage_kg = 45\nheaviest_kg = 200", 245, ""},
		{"carriage_kg = 45\nheaviest_kg = 200", 246, "press holds 200 kg at most, and 246 kg moved is typed"},
		{"carriage_kg = 45\nheaviest_kg = 200", 45, ""},
		{"carriage_kg = 45\nheaviest_kg = 200", 44, "press moves 45 kg by itself, and 44 kg moved is typed"},
		{"carriage_kg = 45", 346, "press does not say what it holds (heaviest_kg), and 346 kg moved is typed"},
		{"bar_kg = 20\nheaviest_kg = 200", 19, "press moves 20 kg by itself, and 19 kg moved is typed"},
		{"ratio = 2\nheaviest_kg = 300", 150, ""},
		{"ratio = 2\nheaviest_kg = 300", 151, "press holds 300 kg at most, and 151 kg moved is typed"},
	} {
		w := pressed("leg-press-single", "", "", "")
		w.weeks = 1
		w.tests["2026-04-06"] = straightKnees + "[[lift]]\nexercise = \"leg-press-single\"\nrange_deg = [0, 90]\n" + moved(row.kg)
		w.files["clinic.toml"] = strings.Replace(clinicText, "id = \"press\"\nkind = \"angled-leg-press\"", "id = \"press\"\nkind = \"angled-leg-press\"\n"+row.device, 1)
		p, faults := w.planned(t)
		if p == nil {
			t.Fatalf("%s: %v", row.device, faults)
		}
		if said := faults.Error(); strings.Contains(said, "left: "+row.says+": no load") != (row.says != "") || strings.Contains(said, "no load") != (row.says != "") {
			t.Errorf("%s, %g moved: %s; want %q", row.device, row.kg, said, row.says)
		}
	}
}

// Rule 24: a lift that names no device was made on the only one of the place that fits; where several fit, the day is asked.
func TestRule24_ALiftWithoutItsDevice(t *testing.T) {
	second := "[[place.device]]\nid = \"old-press\"\nkind = \"angled-leg-press\"\nplates_kg = [20, 10, 5]\n"
	for _, row := range []struct{ name, clinic, setup, lift, want, asks, why string }{
		{"one press", "", "", "", "52.5", "", "there is no other"},
		{"two presses", second, "", "", "find", `several of gym fit (press, old-press): no load comes from it; write device = "press", or another of them`, "nobody can know"},
		{"two, the set-up names one", second, "[setup.leg-press-single]\ndevice = \"press\"\n", "", "52.5", "", "as ever"},
		{"two, the lift names one", second, "", "device = \"press\"\n", "52.5", "", "the first of its kind is used"},
		{"no press", "", "", "place = \"hotel\"\n", "find", "", "nothing there fits"},
	} {
		w := pressed("leg-press-single", "", "", "")
		w.weeks, w.more = 1, row.setup
		w.tests["2026-04-06"] = straightKnees + lift("leg-press-single", row.lift+"range_deg = [0, 90]", "60 kg x 8+0", "90 kg x 8+0")
		w.files["clinic.toml"] = strings.Replace(clinicText, "[[place.device]]\nid = \"stack\"", row.clinic+"[[place.device]]\nid = \"stack\"", 1)
		p, faults := w.planned(t)
		if p == nil {
			t.Fatalf("%s: %v", row.name, faults)
		}
		if got := loads(p, "leg-press-single", unit.Left); got != row.want {
			t.Errorf("%s: %s, want %s (%s)", row.name, got, row.want, row.why)
		}
		if said := faults.Error(); strings.Contains(said, "on which device") != (row.asks != "") || !strings.Contains(said, row.asks) {
			t.Errorf("%s: %s; want %q", row.name, said, row.asks)
		}
		if d := dose(p, "leg-press-single", unit.Left, 1); row.asks != "" && d.Why != "the lift does not say on which device" {
			t.Errorf("%s: %q", row.name, d.Why)
		}
	}
}
