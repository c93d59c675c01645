package generator_test

import (
	"testing"

	"paceleaf/generator"
	"paceleaf/programs"
	"paceleaf/templates"
)

// TestRule27e_NothingGrowsInAPause: in a pause the bike rests (heron-07, whose bike would ride longer), and after stay landings grow a
// week later (avocet-03). That range of a paused knee does not grow either, plan.TestRule27h_RangeDoesNotGrowInAPause holds.
func TestRule27e_NothingGrowsInAPause(t *testing.T) {
	house, faults := generator.Open(generator.Files{Clinic: demoFiles(t), Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	for _, row := range []struct {
		code, exercise string
		of             func(minutes, contacts *int) *int
		want           []int
		why            string
	}{
		{"heron-07", "stationary-cycling", func(m, _ *int) *int { return m }, nil, "a paused knee does not ride"},
		{"avocet-03", "drop-landing", func(_, c *int) *int { return c }, []int{16, 16, 12, 12}, "planned are 16, 20, 12 and 24: stay takes each a week later where that is less"},
	} {
		found := false
		for _, p := range house.Plan(row.code).Plan.Prescriptions {
			if p.Exercise.ID != row.exercise {
				continue
			}
			found = true
			for i, d := range p.Weeks {
				n := row.of(d.Dose.Minutes, d.Dose.Contacts)
				if n == nil {
					t.Fatalf("%s has no such dose", row.code)
				}
				if i >= len(row.want) || *n != row.want[i] {
					t.Errorf("%s, %s, week %d: %d, want %v: %s", row.code, row.exercise, d.Week, *n, row.want, row.why)
				}
			}
		}
		if found != (row.want != nil) {
			t.Errorf("%s does %s: %v (%s)", row.code, row.exercise, found, row.why)
		}
	}
}
