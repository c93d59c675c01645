package figure

import (
	"math"
	"strings"

	"paceleaf/generator/unit"
)

// usualRadius of the allowed range: beyond the thickness of the thigh, within the length of the shank.
const usualRadius = 23

// wedge is the allowed range, drawn at the knee and fixed to the segment that stays still: the thigh of an open chain, the
// shank of a closed one, where it shows how far the thigh may go.
type wedge struct {
	knee   point
	radius float64
	frame  Frame
	zero   float64 // direction of a straight knee
	reach  unit.Reach
	lo, hi float64 // the range that the exercise itself has
	single bool    // one angle that is held
}

func (m movement) wedgeAt(l leg, r unit.Reach) wedge {
	w := wedge{knee: l.knee, radius: m.pose.Radius, frame: m.pose.Frame, reach: r, zero: l.thigh, single: r.Straightest == r.MostBent}
	if w.radius == 0 {
		w.radius = usualRadius
	}
	if w.frame == OnShank {
		w.zero = l.shank + 180
	}
	w.lo, w.hi = m.natural()
	return w
}

// toward is the direction of a bend.
func (w wedge) toward(bend float64) float64 {
	if w.frame == OnShank {
		return w.zero + bend
	}
	return w.zero - bend
}

func (w wedge) at(bend, radius float64) point { return w.knee.add(way(w.toward(bend)).times(radius)) }

// ends are the two bends of the range; of a held angle both are the same.
func (w wedge) ends() (a, b float64) {
	return float64(w.reach.Straightest), float64(w.reach.MostBent)
}

// draw lays the wedge, its edge, a stop at each end and, dashed, what the exercise has and the limit forbids.
func (w wedge) draw(c *canvas) {
	a, b := w.ends()
	w.forbidden(c, a, b)
	if w.single {
		w.held(c, a)
		return
	}
	fill := c.trace()
	fill.to('M', w.knee)
	fill.to('L', w.at(a, w.radius))
	w.arc(&fill, a, b)
	fill.close()
	c.path("f-range", fill)
	edge := c.trace()
	edge.to('M', w.at(a, w.radius))
	w.arc(&edge, a, b)
	c.path("f-edge", edge)
	for _, q := range []float64{a, b} {
		c.line("f-stop", w.at(q, w.radius-2.6), w.at(q, w.radius+2))
	}
	for i := range spokes + 1 {
		c.soft.add(capsule{disc{w.knee, 1}, disc{w.at(lerp(a, b, float64(i)/spokes), w.radius), spokeWidth}})
	}
	c.grow(w.at((a+b)/2, w.radius), 1)
}

// A wedge is as many spokes to whatever looks for a free place.
const (
	spokes     = 4
	spokeWidth = 4.0
)

func (w wedge) arc(d *trace, from, to float64) {
	d.arc(w.radius, math.Abs(to-from) > 180, (w.frame == OnShank) == (to > from), w.at(to, w.radius))
}

// forbiddenFrom is the smallest part of the exercise's range that is worth a dashed arc, in degrees; chosen.
const forbiddenFrom = 6

func (w wedge) forbidden(c *canvas, a, b float64) {
	if w.single {
		return
	}
	for _, part := range [][2]float64{{w.lo, a}, {b, w.hi}} {
		if part[1]-part[0] > forbiddenFrom {
			d := c.trace()
			d.to('M', w.at(part[0], w.radius))
			w.arc(&d, part[0], part[1])
			c.path("f-out", d)
			c.grow(w.at(part[0], w.radius), 1)
			c.grow(w.at(part[1], w.radius), 1)
		}
	}
}

// held shows one angle: the straight line that the bend is measured from, and the arc between.
func (w wedge) held(c *canvas, bend float64) {
	c.line("f-stop", w.at(bend, w.radius-2.6), w.at(bend, w.radius+2))
	if bend < forbiddenFrom {
		return
	}
	line := c.trace()
	line.to('M', w.knee)
	line.to('L', w.at(0, w.radius))
	w.arc(&line, 0, bend)
	c.path("f-out", line)
	c.grow(w.at(0, w.radius), 1)
}

// digits prints a bend as the dose line does.
func digits(bend float64) string { return strings.Replace(hundredth(bend), "-", "−", 1) + "°" }
