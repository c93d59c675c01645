package figure

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"paceleaf/generator/unit"
)

// each draws every exercise of the library, each side, under every limit; r is nil where the exercise has no range.
func each(t *testing.T, look func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte)) {
	t.Helper()
	for _, e := range exercises(t) {
		ranges := []*unit.Reach{nil}
		for _, r := range limits(e.Range) {
			ranges = append(ranges, &r)
		}
		for _, side := range []unit.Side{unit.Left, unit.Right} {
			for _, r := range ranges {
				svg, err := Draw(e.Figure, Options{ID: "f1", Title: e.Title, Describe: e.Describe, Side: side, Range: r})
				if err != nil {
					t.Errorf("%s, %s, %v: %v", e.id, side, r, err)
					continue
				}
				look(t, e, side, r, svg)
			}
		}
	}
}

// What the dots of the finished picture show is what its digits say, and both are what the dose line says.
func TestDrawnBendIsPrintedBend(t *testing.T) {
	shown := 0
	each(t, func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte) {
		if r == nil {
			return
		}
		d := parsed(t, svg)
		if e.Figure.View == FromFront {
			shown++
			besideShows(t, e, side, *r, d)
			return
		}
		drawn := bendOf(d.joints("f-joint"))
		allowed(t, e, side, *r, "is drawn", drawn)
		if was := d.joints("f-was"); len(was) == 3 {
			allowed(t, e, side, *r, "starts", bendOf(was))
		}
		if e.Figure.Hidden {
			if len(d.Texts) > 0 {
				t.Errorf("%s: a hidden range has labels", e.id)
			}
			return
		}
		labelled(t, e, side, *r, d, drawn)
		shown++
	})
	t.Logf("%d pictures with a range", shown)
	if shown < 200 {
		t.Errorf("only %d pictures had a range to measure", shown)
	}
}

func allowed(t *testing.T, e exercise, side unit.Side, r unit.Reach, what string, bend float64) {
	t.Helper()
	if bend < float64(r.Straightest)-0.5 || bend > float64(r.MostBent)+0.5 {
		t.Errorf("%s, %s: %s at %.2f°, allowed %v", e.id, side, what, bend, r)
	}
}

// besideShows measures a picture from the front: the window beside it to a hundredth, with the digits of the dose line; the body
// itself by how it is seen shortened, where two decimals of a dot are worth 1.6° of a straight leg.
func besideShows(t *testing.T, e exercise, side unit.Side, r unit.Reach, d drawing) {
	t.Helper()
	window := d.joints("f-beside")
	if e.Figure.Hidden {
		if len(window)+len(d.Texts) > 0 {
			t.Errorf("%s: a hidden range has a window", e.id)
		}
		return
	}
	if len(window) != 3 {
		t.Fatalf("%s, %s: the window has %d dots, want 3", e.id, side, len(window))
	}
	drawn := bendOf(window)
	allowed(t, e, side, r, "is drawn", drawn)
	var texts []string
	for _, x := range d.Texts {
		texts = append(texts, x.Text)
	}
	if want := slices.Compact([]string{fmt.Sprintf("%g°", r.Straightest), fmt.Sprintf("%g°", r.MostBent)}); !slices.Equal(texts, want) {
		t.Errorf("%s, %s: labels %v, the dose line says %v", e.id, side, texts, want)
	}
	if r.Straightest == r.MostBent && math.Abs(drawn-float64(r.MostBent)) > 0.1 {
		t.Errorf("%s, %s: the window shows %.2f°, its label %v", e.id, side, drawn, r.MostBent)
	}
	if body := inSpace(d.joints("f-joint")); e.Figure.Above == 0 && math.Abs(body-drawn) > 3.5 {
		t.Errorf("%s, %s, %v: the body is drawn at %.2f°, its window at %.2f°", e.id, side, r, body, drawn)
	}
}

// inSpace measures a bend from the front: how far a bone comes toward the reader is how much shorter it is seen than it is, the
// thigh ahead and the shank back.
func inSpace(ps []point) float64 {
	u, v := ps[1].sub(ps[0]), ps[2].sub(ps[1])
	ahead := math.Sqrt(math.Max(0, thighLength*thighLength-u.dot(u)))
	back := math.Sqrt(math.Max(0, shankLength*shankLength-v.dot(v)))
	return math.Acos(clamp((u.dot(v)-ahead*back)/(thighLength*shankLength), -1, 1)) * 180 / math.Pi
}

func labelled(t *testing.T, e exercise, side unit.Side, r unit.Reach, d drawing, drawn float64) {
	t.Helper()
	var texts []string
	nearest := math.Inf(1)
	for _, x := range d.Texts {
		texts = append(texts, x.Text)
		nearest = math.Min(nearest, math.Abs(drawn-number(t, strings.TrimSuffix(x.Text, "°"))))
	}
	want := slices.Compact([]string{fmt.Sprintf("%g°", r.Straightest), fmt.Sprintf("%g°", r.MostBent)})
	if !slices.Equal(texts, want) {
		t.Errorf("%s, %s: labels %v, the dose line says %v", e.id, side, texts, want)
	}
	if nearest > 0.1 {
		t.Errorf("%s, %s, %v: drawn at %.3f°, %.3f from the nearest label", e.id, side, r, drawn, nearest)
	}
}

// Ends tells what is drawn.
func TestEndsAreDrawn(t *testing.T) {
	for _, e := range exercises(t) {
		for _, r := range limits(e.Range) {
			first, last, ok, err := Ends(e.Figure, &r)
			if err != nil {
				t.Errorf("%s: %v", e.id, err)
			}
			if !ok {
				continue
			}
			svg, _ := Draw(e.Figure, Options{ID: "f1", Title: "t", Describe: "d", Range: &r})
			d, class := parsed(t, svg), "f-joint"
			if beside, bends := Beside(e.Figure); beside && !bends {
				if first != r.Straightest || last != r.MostBent {
					t.Errorf("%s stays within %v, Ends says %g to %g", e.id, r, first, last)
				}
				continue
			} else if beside {
				class = "f-beside"
			}
			if b := bendOf(d.joints(class)); math.Abs(b-float64(last)) > 0.1 {
				t.Errorf("%s: Ends says it ends at %.2f, drawn %.2f", e.id, last, b)
			}
			if was := d.joints("f-was"); len(was) == 3 && math.Abs(bendOf(was)-float64(first)) > 0.1 {
				t.Errorf("%s: Ends says it starts at %.2f, drawn %.2f", e.id, first, bendOf(was))
			}
		}
	}
}

// What cannot be drawn is refused, not drawn differently.
func TestDrawRefuses(t *testing.T) {
	squat := byID(t, "squat")
	for _, c := range []struct {
		name string
		pose Pose
		o    Options
		says string
	}{
		{"no pose", Pose{}, Options{ID: "a", Title: "t", Describe: "d"}, "no pose"},
		{"no words", squat.Figure, Options{ID: "a", Title: "t"}, "description"},
		{"a range that the pose has nothing of", squat.Figure, Options{ID: "a", Title: "t", Describe: "d", Range: &unit.Reach{Straightest: 100, MostBent: 120}}, "nothing of the pose"},
		{"an empty range", squat.Figure, Options{ID: "a", Title: "t", Describe: "d", Range: &unit.Reach{Straightest: 60, MostBent: 40}}, "empty"},
	} {
		if svg, err := Draw(c.pose, c.o); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %d bytes, error %v, want one that says %q", c.name, len(svg), err, c.says)
		}
	}
}

func byID(t testing.TB, id string) exercise {
	for _, e := range exercises(t) {
		if e.id == id {
			return e
		}
	}
	t.Fatalf("no exercise %s", id)
	return exercise{}
}

// BenchmarkDraw draws the whole library, still and with what moves it, and tells the time of a picture, and the best time
// of the slowest one: a mean would measure what else the machine does.
func BenchmarkDraw(b *testing.B) {
	for name, moves := range map[string]bool{"still": false, "moving": true} {
		b.Run(name, func(b *testing.B) {
			all := exercises(b)
			took := make([]time.Duration, len(all))
			for b.Loop() {
				for i, e := range all {
					began := time.Now()
					if _, err := Draw(e.Figure, Options{ID: "f1", Title: "t", Describe: "d", Side: unit.Left, Range: e.Range, Moves: moves}); err != nil {
						b.Fatal(err)
					}
					if spent := time.Since(began); took[i] == 0 || spent < took[i] {
						took[i] = spent
					}
				}
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*len(all)), "µs/figure")
			b.ReportMetric(float64(slices.Max(took).Microseconds()), "µs/slowest")
		})
	}
}

// A picture as a file stands alone: its own name space and colours, one element, and nothing from elsewhere.
func TestFileStandsAlone(t *testing.T) {
	e := byID(t, "squat")
	svg, err := File(e.Figure, Options{ID: "squat-left", Title: e.Title, Describe: e.Describe, Side: unit.Left, Range: e.Range})
	if err != nil {
		t.Fatal(err)
	}
	file, d := string(svg), parsed(t, svg)
	if d.Title.Text != e.Title || !strings.HasPrefix(file, `<svg xmlns="http://www.w3.org/2000/svg" class="fig"`) || strings.Count(file, "<style>") != 1 || !strings.Contains(file, "forced-colors") {
		t.Errorf("%.300s", file)
	}
	if strings.Contains(file, "<script") || strings.Count(file, "//") != 1 {
		t.Error("the file reaches out")
	}
}
