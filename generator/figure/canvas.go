package figure

import "math"

// canvas gathers the shapes of a picture, its bounds, and what labels and arrows must keep clear of.
type canvas struct {
	mirror   bool
	shapes   []shape
	low, top point // bounds, in the body's own space
	any      bool
	hard     obstacles // limbs, labels, arrows: nothing may lie on them
	soft     obstacles // ghost and equipment: better not
	into     *obstacles
	rings    bool     // the points of paths are kept, for motion
	still    *canvas  // of a later moment: the picture that it is a moment of. Only what moves is drawn anew
	round    bool     // it moves round and not back
	fixed    [][2]int // which shapes stay where they are at every moment, from and to, in the order of drawing
}

// avoid tells where the capsules go that are drawn from now on. A later moment needs none: it has no label to place.
func (c *canvas) avoid(list *obstacles) {
	if c.still == nil {
		c.into = list
	}
}

// stay draws what is the same at every moment, or takes it over from the still picture.
func (c *canvas) stay(draw func()) {
	if c.still != nil {
		at := c.still.fixed[len(c.fixed)]
		c.shapes, c.fixed = append(c.shapes, c.still.shapes[at[0]:at[1]]...), append(c.fixed, at)
		return
	}
	from := len(c.shapes)
	draw()
	c.fixed = append(c.fixed, [2]int{from, len(c.shapes)})
}

// stays reports whether a shape is the same at every moment.
func (c *canvas) stays(i int) bool {
	for _, at := range c.fixed {
		if i >= at[0] && i < at[1] {
			return true
		}
	}
	return false
}

// capsule is the hull of two discs: a tapered limb with round ends.
type capsule struct{ a, b disc }

type disc struct {
	at point
	r  float64
}

// out is a place of the body in the picture.
func (c *canvas) out(p point) point {
	if c.mirror {
		return point{-p.X, -p.Y}
	}
	return point{p.X, -p.Y}
}

// grow makes the picture hold a disc.
func (c *canvas) grow(p point, r float64) {
	if !c.any {
		c.low, c.top, c.any = p, p, true
	}
	c.low = point{math.Min(c.low.X, p.X-r), math.Min(c.low.Y, p.Y-r)}
	c.top = point{math.Max(c.top.X, p.X+r), math.Max(c.top.Y, p.Y+r)}
}

// note keeps a capsule that others must keep clear of, where the caller has said so.
func (c *canvas) note(k capsule) {
	c.grow(k.a.at, k.a.r)
	c.grow(k.b.at, k.b.r)
	if c.into != nil {
		c.into.add(k)
	}
}

// sweep is the flag of an arc that goes counter-clockwise in the body's space, or not.
func (c *canvas) sweep(counter bool) byte {
	if counter == c.mirror {
		return '1'
	}
	return '0'
}

func (c *canvas) path(class string, d trace) {
	c.shapes = append(c.shapes, shape{class: class, path: d.b, rings: d.rings})
}
func (c *canvas) dot(class string, p point, r float64) {
	c.grow(p, r)
	c.shapes = append(c.shapes, shape{class: class, at: c.out(p), r: r})
}

// write puts a label with its middle at p.
func (c *canvas) write(class string, p point, text string) {
	o := c.out(p)
	c.shapes = append(c.shapes, shape{class: class, at: point{o.X, o.Y + capHeight/2}, text: text})
}

// line is one straight stroke.
func (c *canvas) line(class string, ps ...point) {
	d := c.trace()
	for i, p := range ps {
		d.to("ML"[min(i, 1)], p)
		if i > 0 {
			c.note(capsule{disc{ps[i-1], 0.8}, disc{p, 0.8}})
		}
	}
	c.path(class, d)
}
