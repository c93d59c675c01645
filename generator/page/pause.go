package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// The page in a pause (rules 27): its headline says so, what is gentle is done every day, and no later week has a weight of its
// own. Time ends no pause, so a page must not grow while one stands.

// paused reports whether the knee's hard work rests, be it in the first week alone.
func (h handout) paused() bool { return h.Symptoms.Action.Rank() >= plan.Pause.Rank() }

// pausedThroughout reports whether it rests until somebody has looked, and not in the first week alone.
func (h handout) pausedThroughout() bool { return h.paused() && h.Symptoms.Level != "session" }

// aim is what the block is for; in a pause, that the knee comes first.
func (h handout) aim() string {
	switch {
	case h.paused():
		return h.w.Say("brief.aim-paused", "knee", h.kneeIn(h.side()))
	case h.Stage.Set != nil:
		return h.Stage.Set.Aim
	}
	return ""
}

// shownWeeks are the weeks of a box that have numbers of their own: in a pause only the first.
func (h handout) shownWeeks(p plan.Prescription) []plan.WeekDose {
	if h.pausedThroughout() {
		return p.Weeks[:1]
	}
	return p.Weeks
}

// laterPaused is the one line of a box about all later weeks of a pause.
func (h handout) laterPaused(p plan.Prescription) (all []stretch) {
	var weeks []int
	for _, d := range p.Weeks[1:] {
		weeks = append(weeks, d.Week)
	}
	if len(weeks) == 0 {
		return nil
	}
	return []stretch{{weeks, h.w.Say("later.paused")}}
}

// inWeek is a dose as another week has it: the diary of a pause asks for what the box says, and no more.
func inWeek(d plan.WeekDose, week int) plan.WeekDose {
	d.Week = week
	return d
}

// oftenIn is how often something of a pause is done: every day, or on the days of its session.
func (h handout) oftenIn(p plan.Prescription) string {
	daily := slices.ContainsFunc(h.Sessions, func(s plan.SessionDay) bool { return s.Daily && slices.Contains(p.Sessions, s.Session) })
	if !daily || p.Weeks[0].Dose.TimesADay != nil {
		return ""
	}
	return h.w.Say("hold.every-day")
}
