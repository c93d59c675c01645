package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// GoalState is a goal of the program as the newest test finds it.
type GoalState struct {
	Goal  *program.Goal
	Mark  program.Mark
	Sense string      // at least, at most
	By    unit.Day    // the first day of the week by which it should be reached; later where a limit stood in its way
	State string      // reached, not yet, late, not tested, waits
	Until unit.Day    // of one that waits: the first day on which limits leave room for it; zero: until further notice
	Lost  unit.Day    // of one that was reached in time: the look from which on it is not met any more; zero: it still is
	Found *basis.Step // nil: not tested
	On    unit.Day
}

// goals holds the knee against what it should have reached. A goal opens and closes nothing.
func (j judge) goals(k knees) (list []GoalState) {
	for i := range j.p.Goals {
		g := &j.p.Goals[i]
		if !applies(g.When, j.c, j.event, j.asOf) {
			continue
		}
		s := GoalState{Goal: g, By: j.event.Date.AddWeeks(*g.ByWeek)}
		s.Sense, s.Mark = "at most", program.Mark{}
		if g.AtMost != nil {
			s.Mark = *g.AtMost
		}
		if g.AtLeast != nil {
			s.Sense, s.Mark = "at least", *g.AtLeast
		}
		m := j.found.Measure(g.Measure)
		s.Found, s.On = m.Value, m.On
		if unseenMark(m, s.Sense, s.Mark) {
			m.OK, s.Found = false, nil
		}
		waits := j.wait(&s, k)
		switch late := !j.asOf.Before(s.By); {
		case !m.OK && waits:
			s.State = "waits"
		case !m.OK:
			s.State = "not tested"
		case (s.Mark.Grade != "" || m.Unit == s.Mark.Unit) && reaches(m, s.Sense, s.Mark):
			s.State = "reached"
		case j.calmInTime(s):
			s.State, s.Lost = "reached", j.swelledAgain(s)
		case waits:
			s.State = "waits"
		case late:
			s.State = "late"
		default:
			s.State = "not yet"
		}
		list = append(list, s)
	}
	return list
}

// calmInTime reports whether swelling had gone by the goal's own day. What swells again later is a symptom, and weighed
// as one: the goal is not late. An end of the range that is lost again stays a goal that is late.
func (j judge) calmInTime(s GoalState) bool {
	if s.Goal.Measure != "effusion" {
		return false
	}
	for _, k := range j.found.Knees {
		m := finding.Measure{Grade: k.AtWorst()}
		if !k.On.Before(j.event.Date) && !k.On.After(s.By) && k.Effusion != "" && reaches(m, s.Sense, s.Mark) {
			return true
		}
	}
	return false
}

// swelledAgain is the first look, after the last calm one, at which swelling was more than the goal asks.
func (j judge) swelledAgain(s GoalState) (lost unit.Day) {
	for _, k := range j.found.Knees {
		switch {
		case k.Effusion == "" || k.On.Before(j.event.Date):
		case reaches(finding.Measure{Grade: k.AtWorst()}, s.Sense, s.Mark):
			lost = unit.Day{}
		case lost.IsZero():
			lost = k.On
		}
	}
	return lost
}

// flagGoals says which goals are late, and whom to tell.
func (p *planner) flagGoals() {
	for _, g := range p.plan.Goals {
		if g.State != "late" {
			continue
		}
		says := basis.Say("{a} was to be {b} {c} by {d} ({e})", g.Goal.Measure, basis.Said(g.Sense), g.Mark.Typed, g.By, g.Goal.Standing)
		if g.Goal.Tell != "" {
			says = basis.Say("{a}: tell the {b}", says, g.Goal.Tell)
		}
		p.say("goal-late", g.Goal.Measure, says)
	}
}
