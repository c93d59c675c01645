package figure

import "math"

// shortest arrow that is seen as one, in hundredths of stature; chosen.
const shortest = 12

// arrow follows the tracked place from the first frame to the last, moved off the body.
func (m movement) arrow(c *canvas, first, last frame) {
	switch {
	case len(m.pose.Push) == 2:
		m.push(c, last)
		return
	case m.pose.Track == "" || m.pose.Motion == Hold:
		return
	}
	if m.pose.Track == "shin" && m.pose.View != FromFront {
		c.arrow(c.swung(m, first, last))
		return
	}
	path := m.tracked(first, last)
	if length(path) < 2 {
		return
	}
	if length(path) < shortest {
		path = stretched(path)
	}
	c.arrow(c.freed(path, m.pose.Shift))
}

// push is the arrow of a hold or of a flight: it ends where the tracked place is pressed, or beside it.
func (m movement) push(c *canvas, at frame) {
	tip := m.place(at)(at).add(pointOf(m.pose.Shift))
	tail := tip.sub(pointOf(m.pose.Push))
	c.arrow([]point{tail, between(tail, tip, 0.5), tip})
}

// steps is how many pieces a path is drawn in.
const steps = 16

func (m movement) tracked(first, last frame) (path []point) {
	place := m.place(last)
	a, b := place(first), place(last)
	for i := range steps + 1 {
		t := float64(i) / steps
		switch {
		case m.pose.Motion == Flight:
			path = append(path, between(a, b, t).add(point{0, float64(4 * m.pose.Lift * t * (1 - t))}))
		case m.pose.Motion == Cycle && m.axle != nil:
			path = append(path, m.axle.add(way(lerp(150, 30, t)).times(17)))
		default:
			path = append(path, place(mixed(first, last, t, m.axle)))
		}
	}
	return path
}

// place tells where the tracked place is in a frame.
func (m movement) place(last frame) func(frame) point {
	if m.pose.View == FromFront {
		return func(f frame) point { return solveFront(f).part(m.pose.Track) }
	}
	return func(f frame) point { return solve(f).part(m.pose.Track) }
}

// swung is the way of a shin, drawn round the knee beyond the wedge, on the ring that lies on the least.
func (c *canvas) swung(m movement, first, last frame) (found []point) {
	var knees, shins [steps + 1]point
	for i := range knees {
		f := mixed(first, last, float64(i)/steps, nil)
		l := solveLeg(f.near, f.trunk, hipOf(f))
		knees[i], shins[i] = l.knee, way(l.shank)
	}
	best := math.Inf(1)
	for radius := 31.0; radius <= 40; radius += 3 {
		path := make([]point, len(knees))
		for i, knee := range knees {
			path[i] = knee.add(shins[i].times(radius))
		}
		if cost := float64((radius-31)*offCost) + c.lies(path, best); cost < best {
			best, found = cost, path
		}
	}
	return found
}

func length(path []point) (sum float64) {
	for i := 1; i < len(path); i++ {
		sum += path[i].sub(path[i-1]).length()
	}
	return sum
}

// stretched makes a short straight arrow of a small movement.
func stretched(path []point) []point {
	a, b := path[0], path[len(path)-1]
	middle, u := between(a, b, 0.5), b.sub(a).unitOf().times(shortest/2)
	return []point{middle.sub(u), middle, middle.add(u)}
}

// freed moves a path as a whole to where it lies on nothing, as near as may be.
func (c *canvas) freed(path []point, shift []float64) []point {
	if len(shift) == 2 {
		return moved(path, pointOf(shift))
	}
	n := path[len(path)-1].sub(path[0]).unitOf().across()
	best, found := math.Inf(1), path
	for d := 0.0; d <= farthest && float64(d*offCost) < best; d += 2 {
		for _, by := range []float64{d, -d} {
			p := moved(path, n.times(by))
			if cost := float64(d*offCost) + c.lies(p, best-float64(d*offCost)); cost < best {
				best, found = cost, p
			}
		}
	}
	return found
}

// An arrow is moved at most so far, in hundredths of stature, and each of them costs so much; chosen by looking.
const (
	farthest = 42.0
	offCost  = 0.12
)

// lies is what it costs an arrow to lie on what is there; it stops counting beyond enough.
func (c *canvas) lies(path []point, enough float64) (cost float64) {
	for i := 0; i < len(path) && cost < enough; i += 2 {
		cost += c.hard.deepest(path[i], 2.2) + float64(0.4*c.soft.deepest(path[i], 1.4))
		if path[i].Y < 3 {
			cost += 3
		}
	}
	return cost
}

func moved(path []point, by point) []point {
	out := make([]point, len(path))
	for i, p := range path {
		out[i] = p.add(by)
	}
	return out
}

// arrow draws a smooth line through the points, with a head at its end; labels keep off it.
func (c *canvas) arrow(path []point) {
	if len(path) > 10 {
		path = path[1 : len(path)-1]
	}
	d := c.trace()
	d.smooth(thinned(path))
	n := len(path)
	u := path[n-1].sub(path[n-2]).unitOf()
	tip := path[n-1].add(u.times(0.4))
	back := tip.sub(u.times(3.6))
	d.to('M', back.add(u.across().times(2.4)))
	d.to('L', tip)
	d.to('L', back.sub(u.across().times(2.4)))
	c.path("f-case", d) // so that it stands out from whatever it crosses
	c.path("f-move", d)
	for i := range n - 1 {
		c.hard.add(capsule{disc{path[i], 1.6}, disc{path[i+1], 1.6}})
		c.grow(path[i+1], 2.5)
	}
}

// thinned keeps every fourth point: a smooth line through them looks the same.
func thinned(path []point) (out []point) {
	if len(path) < 9 {
		return path
	}
	for i := 0; i < len(path)-2; i += 4 {
		out = append(out, path[i])
	}
	return append(out, path[len(path)-1])
}

// smooth adds a Catmull-Rom curve through the points.
func (t *trace) smooth(ps []point) {
	t.to('M', ps[0])
	for i := 0; i+1 < len(ps); i++ {
		before, after := ps[max(0, i-1)], ps[min(len(ps)-1, i+2)]
		a := ps[i].add(ps[i+1].sub(before).times(1.0 / 6))
		b := ps[i+1].sub(after.sub(ps[i]).times(1.0 / 6))
		t.curve(a, b, ps[i+1])
	}
}
