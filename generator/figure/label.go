package figure

import (
	"cmp"
	"math"
	"slices"
)

// Letters are 7 units high in a picture 150 wide: 13 pixels on a phone of 360, whose column is 284 wide.
const (
	letters   = 7.0
	capHeight = 4.9
	digitWide = 4.5 // of the widest common face, in bold
)

// labels writes the ends of a wedge where nothing else is.
func (w wedge) labels(c *canvas) {
	a, b := w.ends()
	outward := 1.0 // which way is out of the wedge at its straight end
	if w.frame == OnShank {
		outward = -1
	}
	c.label(w, a, outward)
	if !w.single {
		c.label(w, b, -outward)
	}
}

// label finds the cheapest place near the end of the range: off limbs and other labels, then near, then outside.
func (c *canvas) label(w wedge, bend, outward float64) {
	text := digits(bend)
	half := float64(len([]rune(text))) * digitWide / 2
	near := crowded{hard: c.hard, soft: c.soft}
	best, place := math.Inf(1), point{}
	ahead := way(w.toward(bend))
	for _, s := range spots {
		if s.cost >= best {
			break
		}
		p := w.knee.add(s.from(ahead, outward).times(w.radius + s.far))
		if cost := s.cost + near.crowd(p, half, best-s.cost); cost < best {
			best, place = cost, p
		}
	}
	c.hard.add(labelBox(place, half))
	c.grow(place, half+1)
	c.write("f-deg", place, text)
}

// spot is a place for a label: so far beyond the edge of the wedge, turned so much out of it, and what that costs.
type spot struct{ far, sin, cos, cost float64 }

// from is the way to the spot from the knee of a range whose end lies ahead.
func (s spot) from(ahead point, outward float64) point {
	sin := float64(s.sin * outward)
	return point{float64(ahead.X*s.cos) - float64(ahead.Y*sin), float64(ahead.X*sin) + float64(ahead.Y*s.cos)}
}

// farthestLabel is how far beyond the edge of the wedge a label is looked for, in hundredths of stature; chosen.
const farthestLabel = 26.0

// spots are all that are looked at, the cheapest first: just outside the end of the range.
var spots = allSpots()

func allSpots() (all []spot) {
	for far := -4.0; far <= farthestLabel; far += 1.5 {
		for turn := -40.0; turn <= 68; turn += 4 {
			sin, cos := math.Sincos(radians(turn))
			all = append(all, spot{far, sin, cos, float64(math.Abs(far-5)*0.22) + float64(math.Abs(turn-4)*0.09)})
		}
	}
	slices.SortStableFunc(all, func(a, b spot) int { return cmp.Compare(a.cost, b.cost) })
	return all
}

// labelBox is the room that a label takes.
func labelBox(p point, half float64) capsule {
	inner := math.Max(0, half-2.6)
	return capsule{disc{p.sub(point{inner, 0}), 3.3}, disc{p.add(point{inner, 0}), 3.3}}
}

// below the floor there is no room for a label, whose middle needs this much; chosen.
const aboveFloor = 5

// crowded is what a label keeps clear of, and room to name the few of them round one place.
type crowded struct {
	hard, soft obstacles
	few        []int32
}

// A letter keeps so far off what nothing may lie on, and so far off the rest, in hundredths of stature; chosen.
const (
	offHard = 3.6
	offSoft = 2.4
)

// crowd is what it costs to write at p; it stops counting beyond enough.
func (n *crowded) crowd(p point, half, enough float64) (cost float64) {
	if p.Y < aboveFloor {
		cost += 40
	}
	var at [5]point
	for i := range at {
		at[i] = p.add(point{float64(float64(i-2) / 2 * (half - 2)), 0})
	}
	n.few = n.hard.around(p, half-2+offHard, n.few[:0])
	for _, q := range at {
		if h := n.hard.deepestOf(n.few, q, offHard); h > 0 {
			if cost += 12 + float64(4*h); cost > enough {
				return cost
			}
		}
	}
	n.few = n.soft.around(p, half-2+offSoft, n.few[:0])
	for _, q := range at {
		cost += float64(n.soft.deepestOf(n.few, q, offSoft) * 0.15)
	}
	return cost
}
