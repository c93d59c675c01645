package figure

import "math"

// frontal is a body that faces the reader. The working leg is its right one, on the reader's left: index 0.
type frontal struct {
	roll, lean, above                        float64
	hip                                      point
	hips, knees, ankles, feet, sh, elbow, wr [2]point
	neck, head                               point
}

// turnedBy turns a way clockwise.
func turnedBy(v point, d float64) point { return way(90 - d).times(v.X).add(way(180 - d).times(v.Y)) }

// solveFront places a frame that is seen from the front.
func solveFront(f frame) frontal {
	s := buildFront(f, point{})
	return buildFront(f, f.at.sub(s.touch(f.anchor)))
}

func buildFront(f frame, hip point) frontal {
	s := frontal{roll: f.roll, lean: f.lean, above: f.above, hip: hip}
	for i, g := range [2]Leg{f.near, f.far} {
		s.setLeg(i, g)
	}
	for i, a := range [2]Arm{f.arm, f.farArm} {
		s.setArm(i, a)
	}
	s.neck, s.head = s.chest(0, 29), s.chest(0, 39.2)
	return s
}

// outward is -1 for the working side, which is on the reader's left.
func outward(i int) float64 { return float64(2*i - 1) }

// setLeg draws thigh and shank as long as they are seen: a bent knee comes toward the reader, who looks down on it a little
// where the pose says so.
func (s *frontal) setLeg(i int, g Leg) {
	bend, fore := value(g.Knee), value(g.Hip)
	if g.Hip == nil {
		fore = bend * 0.55 // a foot below the hip: the shank leans a little less than the thigh
	}
	back := shinBack(bend, fore, g.Shin)
	out := outward(i)
	hip := point{out * hipHalf, -0.5}
	knee := hip.add(way(float64(out * g.Out)).times(thighLength * math.Cos(radians(fore))))
	shin := way(out * (g.Out + g.Shin))
	ankle := knee.add(shin.times(shankLength * math.Cos(radians(back))))
	foot := ankle.add(shin.times(2.4)).add(point{out * 0.9, 0})
	near := float64(s.above * thighLength * math.Sin(radians(fore))) // what comes toward the reader is seen lower
	far := near - float64(s.above*shankLength*math.Sin(radians(back)))
	s.hips[i], s.knees[i] = s.body(hip), s.body(knee).sub(point{0, near})
	s.ankles[i], s.feet[i] = s.body(ankle).sub(point{0, far}), s.body(foot).sub(point{0, far})
}

// shinBack is how far the shank leans away from the reader, so that the knee has its bend in space: with thigh and shank in one
// upright plane what the thigh leaves of the bend, with a shank that goes aside less.
func shinBack(bend, fore, aside float64) float64 {
	along, away := float64(math.Cos(radians(fore))*math.Cos(radians(aside))), math.Sin(radians(fore))
	size := math.Hypot(along, away)
	if size == 0 {
		return bend - fore
	}
	return degrees(math.Acos(clamp(math.Cos(radians(bend))/size, -1, 1)) - math.Atan2(away, along))
}

func (s *frontal) setArm(i int, a Arm) {
	out := outward(i)
	joint := point{out * shoulderHalf, 26.2}
	elbow := joint.add(way(out * a.Out).times(upperArm))
	hand := elbow.add(way(out * (a.Out + a.Fore)).times((forearmLength + 3) * a.seen()))
	s.sh[i], s.elbow[i], s.wr[i] = s.leaned(joint), s.leaned(elbow), s.leaned(hand)
}

// seen is the share of the forearm that is seen; the whole unless said.
func (a Arm) seen() float64 {
	if a.Short == 0 {
		return 1
	}
	return a.Short
}

// body, chest and leaned are places of the pelvis, of the chest, and of the chest as the pelvis sees it.
func (s frontal) body(p point) point       { return s.hip.add(turnedBy(p, s.roll)) }
func (s frontal) leaned(p point) point     { return s.body(turnedBy(p, s.lean)) }
func (s frontal) chest(x, y float64) point { return s.leaned(point{x, y}) }

func (s frontal) touch(r Rest) point {
	switch r {
	case "foot":
		return s.feet[0].sub(point{0, 1.9})
	case "far-foot":
		return s.feet[1].sub(point{0, 1.9})
	case "side": // the lower hip
		return s.hip.sub(point{0, 9.6})
	}
	return s.hip
}

func (s frontal) part(p Part) point {
	switch p {
	case "knee":
		return s.knees[0]
	case "ankle", "shin":
		return s.ankles[0]
	case "shoulder":
		return s.neck
	case "head":
		return s.head
	case "hand":
		return s.wr[0]
	case "hip":
		return s.hip
	case "far-foot":
		return s.feet[1]
	}
	return s.feet[0]
}
