package figure

import (
	"math"

	"paceleaf/generator/unit"
)

// Of one who faces the reader a bent knee is seen shortened alone, and nobody can tell its bend. So it is drawn once more in a
// round window, from the side, with its range; there its bend can be measured. So is one whose range would lie behind the limbs.

// The window: its radius, where the knee stands in it, how long its bones are drawn, the radius of its range, and how far from
// the knee its labels are; chosen.
const (
	besideWindow = 25.0
	besideBone   = 12.0
	besideRange  = 15.5
	besideLabel  = 21.5
	apartLabels  = 48.0 // least angle between two labels, in degrees
)

var besideKnee = point{9.5, 6.5}

// fromBeside draws the window of the last frame where there is room; thigh is the direction in which the thigh is drawn there.
func (m movement) fromBeside(c *canvas, bend, thigh float64, r unit.Reach) {
	middle := c.roomFor(besideWindow)
	c.dot("f-lens", middle, besideWindow)
	ahead, up := way(thigh+90), way(thigh+180)
	w := wedge{knee: middle.add(ahead.times(besideKnee.X)).add(up.times(besideKnee.Y)), radius: besideRange, zero: thigh, reach: r, single: r.Straightest == r.MostBent}
	w.lo, w.hi = w.ends()
	if lo, hi := m.natural(); m.bends() {
		w.lo, w.hi = math.Min(lo, w.lo), math.Max(hi, w.hi)
	}
	w.draw(c)
	hip, ankle := w.knee.add(up.times(besideBone)), w.at(bend, besideBone)
	calf := between(w.knee, ankle, 0.45).add(way(w.toward(bend) - 90).times(0.5))
	c.part("f-work", func(d *trace) {
		d.chain(disc{hip, 3.4}, disc{w.knee, 2.7}, disc{calf, 2.6}, disc{ankle, 1.9})
	})
	for _, p := range []point{hip, w.knee, ankle} {
		c.dot("f-beside", p, 1.1)
	}
	w.besides(c)
}

// besides writes the ends of a range in its window, apart from each other.
func (w wedge) besides(c *canvas) {
	a, b := w.ends()
	write := func(bend, toward float64) {
		text := digits(bend)
		p := w.at(toward, besideLabel)
		wider := float64(len([]rune(text)))*digitWide/2 - capHeight/2 // letters are wider than high
		c.write("f-deg", p.add(point{wider * (p.X - w.knee.X) / besideLabel, 0}), text)
	}
	if w.single {
		write(a, a)
		return
	}
	more := math.Max(6, (apartLabels-(b-a))/2)
	write(a, a-more)
	write(b, b+more)
}

// roomFor is the middle of a window beside the body or above it: where the sheet grows least.
func (c *canvas) roomFor(radius float64) (found point) {
	least := math.Inf(1)
	for x := c.low.X - radius; x <= c.top.X+radius+lookStep; x += lookStep {
		for y := radius + 6; y <= c.top.Y+radius+lookStep; y += lookStep {
			p := point{x, y}
			wide := math.Max(c.top.X, x+radius) - math.Min(c.low.X, x-radius)
			cost := float64(4*math.Max(wide, leastWide-2*margin)) + math.Max(c.top.Y, y+radius) - c.low.Y
			if cost < least {
				cost += float64(60 * c.hard.deepest(p, radius+2))
			}
			if cost < least {
				cost += float64(3 * c.soft.deepest(p, radius+1))
			}
			if cost < least {
				least, found = cost, p
			}
		}
	}
	return found
}

// lookStep is how far places that are looked at lie apart, in hundredths of stature; chosen.
const lookStep = 5
