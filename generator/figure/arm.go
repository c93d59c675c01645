package figure

import "math"

// arm is a solved arm.
type arm struct {
	shoulder, elbow, wrist, hand point
	raise, bend                  float64 // joint angles
	short                        float64 // by how much a placed hand is out of reach
}

// solveArm places an arm that hangs from shoulder, beside a chest that leans by lean. grip is where a hand_on is.
func solveArm(a Arm, lean float64, shoulder point, grip func(Part) point) arm {
	p := arm{shoulder: shoulder}
	up := a.Shoulder - lean
	if a.Hang {
		up = a.Shoulder
	}
	fore := up + a.Elbow
	switch {
	case len(a.HandAt) == 2:
		up, fore = p.placed(pointOf(a.HandAt), a.Flip)
	case a.HandOn != "":
		up, fore = p.placed(grip(a.HandOn), a.Flip)
	}
	p.raise, p.bend = up+lean, math.Abs(fore-up)
	p.elbow = shoulder.add(way(up).times(upperArm))
	p.wrist = p.elbow.add(way(fore).times(forearmLength))
	p.hand = p.wrist.add(way(fore).times(fistAt))
	return p
}

// placed gives the directions of upper arm and forearm of a hand on a point.
func (p *arm) placed(at point, flip bool) (up, fore float64) {
	reach := forearmLength + fistAt
	far := at.sub(p.shoulder)
	d := far.length()
	p.short = math.Max(0, d-upperArm-reach)
	swing, bend := opposite(upperArm, d, reach), 180-opposite(upperArm, reach, d)
	if flip {
		swing, bend = -swing, -bend
	}
	up = direction(far) - swing
	return up, up + bend
}
