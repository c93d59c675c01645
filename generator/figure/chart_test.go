package figure

import (
	"encoding/xml"
	"fmt"
	"math"
	"math/rand"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// readChart is a chart read again from its own text, as a stranger would.
type readChart struct {
	drawing
	Groups []struct {
		Class string `xml:"class,attr"`
		Dots  []struct {
			X float64 `xml:"cx,attr"`
			Y float64 `xml:"cy,attr"`
		} `xml:"circle"`
	} `xml:"g"`
}

func readBack(t testing.TB, c Chart) (r readChart) {
	t.Helper()
	svg, err := c.Draw()
	if err != nil {
		t.Fatal(err)
	}
	if strings.Contains(string(svg), "NaN") || strings.Contains(string(svg), "Inf") {
		t.Fatalf("no number: %s", svg)
	}
	if err := xml.Unmarshal(svg, &r); err != nil {
		t.Fatalf("%v\n%s", err, svg)
	}
	return r
}

// path is the path of a class.
func (r readChart) path(class string) string {
	for _, p := range r.Paths {
		if p.Class == class {
			return p.D
		}
	}
	return ""
}

// dots are the dots of a leg.
func (r readChart) dots(class string) (ps []point) {
	for _, g := range r.Groups {
		if g.Class == class {
			for _, d := range g.Dots {
				ps = append(ps, point{d.X, d.Y})
			}
		}
	}
	return ps
}

var startsAt = regexp.MustCompile(`M([-0-9.]+) ([-0-9.]+)`)

// starts are the places at which the pieces of a path begin.
func starts(d string) (ps []point) {
	for _, m := range startsAt.FindAllStringSubmatch(d, -1) {
		x, _ := strconv.ParseFloat(m[1], 64)
		y, _ := strconv.ParseFloat(m[2], 64)
		ps = append(ps, point{x, y})
	}
	return ps
}

// ruler reads values off an axis, from its first and last number.
type ruler struct{ from, at, per float64 }

func (r ruler) value(place float64) float64 { return r.from + (place-r.at)/r.per }

// rulers are the two axes as a reader would read them: the numbers printed beside the lines.
func (r readChart) rulers(t testing.TB) (across, up ruler) {
	t.Helper()
	value := func(text string) float64 {
		v, err := strconv.ParseFloat(strings.Replace(text, "−", "-", 1), 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	var xs, ys []float64
	for _, text := range r.Texts {
		switch text.Class {
		case "c-x":
			xs = append(xs, value(text.Text))
		case "c-y":
			ys = append(ys, value(text.Text))
		}
	}
	grid, ticks := starts(r.path("c-grid")), starts(r.path("c-axis"))[1:]
	if len(xs) < 2 || len(ys) < 2 || len(xs) != len(ticks) || len(ys) != len(grid) {
		t.Fatalf("%d and %d numbers at %d and %d ticks", len(xs), len(ys), len(ticks), len(grid))
	}
	last, top := len(xs)-1, len(ys)-1
	return ruler{xs[0], ticks[0].X, (ticks[last].X - ticks[0].X) / (xs[last] - xs[0])},
		ruler{ys[0], grid[0].Y, (grid[top].Y - grid[0].Y) / (ys[top] - ys[0])}
}

func bare(x, y float64) Spot { return Spot{X: x, Y: y} }

func banded(x, y, half float64) Spot {
	low, high := y-half, y+half
	return Spot{X: x, Y: y, Low: &low, High: &high}
}

func sampleChart() Chart {
	return Chart{ID: "c", Unit: "N·m", Across: "weeks since the operation", FromZero: true, Title: "title", Describe: "says", Lines: []Course{
		{Name: "LEFT", Spots: []Spot{banded(-3, 110, 6), banded(7.1, 61, 6), {X: 12.9, Y: 102.6, Breaks: true}}},
		{Name: "RIGHT", Other: true, Spots: []Spot{bare(-3, 121), bare(7.1, 124), bare(12.9, 127.1)}},
	}}
}

// chanceChart is a chart of chance: from one to 20 tests, gaps, bands, marks close to each other, a span, any size of number.
func chanceChart(r *rand.Rand) Chart {
	c := sampleChart()
	size, base := math.Pow(10, float64(r.Intn(5)-1)), 0.0
	if c.FromZero = r.Intn(2) == 0; !c.FromZero {
		base = (r.Float64() - 0.5) * 3 * size
	}
	for i := range c.Lines {
		c.Lines[i].Spots = nil
		x := float64(r.Intn(60) - 30)
		for range 1 + r.Intn(20) {
			s := bare(x, base+r.Float64()*size)
			if r.Intn(2) == 0 {
				s = banded(x, s.Y, r.Float64()*size/5)
			}
			s.Breaks, s.Ceiling = r.Intn(4) == 0, r.Intn(4) == 0
			c.Lines[i].Spots = append(c.Lines[i].Spots, s)
			x += r.Float64() * 9
		}
	}
	for k := range r.Intn(3) {
		c.Marks = append(c.Marks, Level{base + r.Float64()*size, fmt.Sprintf("mark %d", 80+10*k)})
	}
	if r.Intn(3) == 0 {
		from := r.Float64() * 80
		c.Weeks = &Spell{From: from, To: from + r.Float64()*40, Open: r.Intn(3) == 0}
	}
	return c
}

// Read back with the numbers on its axes, each dot stands at its value: half a pixel of error, on a phone or a desk. Bands too.
func TestChartValuesCanBeReadBack(t *testing.T) {
	charts := []Chart{sampleChart()}
	r := rand.New(rand.NewSource(1))
	for range 500 {
		charts = append(charts, chanceChart(r))
	}
	checked := 0
	for i, c := range charts {
		back := readBack(t, c)
		across, up := back.rulers(t)
		for k, class := range []string{"c-dots c-own", "c-dots c-other"} {
			dots := back.dots(class)
			if len(dots) != len(c.Lines[k].Spots) {
				t.Fatalf("chart %d: %d dots of %d", i, len(dots), len(c.Lines[k].Spots))
			}
			for j, s := range c.Lines[k].Spots {
				if off := math.Abs((across.value(dots[j].X) - s.X) * across.per); off > 0.5 {
					t.Errorf("chart %d: week %g stands %g px off", i, s.X, off)
				}
				if off := math.Abs((up.value(dots[j].Y) - s.Y) * up.per); off > 0.5 {
					t.Errorf("chart %d: value %g stands %g px off", i, s.Y, off)
				}
				checked++
			}
		}
		for k, class := range []string{"c-band c-own", "c-band c-other"} {
			bandsReadBack(t, fmt.Sprintf("chart %d, %s", i, class), c.Lines[k], back.path(class), up)
		}
	}
	if checked < 1000 {
		t.Errorf("only %d dots", checked)
	}
}

var upright = regexp.MustCompile(`V([-0-9.]+)`)

// bandsReadBack holds both ends of each band against the values they stand for.
func bandsReadBack(t *testing.T, name string, line Course, d string, up ruler) {
	t.Helper()
	lows, highs := starts(d), upright.FindAllStringSubmatch(d, -1)
	i := 0
	for _, s := range line.Spots {
		if s.Low == nil || s.High == nil {
			continue
		}
		if off := math.Abs((up.value(lows[i].Y) - *s.Low) * up.per); off > 0.5 {
			t.Errorf("%s: the low end %g stands %g px off", name, *s.Low, off)
		}
		if off := math.Abs((up.value(number(t, highs[i][1])) - *s.High) * up.per); off > 0.5 {
			t.Errorf("%s: the high end %g stands %g px off", name, *s.High, off)
		}
		i++
	}
	if len(lows) != i || len(highs) != i {
		t.Errorf("%s: %d and %d ends of %d bands", name, len(lows), len(highs), i)
	}
}

// More is higher, later is further right, and an axis that begins at zero says 0 at its foot.
func TestChartDirections(t *testing.T) {
	back := readBack(t, sampleChart())
	dots := back.dots("c-dots c-own")
	if !(dots[0].Y < dots[2].Y && dots[2].Y < dots[1].Y && dots[0].X < dots[1].X) {
		t.Errorf("110, 61 and 102.6 stand at %v", dots)
	}
	if across, up := back.rulers(t); up.from != 0 || up.per >= 0 || across.per <= 0 {
		t.Errorf("the axes run %+v and %+v", across, up)
	}
	for _, p := range append(dots, back.dots("c-dots c-other")...) {
		if p.X < 0 || p.X > chartWide || p.Y < overField-1 || p.Y > chartHigh-underField+1 {
			t.Errorf("%v lies outside the field", p)
		}
	}
}

// A value that is missing is a gap: the line is taken up anew, and no dot stands for it.
func TestChartGaps(t *testing.T) {
	back := readBack(t, sampleChart())
	if own, other := strings.Count(back.path("c-line c-own"), "M"), strings.Count(back.path("c-line c-other"), "M"); own != 2 || other != 1 {
		t.Errorf("pieces of line: %d and %d, want 2 and 1", own, other)
	}
}

func TestChartOfLittle(t *testing.T) {
	c := sampleChart()
	c.Lines[0].Spots, c.Lines[1].Spots = c.Lines[0].Spots[:1], nil
	if dots := readBack(t, c).dots("c-dots c-own"); len(dots) != 1 {
		t.Errorf("one test gives %d dots", len(dots))
	}
	c.Lines[0].Spots = []Spot{bare(1, 0), bare(2, 0)} // equal, and zero
	readBack(t, c)
	c.FromZero = false
	c.Lines[0].Spots = []Spot{bare(3, 80), bare(3, 80)}
	readBack(t, c).rulers(t)
	c.Lines[0].Spots = nil
	if svg, err := c.Draw(); err == nil {
		t.Errorf("a chart of nothing: %s", svg)
	}
	for _, bad := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e12} {
		for i, put := range []func(*Chart){
			func(c *Chart) { c.Lines[0].Spots[0].X = bad }, func(c *Chart) { c.Lines[1].Spots[1].Y = bad }, func(c *Chart) { c.Lines[0].Spots[0].Low = &bad },
			func(c *Chart) { c.Marks = []Level{{bad, "mark"}} }, func(c *Chart) { c.Weeks = &Spell{From: bad} },
		} {
			c := sampleChart()
			put(&c)
			if svg, err := c.Draw(); err == nil {
				t.Errorf("%g in place %d was drawn: %s", bad, i, svg)
			}
		}
	}
}
