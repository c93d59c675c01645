package unit

import (
	"math"
	"testing"
)

// The ratios are those of the table that testdata/published/figure/contrast.csv holds, with its source.
func TestContrastOfColours(t *testing.T) {
	for _, row := range []struct {
		a, b Colour
		want float64
		why  string
	}{
		{"#000000", "#ffffff", 21, "black on white is the most"},
		{"#ffffff", "#000000", 21, "whichever is lighter"},
		{"#777777", "#777777", 1, "a colour on itself is the least"},
		{"#595959", "#ffffff", 7.0047, "the lightest grey that passes 7 to 1"},
		{"#767676", "#ffffff", 4.5422, "the lightest grey that passes 4.5 to 1"},
	} {
		if got := row.a.Contrast(row.b); math.Abs(got-row.want) > 0.0001 {
			t.Errorf("%s on %s is %.4f, want %.4f: %s", row.a, row.b, got, row.want, row.why)
		}
	}
	for _, bad := range []Colour{"", "red", "#fff", "#12345g", "123456", "#1234567"} {
		if bad.Valid() {
			t.Errorf("%q was taken for a colour", bad)
		}
	}
}
