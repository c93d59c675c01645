package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Activities (rules 16, 17): opened by the therapist alone, never before their floor in time; suspended by swelling, a lost
// extension, a look that was never made, an instruction, or symptoms; never closed by a test that has grown old.

// activities says how running, jumping and so on stand. newer are the findings up to the last day that tells of the block: they
// may suspend and open nothing.
func (j judge) activities(clinic *client.Clinic, k knees, symptoms Symptoms, asOf func(unit.Day) *finding.Findings, newer *finding.Findings) (list []ActivityState) {
	for i := range j.p.Activities {
		a := &j.p.Activities[i]
		s := ActivityState{Activity: a, State: "closed", Criteria: j.asked(a, clinic, k)}
		s.Missing = missing(s.Criteria)
		for _, c := range s.Criteria {
			s.NotBefore = later(s.NotBefore, c.NotBefore)
		}
		if o := j.opening(a.ID); o != nil {
			s.OpenedBy, s.OpenedFrom, s.Ahead = o.By, o.From, j.ahead(s, o, clinic, k, asOf)
			s.State, s.Because = j.opened(s, k, symptoms, newer)
		}
		list = append(list, s)
	}
	return list
}

// asked are all criteria of an activity.
func (j judge) asked(a *program.Activity, clinic *client.Clinic, k knees) []Criterion {
	return slices.Concat(j.weigh(a.ID, a.Needs), j.youngFloor(a, clinic), j.byLimits(a, k))
}

// opening is the last opening of an activity that counts on the day; nil where the therapist has not opened it.
func (j judge) opening(id string) (last *client.Opened) {
	for i := range j.c.Opened {
		if o := &j.c.Opened[i]; o.ID == id && !o.From.After(j.asOf) && !o.From.Before(j.event.Date) && (last == nil || !o.From.Before(last.From)) {
			last = o
		}
	}
	return last
}

// opened is the state of what the therapist has opened. A floor in time that is neither reached nor waived by name keeps it
// closed, whoever has allowed its kind.
func (j judge) opened(s ActivityState, k knees, symptoms Symptoms, newer *finding.Findings) (state string, because basis.Said) {
	for _, c := range s.Criteria {
		if c.Measure == "time" && !c.Passed() {
			return "closed", basis.Say("opened ahead of its time: not before {a}", c.NotBefore)
		}
	}
	if why := j.suspends(s.Activity, k, symptoms, newer); why != "" {
		return "suspended", why
	}
	return "open", ""
}

// ahead are the criteria that were not passed on the day of an opening; none where all are passed by now, for the question has
// then answered itself.
func (j judge) ahead(s ActivityState, o *client.Opened, clinic *client.Clinic, k knees, asOf func(unit.Day) *finding.Findings) []string {
	if len(s.Missing) == 0 {
		return nil
	}
	then := j
	then.asOf, then.found = o.From, asOf(o.From)
	return missing(then.asked(s.Activity, clinic, k))
}

// suspends says what suspends an opened activity; empty where nothing does.
func (j judge) suspends(a *program.Activity, knees knees, symptoms Symptoms, newer *finding.Findings) basis.Said {
	if lasting, because := symptoms.lasting(); lasting.Rank() >= StepBack.Rank() {
		return basis.Say("{a}: {b}", lasting, because)
	}
	if symptoms.Action.Rank() >= Pause.Rank() {
		return basis.Say("{a}: {b}", symptoms.Action, symptoms.Because)
	}
	for _, found := range []*finding.Findings{j.found, newer} {
		if why := lost(found); why != "" {
			return why
		}
	}
	for _, k := range a.Kinds {
		if r := knees.rule(k, a.Kinds, j.asOf); r.allow.Closed() {
			return basis.Say("{a}: {b}", k, r.setBy())
		}
	}
	return unseen(j.found, j.event.Date)
}

// lost says which of the marks that come before any impact was lost.
func lost(found *finding.Findings) basis.Said {
	if m := found.Measure("effusion"); m.OK && m.Grade.Rank() > unit.GradeTrace.Rank() {
		return basis.Say("effusion {a} on {b}", m.Grade, m.On)
	}
	if m := found.Measure("extension"); m.OK && m.Number > 0 {
		return basis.Say("the knee lacks {a}° of straight on {b}", m.Number, m.On)
	}
	return ""
}

// unwaivable are the marks that come before any impact (rules 16).
var unwaivable = []string{"effusion", "pain", "extension"}

// unseen says which of the marks that come before any impact, and that nobody may waive, were never looked at.
func unseen(found *finding.Findings, since unit.Day) basis.Said {
	var never []basis.Said
	for _, measure := range unwaivable {
		if !seenOnce(found, measure, since) {
			never = append(never, basis.Said(measure))
		}
	}
	if len(never) == 0 {
		return ""
	}
	return basis.Say("not looked at since the event: {a}", basis.Enumerated(never...))
}

// seenOnce reports whether a mark was looked at since the event, and in a way that could have seen what impact asks for.
func seenOnce(found *finding.Findings, measure string, since unit.Day) bool {
	if measure != "effusion" {
		return found.Measure(measure).OK
	}
	return slices.ContainsFunc(found.Knees, func(k finding.KneeDay) bool {
		return k.Effusion != "" && !k.On.Before(since) && k.EffusionHidden.Rank() <= unit.GradeTrace.Rank()
	})
}

// farAhead is how far a limit's lift is looked for, in years; chosen: longer than any course.
const farAhead = 5

// byLimits is the criterion that no limit closes what an activity is: met, or not before the day on which the last such
// limit lifts. A limit until further notice has no such day.
func (j judge) byLimits(a *program.Activity, knees knees) []Criterion {
	closed := func(d unit.Day) (by basis.Said) {
		for _, k := range a.Kinds {
			if r := knees.rule(k, a.Kinds, d); r.allow.Closed() {
				return basis.Say("{a}: {b}", k, r.setBy())
			}
		}
		return ""
	}
	why := closed(j.asOf)
	if why == "" {
		return nil
	}
	c := Criterion{ID: a.ID + ".limits", Of: a.ID, Measure: "limits", Rule: &program.Criterion{}, State: NotMet, On: j.asOf, Reason: why}
	var days []unit.Day
	for _, k := range a.Kinds {
		days = append(days, knees.turns(k, j.asOf)...)
	}
	sortByDay(days, func(d unit.Day) unit.Day { return d })
	for _, d := range days {
		if d.Before(j.asOf.AddMonths(12*farAhead)) && closed(d) == "" {
			c.NotBefore = d
			break
		}
	}
	return []Criterion{c}
}
