package program_test

import (
	"strings"
	"testing"
)

// What a program may not say of a range of repetitions: each with what to write.
func TestRepsTo(t *testing.T) {
	for _, row := range []struct{ lines, says string }{
		{"reps = 8\nreps_to = 12\nreserve = 2", ""},
		{"reps = 12\nreps_to = 12\nreserve = 2", "reps_to = 12 is not more than reps = 12; write reps_to = 13 or more, or take it out"},
		{"reps = 8\nreps_to = 12", ""},
		{"reps_to = 12\nreserve = 2", "reps_to without reps; write reps = 8, reps_to = 12"},
		{"reps = 8\nreps_to = 12\nreserve = 2\nweekly_percent = 2.5", "reps_to and weekly_percent together: repetitions come first, then a step of load; keep one of the two"},
		{"reps_to = 12\nreserve = 2\nmethod = \"rising\"", "method \"rising\" has its own repetitions; take reps_to out"},
		{"reps = 8\nreps_to = 12\nreserve = 2\nwave = [ { from_week = 2, reps = 6, reps_to = 5 } ]", "reps_to = 5 is not more than reps = 6"},
		{"reps = 8\nreserve = 2\nweekly_percent = 1\nreps_to = 1", "reps_to"},
	} {
		_, faults := made(t, map[string]string{"phases/one.toml": strings.Replace(phase, "sets = 3\nreps = 10", "sets = 3\n"+row.lines, 1)})
		switch wrong := faults.Wrong(); {
		case row.says == "" && len(wrong) > 0, row.says != "" && (len(wrong) == 0 || !strings.Contains(wrong.Error(), row.says)):
			t.Errorf("%q: %v, want %q", row.lines, wrong, row.says)
		}
	}
}
