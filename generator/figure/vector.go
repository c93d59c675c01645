package figure

import "math"

// point is a place or a way, in hundredths of stature; y is up.
type point struct{ X, Y float64 }

func (a point) add(b point) point         { return point{a.X + b.X, a.Y + b.Y} }
func (a point) sub(b point) point         { return point{a.X - b.X, a.Y - b.Y} }
func (a point) times(k float64) point     { return point{float64(a.X * k), float64(a.Y * k)} }
func (a point) dot(b point) float64       { return float64(a.X*b.X) + float64(a.Y*b.Y) }
func (a point) length() float64           { return math.Hypot(a.X, a.Y) }
func (a point) across() point             { return point{-a.Y, a.X} }
func lerp(a, b, t float64) float64        { return a + float64((b-a)*t) }
func between(a, b point, t float64) point { return point{lerp(a.X, b.X, t), lerp(a.Y, b.Y, t)} }
func radians(d float64) float64           { return float64(d * math.Pi / 180) }
func degrees(r float64) float64           { return float64(r * 180 / math.Pi) }
func clamp(v, lo, hi float64) float64     { return math.Max(lo, math.Min(hi, v)) }

// way is the unit vector of a direction, and direction the angle of a way.
func way(d float64) point {
	sin, cos := math.Sincos(radians(d))
	return point{sin, -cos}
}

func direction(v point) float64 { return degrees(math.Atan2(v.X, -v.Y)) }

// unitOf is the way of v with length 1; the zero vector stays what it is.
func (a point) unitOf() point {
	if n := a.length(); n > 0 {
		return a.times(1 / n)
	}
	return a
}

// pointOf reads the two numbers of a key.
func pointOf(xy []float64) point {
	if len(xy) != 2 {
		return point{}
	}
	return point{xy[0], xy[1]}
}

// opposite is the angle between sides a and b of a triangle, against side c. Out of reach it is folded or straight.
func opposite(a, b, c float64) float64 {
	return degrees(math.Acos(clamp((float64(a*a)+float64(b*b)-float64(c*c))/(2*a*b), -1, 1)))
}
