package formula_test

import (
	"math"
	"strings"
	"testing"
)

// Every formula that says it refuses has a row of TestRefusals that shows it.
func TestEveryRefusalIsShown(t *testing.T) {
	shown := map[string]bool{}
	for _, c := range refusals {
		shown[c.function] = shown[c.function] || c.says != ""
	}
	for name, doc := range open(t).functions {
		if refuses := !strings.Contains(doc, "Refuses: nothing"); refuses != shown[name] {
			t.Errorf("%s says that it refuses: %v; refusals shown: %v", name, refuses, shown[name])
		}
	}
}

// Whatever is put in the place of one input of an Example, what comes out is a refusal or a number: never one that is none,
// and never a number made of an input that is none.
func TestSweep(t *testing.T) {
	book, tried := open(t), 0
	for name, b := range book.examples {
		doc := book.functions[name]
		for place := range b[0] {
			for _, bad := range []float64{nan, infinite, -infinite, 0, -1, -1e300, 1e300, 30, 0.5} {
				in := append([]float64{}, b[0]...)
				in[place] = bad
				v, err := call(name, in...)
				tried++
				switch notNumber := math.IsNaN(bad) || math.IsInf(bad, 0); {
				case err != nil || strings.Contains(doc, "Refuses: nothing"):
				case math.IsNaN(v) || math.IsInf(v, 0) && !math.IsInf(bad, 0) && math.Abs(bad) < 1e300:
					t.Errorf("%s(%v) = %v", name, in, v)
				case notNumber && !skips(name, bad):
					t.Errorf("%s(%v) = %v, made of no number", name, in, v)
				}
			}
		}
	}
	t.Logf("%d inputs of %d formulas", tried, len(book.examples))
}

// skips are the formulas to which an input that is no number is an item that was not answered.
func skips(name string, bad float64) bool {
	return math.IsNaN(bad) && (name == "IKDC" || strings.HasPrefix(name, "KOOS"))
}
