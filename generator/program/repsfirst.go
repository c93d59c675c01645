package program

import "fmt"

// repsFirst holds the repetitions from reps to reps_to of a slot and its waves against its other keys: one load for all of
// them, and one way up.
func (r *reader) repsFirst(s Slot) {
	ranged := s.RepsTo != nil
	doses := []Dose{s.Dose}
	for _, w := range s.Waves {
		ranged = ranged || w.RepsTo != nil
		doses = append(doses, s.Dose.over(w.Dose))
	}
	at := s.At.At("reps_to")
	if ranged && s.WeeklyPercent > 0 {
		r.wrong(at, "reps_to and weekly_percent together: repetitions come first, then a step of load", "keep one of the two")
	}
	if ranged && s.Method != "" && s.Method != Steady {
		r.wrong(at, fmt.Sprintf("method %q has its own repetitions", s.Method), "take reps_to out")
	}
	for _, d := range doses {
		switch {
		case d.RepsTo == nil:
		case d.Reps == nil:
			r.wrong(at, "reps_to without reps", "write reps = 8, reps_to = 12")
		case *d.RepsTo <= *d.Reps:
			r.wrong(at, fmt.Sprintf("reps_to = %d is not more than reps = %d", *d.RepsTo, *d.Reps), fmt.Sprintf("write reps_to = %d or more, or take it out", *d.Reps+1))
		}
	}
}
