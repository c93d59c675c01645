package plan

import (
	"math"
	"slices"

	"paceleaf/generator/formula"
	"paceleaf/generator/program"
)

// How long a session takes, so that a client can plan the day. Common practice, no source.
const (
	secondsARep  = 4.0  // where the exercise does not say its speed
	secondsStart = 60.0 // to get ready for an exercise
	warmUp       = 300.0
	secondsRung  = 1800.0 // a rung of a ladder, such as two miles of walking and jogging by turns
	roundTo      = 5.0    // minutes, up
)

// minutes says about how long each session of the phase takes in its longest week: a week is spent at one place, so what is
// done at another one is not added to it. A session that is done in parts all through the day has no length.
func (p *planner) minutes() map[string]int {
	lengths := map[string]int{}
	for _, s := range p.phase.Sessions {
		longest, parts := 0.0, false
		for week := 1; week <= p.block.Weeks; week++ {
			seconds, some := p.secondsIn(s.ID, week)
			longest, parts = max(longest, seconds), parts || some
		}
		if longest > 0 && !parts {
			lengths[s.ID] = int(math.Ceil((longest+warmUp)/60/roundTo) * roundTo)
		}
	}
	return lengths
}

// secondsIn is how long a session takes in one week, without warming up, and whether some of it is done in parts. The legs take
// turns, so that one works in the other's rest: the rest of an exercise counts once.
func (p *planner) secondsIn(session string, week int) (seconds float64, parts bool) {
	rests := map[*program.Slot]float64{}
	for _, r := range p.plan.Prescriptions {
		at := slices.IndexFunc(r.Weeks, func(d WeekDose) bool { return d.Week == week })
		if at < 0 || !slices.Contains(r.Sessions, session) {
			continue
		}
		work, rest := lengthOf(r.Slot, r.Exercise, &r.Weeks[at])
		parts = parts || r.Weeks[at].Dose.TimesADay != nil
		seconds += work
		if _, begun := rests[r.Slot]; !begun {
			seconds += secondsStart
		}
		rests[r.Slot] = max(rests[r.Slot], rest)
	}
	for _, rest := range rests {
		seconds += rest
	}
	return seconds, parts
}

// lengthOf is length where the sets differ, or where a stimulator keeps the time.
func lengthOf(s *program.Slot, e *program.Exercise, w *WeekDose) (work, rest float64) {
	work, rest = length(s, e, w.Dose)
	if len(w.Each) > 0 && w.Dose.Reps != nil && w.Dose.Sets != nil {
		reps := 0
		for _, s := range w.Each {
			if s.Reps == nil {
				reps += int(formula.OneRMDoubtedAbove) // as many as can be done: about ten
				continue
			}
			reps += *s.Reps
		}
		work = work / float64(*w.Dose.Sets**w.Dose.Reps) * float64(reps)
	}
	if t, ok := w.Time.Value(); ok && !w.Pressure.OK() {
		return float64(t), 0
	}
	return work, rest
}

// length is how long one leg's dose takes, in seconds: the work, and the rest between its sets.
func length(s *program.Slot, e *program.Exercise, d program.Dose) (work, rest float64) {
	if len(e.Levels) > 0 {
		return secondsRung, 0
	}
	sets := 1.0
	if d.Sets != nil {
		sets = float64(*d.Sets)
	}
	if d.Rounds != nil {
		sets = float64(*d.Rounds)
	}
	if d.Rest != nil {
		rest = float64(sets * float64(*d.Rest))
	}
	if d.Minutes != nil {
		return float64(sets*float64(*d.Minutes)) * 60, 0
	}
	if d.WorkFor != nil {
		return float64(sets * float64(*d.WorkFor)), rest
	}
	lift, hold, lower := s.Speed(e)
	rep := float64(lift + hold + lower)
	if d.HoldFor != nil {
		rep = float64(*d.HoldFor)
	}
	if rep == 0 {
		rep = secondsARep
	}
	reps := 1.0
	if d.RepsTo != nil {
		reps = float64(*d.RepsTo)
	} else if d.Reps != nil {
		reps = float64(*d.Reps)
	} else if d.Contacts != nil {
		reps = float64(*d.Contacts)
	}
	return float64(sets * float64(reps*rep)), rest
}
