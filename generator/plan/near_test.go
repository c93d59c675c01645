package plan_test

import "testing"

// A mark is near where it lies within 1.96 standard errors of the value (measurement of hop symmetry: Reid 2007, 3.49 for
// the single hop, known from memory). Near opens nothing and closes nothing; no published error is not an error of zero.
func TestNearOpensAndClosesNothing(t *testing.T) {
	hop := func(left, right string) string {
		return "by = \"imbali\"\neffusion = \"trace\"\n[[hop]]\ntest = \"single\"\nleft.distance_cm = [" + left + "]\nright.distance_cm = [" + right + "]\n"
	}
	for _, row := range []struct {
		left  string
		state string
		near  bool
		why   string
	}{
		{"90", "met", false, "90 lies 20 above the mark of 70, the band is 6.8"},
		{"75", "met", true, "75 lies 5 above the mark: met all the same"},
		{"66", "not met", true, "66 lies 4 below the mark: not met all the same"},
		{"60", "not met", false, "60 lies 10 below"},
	} {
		w := who{date: "2025-10-20", starts: "2026-04-06", tests: map[string]string{"2026-04-06": hop(row.left, "100")}}
		c := criterion(t, w.plan(t), "running.hop-single.lsi")
		if string(c.State) != row.state {
			t.Errorf("%s: %s, want %s (%s)", row.left, c.State, row.state, row.why)
		}
		if c.Near == nil || *c.Near != row.near {
			t.Errorf("%s: near %v, want %v (%s)", row.left, c.Near, row.near, row.why)
		}
	}
	w := who{date: "2025-10-20", starts: "2026-04-06"}
	if c := criterion(t, w.plan(t), "running.knee-extension.lsi"); c.Near != nil {
		t.Error("the error of a strength symmetry has not been read: near is not known")
	}
}
