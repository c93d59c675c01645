package figure

import "math"

// The outline of each part of the body, seen from the front.

func (t *trace) frontTrunk(s frontal) {
	p := s.chest
	t.capsule(capsule{disc{p(-9, 25.6), 3.8}, disc{p(9, 25.6), 3.8}})
	t.to('M', p(12.4, 24.2))
	t.curve(p(9.6, 14), p(7.4, 12), s.body(point{9.6, 0}))
	t.to('L', s.body(point{-9.6, 0}))
	t.curve(p(-7.4, 12), p(-9.6, 14), p(-12.4, 24.2))
	t.close()
	t.c.note(capsule{disc{p(0, 24), 8}, disc{s.body(point{0, 2}), 8}})
	t.capsule(capsule{disc{s.body(point{-5.4, -0.8}), 4.4}, disc{s.body(point{5.4, -0.8}), 4.4}})
	t.chain(disc{p(-3, 27), 2.6}, disc{s.neck, 2.6}, disc{s.head, 2.6})
	t.chain(disc{p(3, 27), 2.6}, disc{s.neck, 2.6})
	t.skull(s.head, 4.9, 6.4, 180-s.roll-s.lean)
}

func (t *trace) frontLeg(s frontal, i int) {
	hip, knee, ankle := s.hips[i], s.knees[i], s.ankles[i]
	t.chain(disc{hip, 5.2}, disc{between(hip, knee, 0.45), 4.5}, disc{knee, 3.3}, disc{between(knee, ankle, 0.3), 3.3},
		disc{between(knee, ankle, 0.8), 2.1}, disc{ankle, 2}, disc{s.feet[i], 2})
	toes := s.ankles[i].sub(s.feet[i]).unitOf().across().times(-2.6 * outward(i)) // a foot that points at the reader, a little outward
	t.capsule(capsule{disc{s.feet[i], 2}, disc{s.feet[i].add(toes), 1.7}})
}

func (t *trace) frontArm(s frontal, i int) {
	t.chain(disc{s.sh[i], 2.8}, disc{s.elbow[i], 2.1}, disc{s.wr[i], 1.8})
}

func (c *canvas) frontGhost(s frontal) {
	c.part("f-ghost", func(d *trace) {
		d.frontTrunk(s)
		d.frontLeg(s, 0)
		d.frontLeg(s, 1)
	})
}

func (c *canvas) front(s frontal, work Work) {
	far, near := "f-far", "f-work"
	switch work {
	case BothWork:
		far = "f-twin"
	case NoneWorks:
		near = "f-body"
	}
	c.part(far, func(d *trace) { d.frontLeg(s, 1) })
	farArm, trunk := func(d *trace) { d.frontArm(s, 1) }, func(d *trace) { d.frontTrunk(s) }
	if math.Abs(s.roll) < 45 { // of one who stands both arms are before the chest, of one who lies the lower is behind
		farArm, trunk = trunk, farArm
	}
	c.part("f-body", farArm)
	c.part("f-body", trunk)
	c.part(near, func(d *trace) { d.frontLeg(s, 0) })
	for _, p := range []point{s.hips[0], s.knees[0], s.ankles[0]} {
		c.dot("f-joint", p, 1.1)
	}
	c.part("f-body", func(d *trace) { d.frontArm(s, 0) })
}

// onBoth is what a frontal body has on its legs or under its feet.
func (k Kit) onBoth(c *canvas, s frontal) {
	switch k.Kind {
	case Loop:
		k.loop(c, s)
	case Band:
		c.line("f-band", pointOf(k.At), s.wr[1])
		c.dot("f-metal", pointOf(k.At), 1.6)
	case Slider:
		c.slider(s.feet[1])
	case HipLine:
		c.hipLine("f-stop", s)
	}
}

// loop is an elastic band round both legs: on the ankles, or above the knees.
func (k Kit) loop(c *canvas, s frontal) {
	place := func(i int) point {
		if k.On == "knee" {
			return between(s.knees[i], s.hips[i], 0.22)
		}
		return between(s.ankles[i], s.knees[i], 0.14)
	}
	a, b := place(0), place(1)
	u := b.sub(a).unitOf().times(3.6)
	n := u.across().times(0.3)
	c.line("f-band", a.sub(u).add(n), b.add(u).add(n))
	c.line("f-band", a.sub(u).sub(n), b.add(u).sub(n))
}

// hipLine lies through both hips and beyond, so that a tilt is seen.
func (c *canvas) hipLine(class string, s frontal) {
	u := s.hips[1].sub(s.hips[0]).unitOf().times(19)
	middle := between(s.hips[0], s.hips[1], 0.5)
	c.line(class, middle.sub(u), middle.add(u))
}
