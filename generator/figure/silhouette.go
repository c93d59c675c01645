package figure

// The outline of each part of the body, seen from the side: discs along the bones, set off where flesh is.

func (t *trace) trunk(s skeleton) {
	up, back := way(s.pelvisUp), way(s.pelvisUp+90)
	seat := s.hip.add(back.times(1.5)).add(up.times(-0.2))
	belly := s.hip.add(back.times(-0.3)).add(up.times(3))
	chestUp, chestBack := way(s.chestUp), way(s.chestUp+90)
	top := s.shoulder.add(chestUp.times(-1.6)).add(chestBack.times(0.5))
	t.chain(disc{seat, 5.6}, disc{belly, 5.4}, disc{s.waist, 5.0}, disc{s.chest, 6.1}, disc{top, 4.6}, disc{s.neck, 2.7})
}

func (t *trace) head(s skeleton) {
	fore, up := way(s.headUp-90), way(s.headUp)
	t.chain(disc{s.neck, 2.7}, disc{s.head.add(up.times(-2)).add(fore.times(-0.9)), 2.7})
	t.skull(s.head, 5.1, 6.2, s.headUp)
	t.chain(disc{s.head.add(fore.times(3)), 1.8}, disc{s.head.add(fore.times(4.9)).add(up.times(-0.9)), 0.9})
	t.chain(disc{s.head.add(up.times(-1)), 4}, disc{s.head.add(fore.times(1.5)).add(up.times(-3.4)), 3.1})
}

func (t *trace) skull(at point, rx, ry, up float64) {
	t.c.note(capsule{disc{at, (rx + ry) / 2}, disc{at, (rx + ry) / 2}})
	a, b := at.add(way(up).times(ry)), at.sub(way(up).times(ry))
	turn := 180 - up
	if t.c.mirror {
		turn = -turn
	}
	t.to('M', a)
	t.ellipse(rx, ry, turn, true, false, b)
	t.ellipse(rx, ry, turn, true, false, a)
	t.close()
}

func (t *trace) leg(l leg) {
	thighBack, calf := way(l.thigh-90), way(l.shank-90)
	t.chain(disc{l.hip, rHip}, disc{between(l.hip, l.knee, 0.42).add(thighBack.times(-0.3)), rThigh}, disc{l.knee, rKnee},
		disc{between(l.knee, l.ankle, 0.30).add(calf.times(0.7)), rCalf}, disc{between(l.knee, l.ankle, 0.80), rAnkle}, disc{l.ankle, rAnkle})
	t.foot(l)
}

func (t *trace) foot(l leg) {
	instep := l.ankle.add(way(l.foot).times(1.2)).add(way(l.foot + 90).times(-0.6))
	t.chain(disc{l.ankle, rAnkle}, disc{l.heel, rHeel}, disc{l.ball, rBall}, disc{instep, 2.0})
	t.chain(disc{l.ball, rBall}, disc{l.toe, rToe})
}

func (t *trace) arm(a arm) {
	t.chain(disc{a.shoulder, rShoulder}, disc{a.elbow, rElbow}, disc{a.wrist, rWrist})
	t.chain(disc{a.wrist, 1.6}, disc{a.hand, rFist})
}
