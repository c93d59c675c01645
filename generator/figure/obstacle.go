package figure

import "math"

// obstacle is a capsule that labels and arrows keep clear of, and a disc round it: most places are far from most of them,
// and the disc says so at little cost.
type obstacle struct {
	capsule
	middle point
	reach  float64
}

// obstacles are all of one kind.
type obstacles []obstacle

func (o *obstacles) add(k capsule) {
	half := k.b.at.sub(k.a.at).times(0.5)
	*o = append(*o, obstacle{k, k.a.at.add(half), math.Sqrt(half.dot(half)) + max(k.a.r, k.b.r)})
}

// around adds the numbers of those that reach into a disc: a number is copied at less cost than a place in memory.
func (o obstacles) around(p point, r float64, some []int32) []int32 {
	for i := range o {
		if o[i].touches(p, r) {
			some = append(some, int32(i))
		}
	}
	return some
}

// deepestOf is how deep a disc sinks into the worst of some of them.
func (o obstacles) deepestOf(some []int32, p point, r float64) (worst float64) {
	for _, i := range some {
		if k := &o[i]; k.touches(p, r) {
			worst = max(worst, k.depthAt(p, r))
		}
	}
	return worst
}

// deepest is how deep a disc sinks into the worst of them.
func (o obstacles) deepest(p point, r float64) (worst float64) {
	for i := range o {
		if k := &o[i]; k.touches(p, r) {
			worst = max(worst, k.depthAt(p, r))
		}
	}
	return worst
}

func (k *obstacle) touches(p point, r float64) bool {
	x, y, room := p.X-k.middle.X, p.Y-k.middle.Y, k.reach+r
	return float64(x*x)+float64(y*y) < float64(room*room)
}

// depthAt tells how deep a disc at p sinks into a capsule; 0 if it does not.
func (k *capsule) depthAt(p point, r float64) float64 {
	along, w := k.b.at.sub(k.a.at), p.sub(k.a.at)
	t, n := 0.0, along.dot(along)
	if n > 0 {
		t = min(max(along.dot(w)/n, 0), 1)
	}
	room := lerp(k.a.r, k.b.r, t) + r
	off := w.sub(along.times(t))
	square := off.dot(off)
	if square >= float64(room*room) {
		return 0
	}
	return room - math.Sqrt(square)
}
