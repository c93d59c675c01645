package unit

// Reach is a range of bend of the knee, written [straightest, most bent]: [0, 90] goes from straight to a right angle.
type Reach struct {
	Straightest, MostBent Degrees
}

// Full is the reach that limits nothing: the joint limits that figures are drawn within (evidence: AAOS 0 to 135;
// US disability schedule 0 to 140; hyperextension to -15 is not unusual).
var Full = Reach{-15, 160}

// Meet returns what both allow; it is empty where they have nothing in common.
func (r Reach) Meet(o Reach) Reach {
	return Reach{max(r.Straightest, o.Straightest), min(r.MostBent, o.MostBent)}
}

// Empty reports whether no angle is allowed.
func (r Reach) Empty() bool { return r.Straightest > r.MostBent }

// Arc is the width of the range; zero where it is empty.
func (r Reach) Arc() Degrees { return max(0, r.MostBent-r.Straightest) }

// Within reports whether every angle of r lies in o.
func (r Reach) Within(o Reach) bool {
	return r.Empty() || (r.Straightest >= o.Straightest && r.MostBent <= o.MostBent)
}
