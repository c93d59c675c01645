package page

import "testing"

// BenchmarkHandout is a sample's handout with its pictures, as view and as HTML.
func BenchmarkHandout(b *testing.B) {
	p, w, sample := samplePrinter(b), sampleWords(b), samplePlan()
	for b.Loop() {
		if _, err := p.HTML(Handout(sample, w)); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkFigures is the pictures of that handout alone.
func BenchmarkFigures(b *testing.B) {
	h := handout{samplePlan(), sampleWords(b)}
	moves, drawn := h.moves(), 0
	for b.Loop() {
		drawn = 0
		for _, m := range moves {
			drawn += len(h.figures(m))
		}
	}
	b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*drawn), "µs/figure")
}
