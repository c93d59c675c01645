package figure

import "paceleaf/generator/unit"

// furthest that a placed foot is moved, and by how much at a time, in hundredths of stature; chosen.
const (
	furthest = 25.0
	stride   = 0.5
)

// stepped moves a foot that stays on its place to where the range allows the last frame: in a bridge the feet go further
// out when the knees may bend less.
func (m movement) stepped(r *unit.Reach) movement {
	if r == nil || len(m.end.near.BallAt) != 2 {
		return m
	}
	for d := 0.0; d <= furthest; d += stride {
		for _, by := range []float64{d, -d} {
			n := m
			n.start, n.end = m.start.footBy(by), m.end.footBy(by)
			if b := n.bend(1); b >= float64(r.Straightest) && b <= float64(r.MostBent) {
				return n
			}
		}
	}
	return m
}

func (f frame) footBy(x float64) frame {
	for _, g := range []*Leg{&f.near, &f.far} {
		if len(g.BallAt) == 2 {
			g.BallAt = []float64{g.BallAt[0] + x, g.BallAt[1]}
		}
	}
	return f
}
