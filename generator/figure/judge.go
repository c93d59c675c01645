package figure

import (
	"fmt"

	"paceleaf/generator/unit"
)

// Fault is a mistake of a pose: the key below [figure] that it stands in, what is wrong, and what to write instead.
type Fault struct{ Key, What, Instead string }

// Judge finds every mistake of a pose at once: what is not written or written twice, joints beyond what people have, feet
// and hands out of reach, a body in the floor or in a bench, and a natural range of the exercise that the pose does not
// go through. natural is nil for an exercise without a range. A pose that is missing has no mistake.
func Judge(p Pose, natural *unit.Reach) []Fault {
	if !p.Drawn() {
		return nil
	}
	j := &judge{pose: p}
	j.written()
	if len(j.faults) > 0 {
		return j.faults // the rest would speak of a body that nobody meant
	}
	m := movementOf(p)
	for i := range tries + 1 {
		t := float64(i) / tries
		key := [...]string{"start", "end"}[min(i/tries, 1)]
		if p.Motion == Flight && t > 0 && t < 1 {
			continue
		}
		j.body(m.at(t), key)
	}
	if m.middle != nil {
		j.body(*m.middle, "middle")
	}
	j.reached(m, natural)
	return j.faults
}

// tries is at how many moments a movement is looked at.
const tries = 10

// judge gathers the mistakes of a pose, each once.
type judge struct {
	pose   Pose
	faults []Fault
}

func (j *judge) wrong(key, what, instead string, values ...any) {
	f := Fault{key, fmt.Sprintf(what, values...), instead}
	for _, have := range j.faults {
		if have.Key == f.Key && have.Instead == f.Instead {
			return
		}
	}
	j.faults = append(j.faults, f)
}

// reached holds the exercise's range against the pose's. Where no range is drawn a pose may show one bend of it.
func (j *judge) reached(m movement, natural *unit.Reach) {
	if natural == nil {
		return
	}
	lo, hi := m.natural()
	from, to := float64(natural.Straightest), float64(natural.MostBent)
	shown := !j.pose.Hidden && j.pose.View != FromFront && j.pose.Motion != Flight
	switch {
	case shown && (from < lo-slackBend || to > hi+slackBend):
		j.wrong("end", "the knee goes from %.1f to %.1f, the exercise's range_deg from %g to %g",
			"let start and end reach both, or write range_hidden = true", lo, hi, from, to)
	case !shown && (lo < from-slackBend || hi > to+slackBend) && !j.eases(m):
		j.wrong("end", "the knee goes from %.1f to %.1f, the exercise's range_deg from %g to %g",
			"keep the pose within the range", lo, hi, from, to)
	}
}

// eases reports whether Draw can keep the pose within any range by itself.
func (j *judge) eases(m movement) bool {
	return m.end.near.Knee != nil || len(m.end.near.BallAt) == 2
}
