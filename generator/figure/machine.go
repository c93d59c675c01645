package figure

// What goes with the body: machines whose pads and plates the leg moves, weights, bands.

func (k Kit) moving(c *canvas, s skeleton) {
	switch k.Kind {
	case Lever:
		k.lever(c, s.near)
	case Weight:
		k.ankleWeight(c, s.near)
	case Barbell:
		k.barbell(c, s)
	case Dumbbell:
		k.dumbbell(c, s)
	case FootPlate:
		k.footPlate(c, s.near)
	case Slider:
		c.slider(s.part(k.on("heel")))
	case Strap:
		k.strap(c, s)
	case Band:
		k.band(c, s.near)
	case Pads:
		c.pads(s.near)
	case Ball:
		k.ball(c, s.near)
	case BackPad:
		c.backPad(s)
	}
}

// slider is a cloth or a disc on the floor under a foot.
func (c *canvas) slider(under point) {
	d := c.trace()
	d.capsule(capsule{disc{point{under.X - 4, 0.8}, 0.8}, disc{point{under.X + 4, 0.8}, 0.8}})
	c.path("f-metal", d)
}

// lever is a machine's arm from the axis of the knee to a pad on the shank.
func (k Kit) lever(c *canvas, l leg) {
	side := way(l.shank + 90)
	if k.Behind {
		side = way(l.shank - 90)
	}
	down := way(l.shank)
	pad := l.knee.add(down.times(shankLength * k.Along)).add(side.times(5.2))
	c.line("f-rod", l.knee, l.knee.add(side.times(4.6)).add(down), pad)
	c.dot("f-pad", pad, 2.9)
	c.dot("f-metal", pad, 0.9)
}

func (k Kit) ankleWeight(c *canvas, l leg) {
	down, fore := way(l.shank), way(l.shank+90)
	at := l.ankle.sub(down.times(3.4))
	d := c.trace()
	d.capsule(capsule{disc{at.add(fore.times(1.5)), 2.3}, disc{at.sub(fore.times(1.5)), 2.3}})
	c.path("f-weight", d)
}

func (k Kit) barbell(c *canvas, s skeleton) {
	p := s.part(k.on("hand")).add(pointOf(k.At))
	r := k.Height
	c.dot("f-plate", p, r)
	c.dot("f-thin", p, r*0.55)
	c.dot("f-metal", p, 1.7)
}

func (k Kit) on(usual Part) Part {
	if k.On != "" {
		return k.On
	}
	return usual
}

func (k Kit) dumbbell(c *canvas, s skeleton) {
	p := s.part(k.on("hand")).add(pointOf(k.At))
	d := c.trace()
	d.chain(disc{p.sub(point{4.2, 0}), 2.7}, disc{p.sub(point{2.6, 0}), 2.7})
	d.chain(disc{p.sub(point{3, 0}), 0.9}, disc{p.add(point{3, 0}), 0.9})
	d.chain(disc{p.add(point{2.6, 0}), 2.7}, disc{p.add(point{4.2, 0}), 2.7})
	c.path("f-weight", d)
}

// footPlate stands under the sole, with its carriage and its weight behind it.
func (k Kit) footPlate(c *canvas, l leg) {
	along, down := way(l.foot), way(l.foot-90)
	base := l.sole.add(down.times(1.5))
	back := base.sub(along.times(4)).add(down.times(9))
	c.line("f-rod", base.sub(along.times(4)), back)
	d := c.trace()
	d.capsule(capsule{disc{back.sub(along.times(7)), 2.2}, disc{back.add(along.times(7)), 2.2}})
	c.path("f-weight", d)
	d = c.trace()
	d.capsule(capsule{disc{base.sub(along.times(9)), 1.3}, disc{base.add(along.times(15)), 1.3}})
	c.path("f-metal", d)
}

// strap runs from a hand, or from a fixed point, to a place of the near leg.
func (k Kit) strap(c *canvas, s skeleton) {
	from := s.arm.hand
	if len(k.At) == 2 {
		from = pointOf(k.At)
		c.dot("f-metal", from, 1.4)
	}
	c.line("f-band", from, s.part(k.on("ball")))
}

// band pulls from a fixed point at the back of the knee.
func (k Kit) band(c *canvas, l leg) {
	at := l.knee.sub(way(l.thigh).times(2.6))
	across := way(l.thigh + 90).times(3.6)
	c.line("f-band", pointOf(k.At), at)
	c.dot("f-metal", pointOf(k.At), 1.6)
	c.line("f-band", at.add(across), at.sub(across))
}

// pads are two electrodes on the front of the thigh, with their leads.
func (c *canvas) pads(l leg) {
	along, front := way(l.thigh), way(l.thigh+90)
	for _, share := range []float64{0.36, 0.72} {
		at := l.hip.add(along.times(thighLength * share)).add(front.times(4.6))
		d := c.trace()
		d.capsule(capsule{disc{at.sub(along.times(2)), 1}, disc{at.add(along.times(2)), 1}})
		c.path("f-weight", d)
		c.line("f-thin", at, at.add(front.times(6)))
	}
}

// backPad is the sledge of a squat machine: a pad along the trunk and a smaller one on the shoulder.
func (c *canvas) backPad(s skeleton) {
	up, back := way(s.pelvisUp), way(s.pelvisUp+90)
	foot := s.hip.add(back.times(7.6)).sub(up.times(2))
	d := c.trace()
	d.capsule(capsule{disc{foot, 1.7}, disc{foot.add(up.times(38)), 1.7}})
	c.path("f-pad", d)
	c.dot("f-pad", s.shoulder.add(up.times(3.6)).add(back.times(-1)), 2.4)
}

// ball is as high as the heel that lies on it.
func (k Kit) ball(c *canvas, l leg) {
	r := (l.heel.Y - rHeel) / 2
	c.dot("f-pad", point{l.heel.X, r}, r)
}
