package source

import (
	"strings"
	"testing"
)

func TestClosest(t *testing.T) {
	ids := []string{"bridge", "leg-curl-band", "leg-press-both", "leg-press-single", "step-up"}
	for _, c := range []struct{ written, want, why string }{
		{"leg-press-singel", "leg-press-single leg-press-both", "two letters swapped"},
		{"legpress", "leg-press-both leg-press-single", "hyphens are forgotten, and the beginning is enough"},
		{"Step-Up", "step-up", "case does not count"},
		{"stepup", "step-up", "one hyphen"},
		{"nordic-curl", "", "nothing looks like it"},
		{"", "", "nothing was written"},
	} {
		if got := strings.Join(Closest(c.written, ids, 2), " "); got != c.want {
			t.Errorf("%q is close to %q, want %q: %s", c.written, got, c.want, c.why)
		}
	}
}
