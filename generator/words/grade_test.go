package words_test

import (
	"math"
	"testing"

	"paceleaf/generator/words"
)

// Check values: Coleman and Liau 1975 and the automated readability index, worked from printed counts; ARI counts letters and
// digits.
func TestGrade(t *testing.T) {
	for _, tt := range []struct {
		name     string
		c        words.Counts
		cli, ari float64
	}{
		{"A, by printed counts", words.Counts{Letters: 2855, Characters: 2855, Words: 441, Sentences: 21}, 20.86, 19.56},
		{"B, by printed counts", words.Counts{Letters: 685, Characters: 685, Words: 136, Sentences: 6}, 12.5103, 13.6265},
		{"D, ours", words.Count("Sit on a chair. Bend your left knee. Hold for five seconds. Slowly straighten your leg. Do this ten times."), 0.908, -0.119},
	} {
		g := tt.c.Grade()
		if math.Abs(g.ColemanLiau-tt.cli) > 0.01 || math.Abs(g.ARI-tt.ari) > 0.01 {
			t.Errorf("%s: %+v, want %.3f and %.3f", tt.name, g, tt.cli, tt.ari)
		}
	}
}
