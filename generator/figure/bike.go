package figure

// A fixed bike: at is the axle of its crank, height that of its saddle, width from the axle back to the saddle's middle.

func (k Kit) bikeFrame(c *canvas) {
	a := pointOf(k.At)
	saddle := point{a.X - k.Width, k.Height}
	bar := point{a.X + 26, k.Height + 12}
	c.line("f-kit", a, saddle.sub(point{0, 2}))
	c.line("f-kit", a, bar, bar.add(point{-5, 6}))
	c.line("f-kit", point{a.X - 24, 1.2}, point{a.X + 34, 1.2})
	c.line("f-kit", a.sub(point{5, 2}), point{a.X - 12, 1.2})
	c.line("f-kit", a.add(point{5, -2}), point{a.X + 20, 1.2})
	d := c.trace()
	d.capsule(capsule{disc{saddle.sub(point{6, 0.6}), 1.8}, disc{saddle.add(point{7, -1}), 1.3}})
	c.path("f-pad", d)
	c.dot("f-pad", a, 7)
}

// cranks are two rods from the axle to the pedals, under the balls of both feet.
func (k Kit) cranks(c *canvas, s skeleton) {
	a := pointOf(k.At)
	for _, l := range []leg{s.far, s.near} {
		p := l.ball.sub(point{0, rBall + 0.7})
		c.line("f-rod", a, p)
		c.line("f-rod", p.sub(point{3.5, 0}), p.add(point{3.5, 0}))
	}
	c.dot("f-metal", a, 1.6)
}
