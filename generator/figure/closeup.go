package figure

// closer is how much larger the knee is drawn in its own round window, and window that window's radius.
const (
	closer = 1.9
	window = 20.0
)

// closeUp draws the knee once more above the body, where two frames would look the same.
func (c *canvas) closeUp(l leg, shows Close) {
	at := l.knee.add(point{18, 15 + window})
	c.line("f-thin", l.knee.add(at.sub(l.knee).unitOf().times(5)), at.add(l.knee.sub(at).unitOf().times(window)))
	c.dot("f-lens", at, window)
	if shows == Glides {
		c.kneeFromFront(at)
		return
	}
	c.kneeFromSide(at, l)
}

// kneeFromSide is the leg from the middle of the thigh to the middle of the shank, as much as the window holds; its back
// goes down.
func (c *canvas) kneeFromSide(at point, l leg) {
	cut := window - 3.9*closer
	thigh, shank := at.add(way(l.thigh+180).times(cut)), at.add(way(l.shank).times(cut))
	calf := at.add(way(l.shank).times(cut * 0.6)).add(way(l.shank - 90).times(0.7 * closer))
	c.part("f-work", func(d *trace) {
		d.chain(disc{thigh, 3.9 * closer}, disc{at, rKnee * closer}, disc{calf, rCalf * closer}, disc{shank, 3.1 * closer})
	})
	front := way((l.thigh+l.shank)/2 + 90)
	c.kneecap(at.add(front.times(rKnee*closer)), front.across().times(2.2))
	tip := at.sub(front.times(rKnee*closer + 9))
	c.arrow([]point{tip.add(front.times(9)), tip.add(front.times(4)), tip})
}

func (c *canvas) kneecap(at, along point) {
	c.part("f-cap", func(d *trace) { d.capsule(capsule{disc{at.add(along), 2.3}, disc{at.sub(along), 2.3}}) })
}

// kneeFromFront shows four small arrows round the kneecap.
func (c *canvas) kneeFromFront(at point) {
	c.part("f-work", func(d *trace) {
		d.chain(disc{at.add(point{0, 11}), 8.4}, disc{at, 6.8}, disc{at.sub(point{0, 11}), 7})
	})
	c.kneecap(at, point{0, 0.6})
	for _, u := range []point{{1, 0}, {-1, 0}, {0, 1}, {0, -1}} {
		from := at.add(u.times(5.5))
		c.arrow([]point{from, from.add(u.times(5)), from.add(u.times(10.5))})
	}
}
