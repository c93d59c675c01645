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

// goesOnInPause reports whether rules 27 name an exercise among what goes on: range, quad sets, swelling care. That may begin in a
// pause too. A quad set is held against nothing but time; what no limit speaks of leaves the knee alone, such as pumping the foot.
func goesOnInPause(e *program.Exercise) bool {
	bends := slices.Contains(e.Trains, "range")
	quadSet := e.Isometric() && slices.Contains(e.Trains, "quadriceps") && e.ResistedBy == program.Time
	return !restsInPause(e) && (bends || quadSet || len(e.Kinds) == 0)
}

// newInPause says why an exercise of the paused knee is passed over: time ends no pause, so nothing new begins for that knee in a
// later week, and in the first one nothing that the block before did not ask for. Where the client is elsewhere, what stands there
// takes the place of what does not. Common practice, no source.
func (p *planner) newInPause(slot *program.Slot, e *program.Exercise, side unit.Side, w Week) basis.Said {
	switch {
	case !p.knees.involves(e, side):
		return ""
	case w.Number == 1 && p.pausedIn(1) && !goesOnInPause(e) && !p.didBefore(e, side),
		w.Number > 1 && w.Place == p.weeks[0].Place && p.symptoms.Pauses() && !p.prescribed(slot, e, side, 1):
		return "nothing new begins in a pause"
	}
	return ""
}

// didBefore reports whether the knee did an exercise on the block before, or on this block's page as it was before something came
// to light. Without a block before that counts from the same event there is nothing to compare with, and so all counts as done.
func (p *planner) didBefore(e *program.Exercise, side unit.Side) bool {
	if p.earlier == nil {
		p.earlier = p.pagesBefore()
	}
	pages := p.earlier
	return len(pages) == 0 || slices.ContainsFunc(pages, func(page *Plan) bool {
		return page.prescribed(&Prescription{Exercise: e, Side: side}) != nil
	})
}

// pagesBefore are the block before, as it was issued, and this one's first page; none where the block before tells nothing.
func (p *planner) pagesBefore() (pages []*Plan) {
	pages = []*Plan{}
	last := blockBefore(p.client, p.block)
	if last == nil {
		return pages
	}
	asked := p.asked
	if asked == nil || asked.Block.Number != last.Number {
		asked, _ = compute(p.plan.Clinic, p.program, asIssued(p.client, last))
	}
	if asked == nil || asked.Event.Date != p.event.Date {
		return pages
	}
	pages = append(pages, asked)
	if first := p.plan.firstPage(); first != nil {
		if page := first.page(); page != nil {
			pages = append(pages, page)
		}
	}
	return pages
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
