package figure

// The body from the side, in the order in which it is laid on the sheet.

// ghost is a frame in outline only: where a movement begins, or what lies between. far says whether the other leg is shown
// where it is not right behind this one.
func (c *canvas) ghost(s skeleton, far bool) {
	d := c.trace()
	if far && s.far.ankle.sub(s.near.ankle).length() > stays {
		d.leg(s.far)
	}
	d.trunk(s)
	d.head(s)
	d.leg(s.near)
	d.arm(s.arm)
	c.path("f-ghost", d)
}

// farSide is what lies behind the trunk.
func (c *canvas) farSide(s skeleton, work Work) {
	c.part("f-far", func(d *trace) { d.arm(s.farArm) })
	class := "f-far"
	if work == BothWork {
		class = "f-twin"
	}
	c.part(class, func(d *trace) { d.leg(s.far) })
}

func (c *canvas) torso(s skeleton) {
	c.part("f-body", func(d *trace) {
		d.trunk(s)
		d.head(s)
	})
}

func (c *canvas) nearLeg(l leg, work Work) {
	class := "f-work"
	if work == NoneWorks {
		class = "f-body"
	}
	c.part(class, func(d *trace) { d.leg(l) })
	c.joints("f-joint", l)
}

// joints are the dots from which a reader, or a test, can measure the bend.
func (c *canvas) joints(class string, l leg) {
	for _, p := range []point{l.hip, l.knee, l.ankle} {
		c.dot(class, p, 1.1)
	}
}

func (c *canvas) part(class string, draw func(*trace)) {
	d := c.trace()
	draw(&d)
	c.path(class, d)
}
