package figure

// What stands in the room. Each piece rests on the floor; at is its left end and its top. under is the hip of the last frame.

func (k Kit) furniture(c *canvas, under point) {
	at := pointOf(k.At)
	if k.On == "hip" { // as high as the seat comes down
		at.Y = under.Y - rSeated
	}
	switch k.Kind {
	case Mat:
		if k.Height > 0 {
			c.ground("f-lens", at.add(point{0, k.Height / 2}), k.Width, 1.5*k.Height, 4)
			return
		}
		c.slab("f-pad", at, k.Width, 2.2)
	case Bench:
		for _, x := range []float64{at.X + 6, at.X + k.Width - 6} {
			c.line("f-kit", point{x, at.Y - 3}, point{x, 0.8})
			c.line("f-kit", point{x - 4, 0.8}, point{x + 4, 0.8})
		}
		c.slab("f-pad", at, k.Width, 4.6)
	case Seat:
		k.seat(c, at)
	case Chair:
		k.chair(c, at)
	case Wall:
		k.wall(c, at)
	case Support:
		c.line("f-kit", point{at.X, 0.8}, at)
		c.line("f-kit", at.sub(point{5, 0}), at.add(point{5, 0}))
	case Rail:
		c.line("f-kit", at, pointOf(k.To))
	case Post:
		c.line("f-kit", point{at.X, 0.8}, point{at.X, k.Height})
		c.line("f-kit", point{at.X - 5, 0.8}, point{at.X + 5, 0.8})
	case TowelRoll:
		c.dot("f-pad", at.sub(point{0, k.Height / 2}), k.Height/2)
		c.dot("f-kit", at.sub(point{0, k.Height / 2}), k.Height/5)
	case Line:
		if k.Height > 0 {
			c.ground("f-stripe", at.add(point{-1.2, 0.2}), 2.4, k.Height, 2)
			return
		}
		c.slab("f-stripe", at.add(point{-2, 0.9}), 4, 1.8)
	case Cone:
		k.cone(c, at)
	default:
		k.underFoot(c, at)
	}
}

// ground lies flat and comes toward the reader: from its far left corner so wide, so far down, and wider there by a little.
func (c *canvas) ground(class string, far point, wide, deep, wider float64) {
	d := c.trace()
	d.to('M', far)
	d.to('L', far.add(point{wide, 0}))
	d.to('L', far.add(point{wide + wider, -deep}))
	d.to('L', far.add(point{-wider, -deep}))
	d.close()
	c.grow(far.add(point{wide + wider, 0}), 0)
	c.grow(far.add(point{-wider, -deep}), 0)
	c.path(class, d)
}

// slab is a filled rectangle below its top.
func (c *canvas) slab(class string, at point, w, h float64) {
	d := c.trace()
	d.box(at.sub(point{0, h}), w, h)
	c.path(class, d)
}

// seat is the pad of a machine with a leaning back rest.
func (k Kit) seat(c *canvas, at point) {
	middle := at.X + k.Width/2
	c.line("f-kit", point{middle, at.Y - 3}, point{middle, 0.8})
	c.line("f-kit", point{middle - 11, 0.8}, point{middle + 11, 0.8})
	hinge := at.add(point{-1, -1.4})
	d := c.trace()
	d.capsule(capsule{disc{hinge, 2.2}, disc{hinge.add(way(180 + k.Lean).times(k.Height)), 2.2}})
	c.path("f-pad", d)
	c.slab("f-pad", at.sub(point{2, 0}), k.Width+2, 4.6)
}

func (k Kit) chair(c *canvas, at point) {
	right := at.X + k.Width
	c.line("f-kit", point{at.X + 1, 0.8}, point{at.X + 1, at.Y - 1}, point{at.X - 2, at.Y + k.Height})
	c.line("f-kit", point{right - 2, 0.8}, point{right - 2, at.Y - 2})
	c.slab("f-pad", at, k.Width, 3)
}

func (k Kit) wall(c *canvas, at point) {
	c.line("f-kit", point{at.X, 0.8}, point{at.X, k.Height})
	d := c.trace()
	for y := 6.0; y < k.Height; y += 8 {
		d.to('M', point{at.X - 0.6, y})
		d.to('L', point{at.X - 4.4, y - 4.4})
	}
	c.grow(point{at.X - 5, 3}, 0)
	c.path("f-thin", d)
}

func (k Kit) cone(c *canvas, at point) {
	d := c.trace()
	d.to('M', at.add(point{-3.4, 0.8}))
	d.to('L', at.add(point{0, 10}))
	d.to('L', at.add(point{3.4, 0.8}))
	d.close()
	c.grow(at.add(point{0, 5}), 5)
	c.path("f-stripe", d)
}
