package figure

// underFoot is what one stands on.
func (k Kit) underFoot(c *canvas, at point) {
	switch k.Kind {
	case Box:
		c.slab("f-pad", at, k.Width, at.Y-0.6)
	case Board:
		k.board(c, at)
	case Cushion:
		k.cushion(c, at)
	case Rocker:
		k.rocker(c, at)
	case Belt:
		k.belt(c, at)
	}
}

// board slopes from its top at the left down to the floor.
func (k Kit) board(c *canvas, at point) {
	d := c.trace()
	d.to('M', point{at.X, 0.6})
	d.to('L', at)
	d.to('L', point{at.X + k.Width, 0.6})
	d.close()
	c.grow(at, 0)
	c.grow(point{at.X + k.Width, 0}, 0)
	c.path("f-pad", d)
}

// cushion is soft: its ends are round.
func (k Kit) cushion(c *canvas, at point) {
	r := at.Y / 2
	c.part("f-pad", func(d *trace) {
		d.capsule(capsule{disc{point{at.X + r, r}, r}, disc{point{at.X + k.Width - r, r}, r}})
	})
}

// rocker is a plank that tips on half a disc.
func (k Kit) rocker(c *canvas, at point) {
	middle, r := at.X+k.Width/2, at.Y-1.8
	d := c.trace()
	d.to('M', point{middle - r, r})
	d.arc(r, false, true, point{middle + r, r})
	d.close()
	c.path("f-metal", d)
	c.slab("f-pad", at, k.Width, 1.8)
}

// belt is a treadmill: a moving belt round two rollers, the way it runs, a post with its desk and a bar to hold.
func (k Kit) belt(c *canvas, at point) {
	r := at.Y / 2
	right := at.X + k.Width
	d := c.trace()
	d.capsule(capsule{disc{point{at.X + r, r}, r}, disc{point{right - r, r}, r}})
	c.path("f-pad", d)
	for _, x := range []float64{at.X + r, right - r} {
		c.dot("f-metal", point{x, r}, r/2)
	}
	top := point{right + 3, k.Height}
	c.line("f-kit", point{right - r, r}, top, top.add(point{-13, -3}))
	c.line("f-rod", top.add(point{-4, 3}), top.add(point{3, -1}))
	tip := point{at.X + k.Width*0.36, r}
	c.line("f-thin", tip.add(point{2.4, 1.7}), tip, tip.add(point{2.4, -1.7}))
	c.line("f-thin", tip, tip.add(point{k.Width * 0.28, 0}))
}
