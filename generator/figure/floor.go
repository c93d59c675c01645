package figure

import "paceleaf/generator/basis"

// Floor is a plan of the ground, seen from above and drawn beside the body, where the way says more than the body does.
type Floor struct {
	At    basis.Origin
	Run   [][]float64 `key:"run,required" range:"-90 90" doc:"corners of the way, from the start; y goes ahead" show:"[[28, 0], [28, 48], [2, 78]]"`
	Cones [][]float64 `key:"cones" range:"-90 90" doc:"places of the cones" show:"[[39, 48], [0, 86]]"`
	Plant []float64   `key:"plant" range:"-90 90" doc:"where the working foot is put down" show:"[31.5, 44]"`
	Other [][]float64 `key:"other" range:"-90 90" doc:"where the other foot is put down" show:"[[23, 26], [15, 56]]"`
}

// draw lays the plan with its origin at the lower left corner.
func (f Floor) draw(c *canvas, origin point) {
	if len(f.Run) < 2 {
		return
	}
	at := func(xy []float64) point { return origin.add(pointOf(xy)) }
	d := c.trace()
	for i, xy := range f.Run[:len(f.Run)-1] {
		d.to("ML"[min(i, 1)], at(xy))
		c.grow(at(xy), 4)
	}
	c.path("f-out", d)
	n := len(f.Run)
	c.arrow([]point{between(at(f.Run[n-2]), at(f.Run[n-1]), 0.06), between(at(f.Run[n-2]), at(f.Run[n-1]), 0.5), at(f.Run[n-1])})
	for _, xy := range f.Cones {
		c.dot("f-stripe", at(xy), 2.6)
		c.dot("f-metal", at(xy), 0.9)
	}
	for _, xy := range f.Other {
		c.part("f-far", func(d *trace) { d.print(at(xy), 0) })
	}
	if len(f.Plant) == 2 {
		c.part("f-work", func(d *trace) { d.print(at(f.Plant), 0) })
	}
}

// print is the sole of a shoe, its toes ahead.
func (t *trace) print(p point, turn float64) {
	u := way(180 - turn)
	t.capsule(capsule{disc{p.sub(u.times(3.4)), 1.6}, disc{p.add(u.times(3)), 2.3}})
}
