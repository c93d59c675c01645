package figure

import (
	"math"

	"paceleaf/generator/unit"
)

// A gait is a cycle without an axle: a step from the moment one foot is put down (start) over the one in which the other passes
// it (middle). The second step is the first with the legs and the arms changed over. Its still picture is the start.

// gait reports whether a pose walks.
func (p Pose) gait() bool {
	if p.Motion != Cycle || p.View == FromFront {
		return false
	}
	for _, k := range p.Kit {
		if k.Kind == Bike {
			return false
		}
	}
	return true
}

// walked makes a frame one of a gait: its lower foot rests on the surface, and its hip stays where that of the start is.
func (f frame) walked(x float64) frame {
	f.anchor, f.at.X = walks, x
	return f
}

// walks is how a gait rests, in no file's words.
const walks Rest = "lower foot"

// step is the moment of a gait, 0 to 4: the start, the middle, and both with the sides changed over. The working knee keeps its limit.
func (m movement) step(t float64, r *unit.Reach) frame {
	x := hipOf(m.start).X
	a, b := m.start.walked(x), m.start.walked(x)
	if m.middle != nil {
		b = m.middle.walked(x)
	}
	keys := [...]frame{a, b, a.changed(), b.changed(), a}
	k := min(int(t), 3)
	return eased(mixed(keys[k], keys[k+1], t-float64(k), nil), r)
}

// changed is the frame with its sides changed over.
func (f frame) changed() frame {
	f.near, f.far = f.far, f.near
	f.arm, f.farArm = f.farArm, f.arm
	return f
}

// lowest is the height of the lowest point of both feet.
func (s skeleton) lowest() float64 {
	low := math.Inf(1)
	for _, l := range []leg{s.near, s.far} {
		low = min(low, l.heel.Y-rHeel, l.ball.Y-rBall, l.toe.Y-rToe)
	}
	return low
}
