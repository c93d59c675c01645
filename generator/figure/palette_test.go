package figure

import (
	"math"
	"strconv"
	"testing"
)

// luminance and contrast are WCAG's; see testdata/published/figure/contrast.csv.
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	part := func(from int) float64 {
		v, err := strconv.ParseUint(hex[from:from+2], 16, 8)
		if err != nil || len(hex) != 7 {
			t.Fatalf("colour %q", hex)
		}
		c := float64(v) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*part(1) + 0.7152*part(3) + 0.0722*part(5)
}

func contrast(t *testing.T, a, b string) float64 {
	x, y := luminance(t, a), luminance(t, b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

// The measure itself gives the published ratios.
func TestContrastIsMeasuredAsPublished(t *testing.T) {
	for _, row := range rows(t, "contrast.csv") {
		if have := contrast(t, "#"+row[0], "#"+row[1]); math.Abs(have-number(t, row[2])) > 0.00005 {
			t.Errorf("%s on %s: %.4f, published %s", row[0], row[1], have, row[2])
		}
	}
}

// Whatever must be told apart has the contrast that WCAG asks for: 4.5 for letters (1.4.3), 3 for shapes (1.4.11), not
// rounded up. Two greys of one picture have none to keep; ours is that the working leg stands out from the body by half.
func TestContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark, "print": Print} {
		for _, c := range []struct {
			what, one, other string
			least            float64
		}{
			{"letters", p.Text, p.Back, 4.5},
			{"letters on the range", p.Text, p.Range, 4.5},
			{"letters on equipment", p.Text, p.Pad, 4.5},
			{"letters on the start", p.Text, p.Ghost, 4.5},
			{"working leg", p.Work, p.Back, 3},
			{"working leg on the range", p.Work, p.Range, 3},
			{"both legs: the other one", p.Twin, p.Back, 3},
			{"body", p.Body, p.Back, 3},
			{"outline of the other leg and of the start", p.Outline, p.Back, 3},
			{"outline on the other leg", p.Outline, p.Far, 3},
			{"outline on the start", p.Outline, p.Ghost, 3},
			{"the other leg's line on a span of weeks", p.Outline, p.Range, 3},
			{"arrow", p.Move, p.Back, 3},
			{"arrow on its case", p.Move, p.Back, 3},
			{"edge of the range", p.Edge, p.Back, 3},
			{"edge of the range on its fill", p.Edge, p.Range, 3},
			{"equipment", p.Kit, p.Back, 3},
			{"equipment on its fill", p.Kit, p.Pad, 3},
			{"band", p.Elastic, p.Back, 3},
			{"joint on the working leg", p.Back, p.Work, 3},
			{"working leg beside the body, ours", p.Work, p.Body, 1.5},
		} {
			if have := contrast(t, c.one, c.other); have < c.least {
				t.Errorf("%s: %s: %s on %s is %.4f, want %g", name, c.what, c.one, c.other, have, c.least)
			}
		}
	}
}
