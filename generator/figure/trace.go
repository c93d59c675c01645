package figure

import (
	"math"
	"strconv"
)

// trace is a path that is being written, in one decimal.
type trace struct {
	c *canvas
	b []byte
}

func (c *canvas) trace() trace { return trace{c: c} }

func (t *trace) number(v float64, first bool) {
	v = math.Round(v*10) / 10
	if !first && !(v < 0) {
		t.b = append(t.b, ' ')
	}
	if v == 0 {
		v = 0 // no minus before a zero
	}
	t.b = strconv.AppendFloat(t.b, v, 'f', -1, 64)
}

// to writes a command that ends at p.
func (t *trace) to(command byte, p point) {
	t.b = append(t.b, command)
	o := t.c.out(p)
	t.number(o.X, true)
	t.number(o.Y, false)
}

// curve writes a Bézier curve.
func (t *trace) curve(a, b, p point) {
	t.b = append(t.b, 'C')
	for i, q := range []point{a, b, p} {
		o := t.c.out(q)
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
	t.b = append(t.b, ' ', big, ' ', t.c.sweep(counter))
	o := t.c.out(p)
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
	turn := math.Atan2(b.at.Y-a.at.Y, b.at.X-a.at.X)
	open := math.Acos((a.r - b.r) / d)
	on := func(k disc, angle float64) point { return k.at.add(point{math.Cos(angle), math.Sin(angle)}.times(k.r)) }
	t.to('M', on(a, turn+open))
	t.to('L', on(b, turn+open))
	t.arc(b.r, a.r < b.r, false, on(b, turn-open))
	t.to('L', on(a, turn-open))
	t.arc(a.r, a.r >= b.r, false, on(a, turn+open))
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
