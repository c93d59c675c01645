package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A pause (rules 27): loaded and impact work of the knee waits until the knee has been looked at again; range, quad sets,
// swelling care and the other leg go on. What goes on of that knee is gentle, and so it is done every day.

// GentleSession is the id of the daily session that a pause makes where the phase has none; no id of a program has a dot.
const GentleSession = "pause.gentle"

// restsInPause reports whether an exercise of the paused knee waits. Rules 27 names range and quad sets: so what bends the knee
// by its own muscles, again and again, waits too, such as a bike or a curl without weight. Common practice, no source.
func restsInPause(e *program.Exercise) bool {
	moves := e.Range != nil && e.Range.Arc() > 0 && !e.Isometric() && !e.Names(unit.PassiveBend)
	return LoadsKnee(e) || moves
}

// gentle reports whether an exercise is what a paused knee may do every day: it is held still, or it is for range alone.
func gentle(e *program.Exercise) bool {
	aboutKnee := e.Names(unit.PassiveBend) || e.Names(unit.ActiveBend)
	return aboutKnee && !restsInPause(e) && (e.Isometric() || e.Chain == program.NoChain)
}

// Pauses reports whether the knee's hard work rests all through the page, and not in the first week alone.
func (s *Symptoms) Pauses() bool {
	asked, _ := s.lasting()
	return asked.Rank() >= Pause.Rank()
}

// pausedIn reports whether the hard work of the knee rests in a week.
func (p *planner) pausedIn(week int) bool {
	asked, _ := p.symptoms.in(week)
	return asked.Rank() >= Pause.Rank()
}

// newInPause says why an exercise is passed over in a later week of a pause: time ends no pause, so nothing new begins for that knee.
// Where the client is elsewhere, what stands there takes the place of what does not. Common practice, no source.
func (p *planner) newInPause(slot *program.Slot, e *program.Exercise, side unit.Side, w Week) basis.Said {
	if w.Number == 1 || w.Place != p.weeks[0].Place || !p.symptoms.Pauses() || !p.knees.involves(e, side) || p.prescribed(slot, e, side, 1) {
		return ""
	}
	return "nothing new begins in a pause"
}

// gentleDaily puts what a paused knee still does into the daily session: it stands where hard work stood, and would else be
// done on that work's days alone.
func (p *planner) gentleDaily() {
	if !slices.ContainsFunc(p.weeks, func(w Week) bool { return p.pausedIn(w.Number) }) {
		return
	}
	var daily []string
	for _, s := range p.phase.Sessions {
		if s.Daily {
			daily = append(daily, s.ID)
		}
	}
	id, moved := GentleSession, map[int]bool{}
	if len(daily) > 0 {
		id = daily[0]
	}
	for i := range p.plan.Prescriptions {
		r := &p.plan.Prescriptions[i]
		loads := slices.ContainsFunc(r.Weeks, func(d WeekDose) bool { return !p.pausedIn(d.Week) })
		already := slices.ContainsFunc(r.Sessions, func(s string) bool { return slices.Contains(daily, s) })
		if p.own(r.Side) && gentle(r.Exercise) && !loads && !already {
			r.Sessions, moved[i] = []string{id}, true
		}
	}
	p.plan.Prescriptions = onceDaily(p.plan.Prescriptions, moved, append(daily, GentleSession))
}

// onceDaily leaves out what was moved to the daily session and stands there already for that leg: two slots may have come to one
// exercise, and the program's own daily line stays.
func onceDaily(all []Prescription, moved map[int]bool, daily []string) (kept []Prescription) {
	for i, r := range all {
		stands := func(j int) bool {
			o := all[j]
			isDaily := slices.ContainsFunc(o.Sessions, func(s string) bool { return slices.Contains(daily, s) })
			return isDaily && o.Exercise == r.Exercise && o.Side == r.Side && len(o.Weeks) >= len(r.Weeks) && (!moved[j] || j < i)
		}
		twice := false
		for j := range all {
			twice = twice || moved[i] && j != i && stands(j)
		}
		if !twice {
			kept = append(kept, r)
		}
	}
	return kept
}

// pausedSessions are the days of sessions as a pause leaves them: without those in which nothing is left to do, and with gentle
// work on every day.
func (p *planner) pausedSessions(all []SessionDay) (left []SessionDay) {
	asks := func(id string, week int) bool {
		return slices.ContainsFunc(p.plan.Prescriptions, func(r Prescription) bool {
			return slices.Contains(r.Sessions, id) && slices.ContainsFunc(r.Weeks, func(d WeekDose) bool { return d.Week == week })
		})
	}
	for _, w := range p.weeks {
		for _, s := range all {
			if s.Week == w.Number && (!p.pausedIn(w.Number) || asks(s.Session, w.Number)) {
				left = append(left, s)
			}
		}
		if !asks(GentleSession, w.Number) {
			continue
		}
		for _, d := range daysFrom(w.Starts, 7) {
			left = append(left, SessionDay{Day: d, Week: w.Number, Session: GentleSession, Daily: true})
		}
	}
	slices.SortStableFunc(left, func(a, b SessionDay) int { return a.Day.Compare(b.Day) })
	return left
}
