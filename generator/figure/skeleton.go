package figure

// skeleton is a body seen from the side, every joint in its place.
type skeleton struct {
	hip, waist, chest, shoulder, neck, head point
	pelvisUp, chestUp, headUp               float64 // directions
	near, far                               leg
	arm, farArm                             arm
}

// depth is how far behind the far limbs are drawn: a little back and up, so that equal poses of both still show.
var depth = point{2.6, 1.3}

// farHip is the same for the far hip, and for the place on which a far foot is put.
var farHip = depth.times(0.6)

// solve places a frame.
func solve(f frame) skeleton {
	s := spine(f, hipOf(f))
	s.near = solveLeg(f.near, f.trunk, s.hip)
	s.far = solveLeg(f.far.behind(), f.trunk, s.hip.add(farHip))
	lean, joint := f.trunk+f.bend, s.shoulder.add(way(s.chestUp).times(-1.2))
	s.arm = solveArm(f.arm, lean, joint, s.part)
	s.farArm = solveArm(f.farArm, lean, joint.add(depth), s.part)
	return s
}

// bendIn is the bend of the working knee alone: a range is found by asking for it many times.
func bendIn(f frame) float64 { return solveLeg(f.near, f.trunk, hipOf(f)).bend }

// hipOf puts the body anywhere, and then where its anchor says: the way from hip to anchor is the same in both.
func hipOf(f frame) point {
	s := spine(f, f.at)
	switch f.anchor {
	case "foot", "ball", "heel", "toe", "knee":
		s.near = solveLeg(f.near, f.trunk, s.hip)
	case "far-foot":
		s.far = solveLeg(f.far.behind(), f.trunk, s.hip.add(farHip))
	case walks:
		s.near, s.far = solveLeg(f.near, f.trunk, s.hip), solveLeg(f.far.behind(), f.trunk, s.hip.add(farHip))
		return point{f.at.X, s.hip.Y + f.at.Y - s.lowest()}
	}
	return s.hip.add(f.at.sub(s.touch(f.anchor)))
}

// behind moves the place of a far foot back with its hip.
func (g Leg) behind() Leg {
	for _, place := range []*[]float64{&g.BallAt, &g.HeelAt} {
		if len(*place) == 2 {
			p := pointOf(*place).add(farHip)
			*place = []float64{p.X, p.Y}
		}
	}
	return g
}

// spine is the trunk and the head of a body with its hip at a place.
func spine(f frame, hip point) (s skeleton) {
	s.hip, s.pelvisUp = hip, 180-f.trunk
	s.chestUp = s.pelvisUp - f.bend
	s.headUp = s.chestUp - f.neck
	up, fore := way(s.pelvisUp), way(s.pelvisUp-90)
	hinge := hip.add(up.times(lower))
	s.waist = hinge.add(fore.times(0.7))
	up, fore = way(s.chestUp), way(s.chestUp-90)
	s.chest = hinge.add(up.times(upper * 0.6)).add(fore.times(0.5))
	s.shoulder = hinge.add(up.times(upper))
	s.neck = s.shoulder.add(up.times(2.2))
	s.head = s.shoulder.add(way(s.headUp).times(headAndNeck - 7)).add(way(s.headUp - 90).times(1.3))
	return s
}

// touch is the lowest point of a place of the body: where it meets the surface it rests on.
func (s skeleton) touch(r Rest) point {
	down := func(p point, radius float64) point { return p.sub(point{0, radius}) }
	switch r {
	case "foot":
		return s.near.sole
	case "ball":
		return down(s.near.ball, rBall)
	case "heel":
		return down(s.near.heel, rHeel)
	case "toe":
		return s.near.ball.add(way(s.near.toes + 90).times(-rBall))
	case "knee":
		return down(s.near.knee, rKneel)
	case "shoulder":
		return down(s.shoulder, rBack)
	case "back":
		return down(s.hip, rSupine)
	case "seat", "front":
		return down(s.hip, rSeated)
	case "far-foot":
		return s.far.sole
	}
	return s.hip
}

// part is the middle of a place of the body.
func (s skeleton) part(p Part) point {
	switch p {
	case "knee":
		return s.near.knee
	case "ankle":
		return s.near.ankle
	case "heel":
		return s.near.heel
	case "ball":
		return s.near.ball
	case "foot":
		return s.near.sole
	case "far-foot":
		return s.far.ball
	case "shin":
		return between(s.near.knee, s.near.ankle, 0.5)
	case "shoulder":
		return s.shoulder
	case "hand":
		return s.arm.hand
	case "head":
		return s.head
	}
	return s.hip
}
