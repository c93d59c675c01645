package figure

import (
	"math"

	"paceleaf/generator/basis"
)

// Floor is a plan of the ground, seen from above and drawn beside the body, where the way says more than the body does.
type Floor struct {
	At    basis.Origin
	Run   [][]float64 `key:"run" range:"-90 90" doc:"corners of the way, from the start; y goes ahead. Without it feet alone are shown" show:"[[28, 0], [28, 48], [2, 78]]"`
	Cones [][]float64 `key:"cones" range:"-90 90" doc:"places of the cones" show:"[[39, 48], [0, 86]]"`
	Zoom  float64     `key:"zoom" range:"1 4" doc:"how many times larger than the body it is drawn; 1 unless said"`
	Plant []float64   `key:"plant" range:"-90 90" doc:"where the working foot is put down" show:"[31.5, 44]"`
	Other [][]float64 `key:"other" range:"-90 90" doc:"where the other foot is put down" show:"[[23, 26], [15, 56]]"`
}

// draw lays the plan beside the body, on a sheet of its own so that it is not taken for the ground that the body stands on.
func (f Floor) draw(c *canvas) {
	zoom := math.Max(f.Zoom, 1)
	low, top := f.bounds(zoom)
	origin := point{c.top.X + beside, sheetAbove}.sub(low)
	at := func(xy []float64) point { return origin.add(pointOf(xy).times(zoom)) }
	c.grow(origin.add(top), 0)
	c.sheet(origin.add(low), top.sub(low))
	f.way(c, at)
	for _, xy := range f.Cones {
		c.dot("f-stripe", at(xy), 2.6)
		c.dot("f-metal", at(xy), 0.9)
	}
	for _, xy := range f.Other {
		c.part("f-far", func(d *trace) { d.print(at(xy), zoom) })
	}
	if len(f.Plant) == 2 {
		c.part("f-work", func(d *trace) { d.print(at(f.Plant), zoom) })
	}
}

// The sheet of a plan: how far it lies from the body and above the floor, and its margin; chosen.
const (
	beside     = 7.0
	sheetAbove = 5.0
)

var sheetMargin = point{7, 9}

// bounds are the corners of the sheet.
func (f Floor) bounds(zoom float64) (low, top point) {
	all := append(append(append([][]float64{}, f.Run...), f.Cones...), f.Other...)
	if len(f.Plant) == 2 {
		all = append(all, f.Plant)
	}
	for i, xy := range all {
		p := pointOf(xy).times(zoom)
		if i == 0 {
			low, top = p, p
		}
		low, top = point{math.Min(low.X, p.X), math.Min(low.Y, p.Y)}, point{math.Max(top.X, p.X), math.Max(top.Y, p.Y)}
	}
	return low.sub(sheetMargin.times(zoom)), top.add(sheetMargin.times(zoom))
}

func (c *canvas) sheet(low, size point) {
	d := c.trace()
	d.box(low, size.X, size.Y)
	c.path("f-lens", d)
}

// way is the run: dashed up to its last corner, an arrow beyond.
func (f Floor) way(c *canvas, at func([]float64) point) {
	n := len(f.Run)
	if n < 2 {
		return
	}
	d := c.trace()
	for i, xy := range f.Run[:n-1] {
		d.to("ML"[min(i, 1)], at(xy))
	}
	c.path("f-out", d)
	from, to := at(f.Run[n-2]), at(f.Run[n-1])
	c.arrow([]point{between(from, to, 0.06), between(from, to, 0.5), to})
}

// print is the sole of a shoe, its toes ahead.
func (t *trace) print(p point, zoom float64) {
	u := point{0, zoom}
	t.capsule(capsule{disc{p.sub(u.times(3.4)), 1.6 * zoom}, disc{p.add(u.times(3)), 2.3 * zoom}})
}
