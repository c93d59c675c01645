package figure

// frame is a Body with every gap filled: what the end does not name is as in the start.
type frame struct {
	anchor            Rest
	at                point
	trunk, bend, neck float64
	roll, lean, above float64
	near, far         Leg
	arm, farArm       Arm
}

// frameOf fills the gaps of b from the frame before it.
func frameOf(b *Body, before frame, both bool) frame {
	f := before
	if b == nil {
		return f
	}
	if b.Anchor != nil {
		f.anchor, f.at = b.Anchor.Point, pointOf(b.Anchor.At)
	}
	for _, v := range []struct {
		into *float64
		from *float64
	}{{&f.trunk, b.Trunk}, {&f.bend, b.Bend}, {&f.neck, b.Neck}, {&f.roll, b.Roll}, {&f.lean, b.Lean}} {
		if v.from != nil {
			*v.into = *v.from
		}
	}
	if b.Near != nil {
		f.near = *b.Near
		if both {
			f.far = *b.Near
		}
	}
	if b.Far != nil {
		f.far = *b.Far
	}
	if b.Arm != nil {
		f.arm, f.farArm = *b.Arm, *b.Arm
	}
	if b.FarArm != nil {
		f.farArm = *b.FarArm
	}
	return f
}

// mixed is the frame at the share t of the way from a to b. Places on a crank travel round its axle.
func mixed(a, b frame, t float64, axle *point) frame {
	if t <= 0 {
		return a
	}
	f := b
	f.at = between(a.at, b.at, t)
	f.trunk, f.bend, f.neck = lerp(a.trunk, b.trunk, t), lerp(a.bend, b.bend, t), lerp(a.neck, b.neck, t)
	f.roll, f.lean = lerp(a.roll, b.roll, t), lerp(a.lean, b.lean, t)
	f.near, f.far = mixedLeg(a.near, b.near, t, axle), mixedLeg(a.far, b.far, t, axle)
	f.arm, f.farArm = mixedArm(a.arm, b.arm, t), mixedArm(a.farArm, b.farArm, t)
	return f
}

func mixedLeg(a, b Leg, t float64, axle *point) Leg {
	l := b
	l.Hip, l.Knee, l.Ankle = mixedOne(a.Hip, b.Hip, t), mixedOne(a.Knee, b.Knee, t), mixedOne(a.Ankle, b.Ankle, t)
	l.Toward = mixedOne(a.Toward, b.Toward, t)
	l.BallOn, l.HeelOn = mixedOne(a.BallOn, b.BallOn, t), mixedOne(a.HeelOn, b.HeelOn, t)
	l.BallAt, l.HeelAt = mixedPlace(a.BallAt, b.BallAt, t, axle), mixedPlace(a.HeelAt, b.HeelAt, t, nil)
	l.Pitch, l.Slope = lerp(a.Pitch, b.Pitch, t), lerp(a.Slope, b.Slope, t)
	l.Out, l.Shin = lerp(a.Out, b.Out, t), lerp(a.Shin, b.Shin, t)
	return l
}

func mixedArm(a, b Arm, t float64) Arm {
	m := b
	m.Shoulder, m.Elbow = lerp(a.Shoulder, b.Shoulder, t), lerp(a.Elbow, b.Elbow, t)
	m.HandAt = mixedPlace(a.HandAt, b.HandAt, t, nil)
	m.Out, m.Fore = lerp(a.Out, b.Out, t), lerp(a.Fore, b.Fore, t)
	m.Short = lerp(a.seen(), b.seen(), t)
	return m
}

func mixedOne(a, b *float64, t float64) *float64 {
	if a == nil || b == nil {
		return b
	}
	v := lerp(*a, *b, t)
	return &v
}

func mixedPlace(a, b []float64, t float64, axle *point) []float64 {
	if len(a) != 2 || len(b) != 2 {
		return b
	}
	p := between(pointOf(a), pointOf(b), t)
	if axle != nil {
		p = turned(pointOf(a), pointOf(b), *axle, t)
	}
	return []float64{p.X, p.Y}
}

// turned goes from a to b round the axle, as a pedal goes: over the top and forward.
func turned(a, b, axle point, t float64) point {
	from, to := direction(a.sub(axle)), direction(b.sub(axle))
	for to > from {
		to -= 360
	}
	return axle.add(way(lerp(from, to, t)).times(lerp(a.sub(axle).length(), b.sub(axle).length(), t)))
}
