package figure

import "paceleaf/generator/unit"

// standing is the lean of a body that stands, in degrees: what a shallower landing leans toward.
const standing = 2

// softened bends a frame of a flight no more and no less than a range allows. A landing that may bend half as far also
// leans half as far, so that the body stays above its feet.
func softened(f frame, r *unit.Reach) frame {
	have := value(f.near.Knee)
	g := eased(f, r)
	if f.near.Flat && have > 0 {
		g.trunk = lerp(standing, f.trunk, value(g.near.Knee)/have)
	}
	return g
}

// eased bends the knees of a frame no more and no less than a range allows, and leaves the trunk as it is.
func eased(f frame, r *unit.Reach) frame {
	if r == nil || f.near.Knee == nil {
		return f
	}
	have := *f.near.Knee
	want := clamp(have, float64(r.Straightest), float64(r.MostBent))
	if have == want {
		return f
	}
	same := f.far.Knee != nil && *f.far.Knee == have
	f.near = f.near.bent(have, want)
	if same {
		f.far = f.far.bent(have, want)
	}
	return f
}

// kneeToAnkle is how far an ankle goes with the knee of a foot that stands, where the pose does not tell; chosen.
const kneeToAnkle = 0.45

// bent is the leg with another bend; a standing ankle goes with it.
func (g Leg) bent(have, want float64) Leg {
	g.Knee = &want
	if have > 0 { // seen from the front a knee that bends less stands out less, above the same foot
		less := g.Shin * (1 - want/have)
		g.Shin, g.Out = g.Shin-less, g.Out+less
	}
	if g.Flat {
		ankle := float64(want * kneeToAnkle)
		if have != 0 {
			ankle = float64(value(g.Ankle)*want) / have
		}
		g.Ankle = &ankle
	}
	return g
}
