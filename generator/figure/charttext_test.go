package figure

import (
	"encoding/xml"
	"fmt"
	"math"
	"math/rand"
	"strconv"
	"strings"
	"testing"
)

// The letters, colours and weight of charts.

// textBox is the room of a text, by widths of a common narrow-to-middling face; not those that the layout was made with.
type textBox struct{ left, top, right, bottom float64 }

func boxOf(class string, x, y float64, text string) textBox {
	w := 0.0
	for _, r := range text {
		switch {
		case r == ' ' || r == '.' || r == 'i' || r == 'l':
			w += 0.28
		case r >= 'A' && r <= 'Z':
			w += 0.72
		default:
			w += 0.56
		}
	}
	w *= lettered
	switch class {
	case "c-y":
		x -= w
	case "c-x":
		x -= w / 2
	}
	return textBox{x, y - 0.72*lettered, x + w, y + 0.2*lettered}
}

func (a textBox) meets(b textBox) bool {
	return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

// apartAndInside holds that no text of a picture lies on another, and none reaches out.
func apartAndInside(t *testing.T, d drawing, name string) {
	t.Helper()
	var wide, high, x, y float64
	if _, err := fmt.Sscan(d.ViewBox, &x, &y, &wide, &high); err != nil {
		t.Fatal(err)
	}
	var boxes []textBox
	for _, text := range d.Texts {
		b := boxOf(text.Class, text.X, text.Y, text.Text)
		if b.left < 0 || b.right > wide || b.top < -1 || b.bottom > high {
			t.Errorf("%s: %q reaches out: %+v", name, text.Text, b)
		}
		for k, o := range boxes {
			if b.meets(o) {
				t.Errorf("%s: %q lies on %q", name, text.Text, d.Texts[k].Text)
			}
		}
		boxes = append(boxes, b)
	}
}

func TestChartLabelsKeepApart(t *testing.T) {
	apartAndInside(t, readBack(t, sampleChart()).drawing, "sample")
	r := rand.New(rand.NewSource(2))
	for i := range 1000 {
		apartAndInside(t, readBack(t, chanceChart(r)).drawing, fmt.Sprint("chance ", i))
	}
	if !boxOf("c-end", 10, 10, "LEFT").meets(boxOf("c-end", 12, 14, "RIGHT")) {
		t.Error("two texts on each other are not found")
	}
}

func TestChartOfHostileText(t *testing.T) {
	bad := `</title><script>x</script>" onload='y` + "&<"
	c := sampleChart()
	c.ID, c.Title, c.Describe, c.Unit, c.Across, c.Lines[0].Name = bad, bad, bad, bad, bad, bad
	c.Marks = []Level{{100, bad}}
	svg, err := c.Draw()
	if err != nil {
		t.Fatal(err)
	}
	var r readChart
	if err := xml.Unmarshal(svg, &r); err != nil {
		t.Fatalf("%v\n%s", err, svg)
	}
	if strings.Contains(string(svg), "<script") || strings.Contains(string(svg), `" onload`) || r.Title.Text != bad || r.Desc.Text != bad {
		t.Errorf("%s", svg)
	}
}

// What must be told apart stands out from what is behind it: 4.5 for letters (WCAG 1.4.3), 3 for shapes (1.4.11). The two legs have
// dash and filling besides: grey is enough.
func TestChartContrast(t *testing.T) {
	for name, p := range map[string]Palette{"light": Light, "dark": Dark, "print": Print} {
		for _, c := range []struct {
			what, one, other string
			least            float64
		}{
			{"letters", p.Text, p.Back, 4.5}, {"letters on the weeks", p.Text, p.Range, 4.5}, {"event's leg", p.Work, p.Back, 3}, {"event's leg on the weeks", p.Work, p.Range, 3},
			{"other leg", p.Outline, p.Back, 3}, {"mark", p.Edge, p.Back, 3}, {"mark on the weeks", p.Edge, p.Range, 3}, {"axis", p.Kit, p.Back, 3}, {"day of a start", p.Move, p.Back, 3},
			{"the two legs, ours", p.Work, p.Outline, 1.5},
		} {
			if have := contrast(t, c.one, c.other); have < c.least {
				t.Errorf("%s: %s: %.4f, want %g", name, c.what, have, c.least)
			}
		}
	}
	for _, rule := range []string{".c-line.c-other{stroke-dasharray:", ".c-dots.c-own{fill:var(--work)", ".c-dots.c-other{fill:var(--bg)"} {
		if !strings.Contains(Style(), rule) {
			t.Errorf("the style has no %s", rule)
		}
	}
	if strings.Contains(chartRules, "#") {
		t.Error("a colour stands beside the palettes")
	}
}

// The narrowest column on a phone of 360 pixels is 284 wide.
func TestChartLettersAreLarge(t *testing.T) {
	if have := lettered * 284 / chartWide; have < 12 {
		t.Errorf("letters are %g px", have)
	}
	if !strings.Contains(chartRules, fmt.Sprintf("font:%gpx", lettered)) {
		t.Error("the style writes another size")
	}
}

func manyTests() Chart {
	c := sampleChart()
	for i := range c.Lines {
		c.Lines[i].Spots = nil
		for k := range 50 {
			c.Lines[i].Spots = append(c.Lines[i].Spots, banded(float64(k)*1.3, 80+float64(k%9), 5))
		}
	}
	c.Marks = []Level{{85, "mark 80"}, {86, "mark 90"}}
	return c
}

// A chart of 50 tests of both legs, more than anybody has, stays light.
func TestChartIsLight(t *testing.T) {
	svg, err := manyTests().Draw()
	if err != nil || len(svg) > 8192 {
		t.Errorf("%d bytes, %v", len(svg), err)
	}
}

func BenchmarkChart(b *testing.B) {
	c := manyTests()
	for b.Loop() {
		if _, err := c.Draw(); err != nil {
			b.Fatal(err)
		}
	}
}

// Ticks are 1, 2 or 5 times a power of ten apart, hold every value between them, and are neither few nor many.
func TestTicksAreRound(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 2000 {
		low := (r.Float64() - 0.5) * math.Pow(10, float64(r.Intn(6)-2))
		high := low + r.Float64()*math.Pow(10, float64(r.Intn(6)-2)) + 1e-3
		ticks, digits := ticksOf(low, high, 5)
		step := ticks[1] - ticks[0]
		lead := step / math.Pow(10, math.Floor(math.Log10(step)+1e-9))
		round := math.Abs(lead-1) < 1e-6 || math.Abs(lead-2) < 1e-6 || math.Abs(lead-5) < 1e-6
		if n := len(ticks); !round || n < 2 || n > 6 || ticks[0] > low+1e-6 || ticks[n-1] < high-1e-6 {
			t.Fatalf("%g to %g: %v", low, high, ticks)
		}
		for _, tick := range ticks {
			if back, _ := strconv.ParseFloat(strings.Replace(tickText(tick, digits), "−", "-", 1), 64); math.Abs(back-tick) > step/1000 {
				t.Fatalf("%g is written %s", tick, tickText(tick, digits))
			}
		}
	}
}
