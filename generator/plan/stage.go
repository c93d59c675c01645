package plan

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Stages (rules 16). The stage is recorded by the therapist. What has been earned is said beside it: a phase that is
// recorded is judged on the day it was recorded, so that a test which has since grown old never causes a step back; the
// next phase is judged on the block's first day.

// stage says the recorded stage, what is earned, and what the next one asks. asOf gives the findings of another day.
func (j judge) stage(asOf func(unit.Day) *finding.Findings) StageState {
	s := StageState{WeeksSince: j.asOf.WeeksSince(j.event.Date), Since: j.event.Date, Set: j.p.Phases[0]}
	at := 0
	for _, rec := range j.recorded() {
		if ph, i := j.p.Phase(rec.ID); ph != nil {
			s.Set, s.Since, s.Recorded, at = ph, rec.From, true, i
		}
	}
	s.Earned = j.p.Phases[0]
	for i := 1; i <= at; i++ {
		then := j
		then.asOf = j.recordedOn(j.p.Phases[i].ID, s.Since)
		then.found = asOf(then.asOf)
		list := then.weigh(j.p.Phases[i].ID, j.p.Phases[i].Enter)
		if len(missing(list)) > 0 {
			s.Ahead = true
			s.Short = append(s.Short, list...)
			break
		}
		s.Earned = j.p.Phases[i]
	}
	s.Answered = s.Ahead && j.passedSince(at, asOf)
	if at+1 < len(j.p.Phases) {
		s.Next = j.p.Phases[at+1]
		s.Criteria = j.weigh(s.Next.ID, s.Next.Enter)
		if !s.Ahead && len(missing(s.Criteria)) == 0 {
			s.Earned = s.Next
		}
	}
	return s
}

// passedSince reports whether each phase up to the recorded one had nothing missing on some test day by now. A test that has
// grown old since was passed in its time.
func (j judge) passedSince(at int, asOf func(unit.Day) *finding.Findings) bool {
	for i := 1; i <= at; i++ {
		ph := j.p.Phases[i]
		if !slices.ContainsFunc(j.c.Tests, func(t client.TestDay) bool {
			then := j
			then.asOf = t.On
			if t.On.Before(j.event.Date) || t.On.After(j.asOf) {
				return false
			}
			then.found = asOf(t.On)
			return len(missing(then.weigh(ph.ID, ph.Enter))) == 0
		}) {
			return false
		}
	}
	return true
}

// recorded are the stages from the event up to the day, in the order of their days. What was recorded or opened before the
// event was said of another state of the knee.
func (j judge) recorded() (list []client.Stage) {
	for _, rec := range j.c.Stages {
		if !rec.From.After(j.asOf) && !rec.From.Before(j.event.Date) {
			list = append(list, rec)
		}
	}
	sortByDay(list, func(s client.Stage) unit.Day { return s.From })
	return list
}

// recordedPhase is the phase that is recorded as of the day; the first where none is.
func (j judge) recordedPhase() *program.Phase {
	phase := j.p.Phases[0]
	for _, rec := range j.recorded() {
		if ph, _ := j.p.Phase(rec.ID); ph != nil {
			phase = ph
		}
	}
	return phase
}

// recordedOn is the day a phase was recorded; a phase that was passed over is judged on the given day.
func (j judge) recordedOn(id string, instead unit.Day) unit.Day {
	for _, rec := range j.recorded() {
		if rec.ID == id {
			return rec.From
		}
	}
	return instead
}

// unknownIDs are the names of stages, activities and criteria that the program does not have.
func unknownIDs(p *program.Program, c *client.Client, event *client.Event, on unit.Day) (wrong []Mistake) {
	var phases []string
	opened := slices.Clone(everyday)
	for _, ph := range p.Phases {
		phases = append(phases, ph.ID)
	}
	for _, a := range p.Activities {
		opened = append(opened, a.ID)
	}
	for _, l := range p.Limits {
		if l.OpensWeek != nil && applies(l.When, c, event, event.Date) {
			opened = append(opened, string(l.Kind))
		}
	}
	for _, s := range c.Stages {
		if ph, _ := p.Phase(s.ID); ph == nil {
			wrong = append(wrong, Mistake{At: s.At.At("id"), What: fmt.Sprintf("there is no phase %q in program %s", s.ID, p.ID), Instead: "write one of " + strings.Join(phases, ", ")})
		}
	}
	for _, o := range c.Opened {
		if !slices.Contains(opened, o.ID) {
			wrong = append(wrong, Mistake{At: o.At.At("id"), What: fmt.Sprintf("%q is nothing that program %s lets a therapist open", o.ID, p.ID), Instead: "write one of " + strings.Join(opened, ", ")})
		}
	}
	wrong = append(wrong, unknownAlso(p, event)...)
	wrong = append(wrong, wrongLevels(p, c)...)
	return append(wrong, wrongWaivers(p, c, event, on)...)
}

// unnumbered is the id of a criterion without the number that tells several of one measure apart: running.effusion-2.
func unnumbered(id string) string { return strings.TrimRight(strings.TrimRight(id, "23456789"), "-") }

// unknownAlso are procedures of the operation that no limit of the program speaks of: misspelt, they would be free.
func unknownAlso(p *program.Program, event *client.Event) (wrong []Mistake) {
	var known []string
	for _, l := range p.Limits {
		for _, a := range l.When.Also {
			if !slices.Contains(known, a) {
				known = append(known, a)
			}
		}
	}
	for i, a := range event.Also {
		if !slices.Contains(known, a) {
			wrong = append(wrong, Mistake{At: event.At.At(fmt.Sprintf("also[%d]", i)), What: fmt.Sprintf("no limit of program %s speaks of %q", p.ID, a),
				Instead: "write " + nearest(a, known) + ", or add a limit file for it"})
		}
	}
	return wrong
}

// shownNames is how many names are listed for one that is not known; chosen: a glance.
const shownNames = 6

// nearest are the names that begin like a misspelt one, else the first few.
func nearest(name string, known []string) string {
	head, _, _ := strings.Cut(name, "-")
	var near []string
	for _, k := range known {
		if strings.HasPrefix(k, head) {
			near = append(near, k)
		}
	}
	if len(near) == 0 {
		near = known
	}
	if len(near) > shownNames {
		near = append(slices.Clone(near[:shownNames]), "…")
	}
	return "one of " + strings.Join(near, ", ")
}

// criterionIDs are the ids under which a program's criteria may be waived.
func criterionIDs(p *program.Program) (ids []string) {
	var add func(of string, rules []program.Criterion)
	add = func(of string, rules []program.Criterion) {
		for i, r := range rules {
			switch {
			case len(r.All) > 0:
				ids = append(ids, fmt.Sprintf("%s.all-%d", of, i+1))
				add(of, r.All)
			case len(r.Any) > 0:
				ids = append(ids, fmt.Sprintf("%s.any-%d", of, i+1))
				add(of, r.Any)
			case r.Measure == "":
				ids = append(ids, of+".time")
			default:
				ids = append(ids, of+"."+r.Measure)
			}
		}
	}
	for _, ph := range p.Phases {
		add(ph.ID, ph.Enter)
	}
	for _, a := range p.Activities {
		add(a.ID, a.Needs)
	}
	if p.End != nil {
		add("end", p.End.Needs)
	}
	return ids
}
