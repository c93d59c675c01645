package figure

import "math"

// leg is a solved leg: its joints, and the directions of its segments.
type leg struct {
	hip, knee, ankle, heel, ball, toe, sole point
	thigh, shank, foot, toes                float64 // directions
	hipBend, bend, ankleBend                float64 // joint angles
	short                                   float64 // by how much a placed foot is out of reach
}

// solveLeg places the joints of a leg that hangs from hip, below a pelvis that leans by trunk.
func solveLeg(g Leg, trunk float64, hip point) leg {
	l := leg{hip: hip}
	switch {
	case len(g.BallAt) == 2 || len(g.HeelAt) == 2 || g.BallOn != nil || g.HeelOn != nil || g.Toward != nil:
		l.placed(g)
	default:
		l.bend = value(g.Knee)
		h := value(g.Hip)
		if g.Flat {
			h = trunk + l.bend - value(g.Ankle) - g.Slope
		}
		l.thigh = h - trunk
		l.shank = l.thigh - l.bend
		l.foot = l.shank + 90 + value(g.Ankle)
		l.toes = l.foot + g.Pitch // a raised heel leaves the toes where they are
	}
	l.knee = hip.add(way(l.thigh).times(thighLength))
	l.ankle = l.knee.add(way(l.shank).times(shankLength))
	l.hipBend, l.ankleBend = l.thigh+trunk, l.foot-90-l.shank
	l.setFoot()
	return l
}

func value(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
}

// placed finds hip and knee from where the foot rests: on a point, or with a given bend on a height or in a direction.
func (l *leg) placed(g Leg) {
	l.foot = 90 - g.Pitch - g.Slope
	l.toes = 90 - g.Slope
	ankle := g.ankleAbove(l.foot)
	if len(g.HeelAt) == 2 || g.HeelOn != nil {
		l.toes = l.foot
	}
	switch {
	case g.Toward != nil:
		ankle = l.hip.add(way(*g.Toward).times(legSpan(value(g.Knee))))
	case g.BallOn != nil || g.HeelOn != nil:
		ankle = l.onHeight(ankle.Y, value(g.Knee))
	}
	far := ankle.sub(l.hip)
	d := far.length()
	l.short = math.Max(0, d-thighLength-shankLength)
	l.bend = 180 - opposite(thighLength, shankLength, d)
	l.thigh = direction(far) + opposite(thighLength, d, shankLength)
	l.shank = l.thigh - l.bend
}

// ankleAbove is where the ankle is when the ball or heel rests where it is written.
func (g Leg) ankleAbove(foot float64) point {
	along, up := way(foot), way(foot+90)
	lift := way(180 - g.Slope)
	ball := func(at point) point {
		return at.add(lift.times(rBall)).sub(along.times(ballFore)).sub(up.times(rBall - footHeight))
	}
	heel := func(at point) point {
		return at.add(point{0, rHeel}).sub(along.times(-heelBack)).sub(up.times(rHeel - footHeight))
	}
	switch {
	case len(g.HeelAt) == 2:
		return heel(pointOf(g.HeelAt))
	case g.HeelOn != nil:
		return heel(point{0, *g.HeelOn})
	case g.BallOn != nil:
		return ball(point{0, *g.BallOn})
	}
	return ball(pointOf(g.BallAt))
}

// onHeight is the ankle in front of the hip at a height, as far away as the bent leg is long.
func (l *leg) onHeight(y, bend float64) point {
	d := legSpan(bend)
	dy := y - l.hip.Y
	return point{l.hip.X + math.Sqrt(math.Max(0, float64(d*d)-float64(dy*dy))), y}
}

// legSpan is the distance from hip to ankle of a leg with a bend.
func legSpan(bend float64) float64 {
	square := float64(thighLength*thighLength) + float64(shankLength*shankLength) + float64(2*thighLength*shankLength)*math.Cos(radians(bend))
	return math.Sqrt(square)
}

func (l *leg) setFoot() {
	along, up := way(l.foot), way(l.foot+90)
	at := func(x, y float64) point { return l.ankle.add(along.times(x)).add(up.times(y - footHeight)) }
	l.heel = at(-heelBack, rHeel)
	l.ball = at(ballFore, rBall)
	l.sole = at(0, 0)
	l.toe = l.ball.add(way(l.toes).times(toeFore)).add(way(l.toes + 90).times(-0.35))
}
