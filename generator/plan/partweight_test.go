package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// Rule 4: part weight-bearing lets standing work pass only where the exercise says what share of body weight it puts on the
// leg, and that keeps within. Whatever does not say stays closed.
func TestRule04_AShareOfBodyWeight(t *testing.T) {
	weighed := calm // 64 kg
	for _, row := range []struct {
		exercise, allow, test string
		want                  bool
		why                   string
	}{
		{"heel-raise", "part_percent = 60", weighed, true, "60 on each leg: at the limit"},
		{"heel-raise", "part_percent = 59", weighed, false, "one less"},
		{"heel-raise", "part_percent = 60", "", true, "a share needs no mass"},
		{"wall-sit", "part_percent = 50", weighed, true, "held still: half"},
		{"heel-raise-single", "part_percent = 90", weighed, false, "it does not say its share: closed"},
		{"leg-press-single", "part_percent = 90", weighed, false, "a press is no share of body weight"},
		{"heel-raise", "part_kg = 38.4", weighed, true, "60 % of 64 kg"},
		{"heel-raise", "part_kg = 38", weighed, false, "38.4 kg is more"},
		{"heel-raise", "part_kg = 60", "", false, "nobody has weighed the body: missing never passes"},
		{"heel-raise", "allowed = false", weighed, false, "no weight is no part"},
	} {
		t.Run(row.exercise+" "+row.allow+" "+row.why, func(t *testing.T) {
			w := who{starts: "2026-06-01", weeks: 1, files: own(fmt.Sprintf("%q", row.exercise)), tests: map[string]string{},
				more: limit("weight-bearing", row.allow, "2026-01-05", "", "surgeon", "Dr Auk", "2026-01-05")}
			if row.test != "" {
				w.tests["2026-06-01"] = row.test
			}
			p := w.plan(t)
			if got := chosen(p, "slot-1", unit.Left, 1) != ""; got != row.want {
				t.Errorf("%v (%s), want %v: %s", got, because(p, row.exercise, 1), row.want, row.why)
			}
		})
	}
}

// A share of body weight is for standing work without weights: elsewhere it is a mistake of the file.
func TestShareOfBodyWeightMisplaced(t *testing.T) {
	w := who{starts: "2026-06-01", weeks: 1}
	for _, row := range []struct{ exercise, resisted string }{{"mine", "external"}, {"mine", "foot-contacts"}} {
		w.files = own(`"mine"`)
		w.files["programs/exercises/mine.toml"] = "title = \"Mine\"\ndescribe = \"One.\"\ntrains = [\"calf\"]\nkinds = [\"weight-bearing\"]\nneeds = [\"bench\"]\nside = \"both\"\ncontraction = [\"concentric\"]\nresisted_by = \"" +
			row.resisted + "\"\nweight_on_leg_percent = 50\n"
		if _, faults := w.planned(t); !strings.Contains(faults.Error(), "a share of body weight is for standing work") {
			t.Errorf("%s: %v", row.resisted, faults)
		}
	}
}
