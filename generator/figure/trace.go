package figure

import (
	"math"
	"strconv"
)

// trace is a path that is being written, in one decimal.
type trace struct {
	c     *canvas
	b     []byte
	rings [][]point // what the path goes through, piece by piece; kept for motion alone
}

func (c *canvas) trace() trace {
	t := trace{c: c}
	if c.still == nil {
		t.b = make([]byte, 0, usualPath)
	}
	return t
}

// usualPath is room for the outline of a limb, in letters.
const usualPath = 512

func (t *trace) number(v float64, first bool) {
	if t.c.still != nil {
		return // of a later moment the points alone are read
	}
	n := int64(math.Round(v * 10))
	switch {
	case n < 0:
		t.b = append(t.b, '-')
		n = -n
	case !first:
		t.b = append(t.b, ' ')
	}
	t.b = strconv.AppendInt(t.b, n/10, 10)
	if n%10 != 0 {
		t.b = append(t.b, '.', byte('0'+n%10))
	}
}

// to writes a command that ends at p.
func (t *trace) to(command byte, p point) {
	t.b = append(t.b, command)
	if command == 'M' && t.c.rings {
		t.rings = append(t.rings, nil)
	}
	o := t.keep(p)
	t.number(o.X, true)
	t.number(o.Y, false)
}

// keep gives a place of the picture, and remembers it where the path may move.
func (t *trace) keep(p point) point {
	o := t.c.out(p)
	if n := len(t.rings); n > 0 {
		t.rings[n-1] = append(t.rings[n-1], o)
	}
	return o
}

// curve writes a Bézier curve.
func (t *trace) curve(a, b, p point) {
	t.b = append(t.b, 'C')
	for i, q := range []point{a, b, p} {
		o := t.keep(q)
		t.number(o.X, i == 0)
		t.number(o.Y, false)
	}
}

// arc writes an arc of a circle that ends at p.
func (t *trace) arc(r float64, large, counter bool, p point) {
	t.ellipse(r, r, 0, large, counter, p)
}

func (t *trace) ellipse(rx, ry, turn float64, large, counter bool, p point) {
	t.b = append(t.b, 'A')
	t.number(rx, true)
	t.number(ry, false)
	t.number(turn, false)
	big := byte('0')
	if large {
		big = '1'
	}
	if t.c.still == nil {
		t.b = append(t.b, ' ', big, ' ', t.c.sweep(counter))
	}
	o := t.keep(p)
	t.number(o.X, false)
	t.number(o.Y, false)
}

func (t *trace) close() { t.b = append(t.b, 'Z') }

// capsule adds the outline of a capsule, always the same way round: overlapping parts of one path then stay filled.
func (t *trace) capsule(k capsule) {
	t.c.note(k)
	a, b := k.a, k.b
	d := b.at.sub(a.at).length()
	if d <= math.Abs(a.r-b.r)+0.01 {
		t.circle(disc{a.at, math.Max(a.r, b.r)}, b, a.r >= b.r)
		return
	}
	along := (a.r - b.r) / d // cosine of the angle between the bone and where the outline leaves a disc
	u := b.at.sub(a.at).times(1 / d)
	ahead, aside := u.times(along), u.across().times(math.Sqrt(1-float64(along*along)))
	one, other := ahead.add(aside), ahead.sub(aside)
	t.to('M', a.at.add(one.times(a.r)))
	t.to('L', b.at.add(one.times(b.r)))
	t.arc(b.r, a.r < b.r, false, b.at.add(other.times(b.r)))
	t.to('L', a.at.add(other.times(a.r)))
	t.arc(a.r, a.r >= b.r, false, a.at.add(one.times(a.r)))
	t.close()
}

// circle adds the larger of two discs, where one holds the other.
func (t *trace) circle(a, b disc, first bool) {
	if !first {
		a.at = b.at
	}
	l, r := a.at.sub(point{a.r, 0}), a.at.add(point{a.r, 0})
	t.to('M', l)
	t.arc(a.r, true, false, r)
	t.arc(a.r, true, false, l)
	t.close()
}

// chain adds capsules from disc to disc.
func (t *trace) chain(ds ...disc) {
	for i := 0; i+1 < len(ds); i++ {
		t.capsule(capsule{ds[i], ds[i+1]})
	}
}

// box adds a rectangle from its lower left corner.
func (t *trace) box(at point, w, h float64) {
	r := math.Min(w, h) / 2
	t.c.note(capsule{disc{at.add(point{r, r}), r}, disc{at.add(point{w - r, h - r}), r}})
	t.to('M', at)
	for _, p := range []point{{0, h}, {w, h}, {w, 0}} {
		t.to('L', at.add(p))
	}
	t.close()
}
