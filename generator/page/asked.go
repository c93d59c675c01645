package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
)

// asked is what the next stage and each activity ask, against what was found: the activities in one table, then every mark once with
// whoever asks for it, then goals.
func (d *desk) asked() Part {
	s := d.p.Stage
	var nodes []Node
	asked := []plan.Criterion(nil)
	if s.Next == nil {
		nodes = append(nodes, d.note("last-stage"))
	} else {
		asked = criteriaOf(s, s.Next.ID)
	}
	nodes = append(nodes, d.activities())
	for _, a := range d.p.Activities {
		asked = append(asked, withoutFloors(a.Criteria)...)
	}
	nodes = append(nodes, d.criteria(d.say("marks-caption", "stage", phaseTitle(s.Next), "day", d.w.Day(d.newest())), asked), d.ending())
	if open := earlierOpen(s); len(open) > 0 {
		nodes = append(nodes, d.criteria(d.say("earlier-caption"), open))
	}
	if len(s.Short) > 0 {
		nodes = append(nodes, d.criteria(d.say("short-caption"), s.Short))
	}
	nodes = append(nodes, d.note("near-note"))
	nodes = append(nodes, d.goals()...)
	return d.folded("asked", d.standing(asked), nodes...)
}

func criteriaOf(s plan.StageState, phase string) (some []plan.Criterion) {
	for _, c := range s.Criteria {
		if c.Of == phase {
			some = append(some, c)
		}
	}
	return some
}

// earlierOpen are criteria of the recorded and earlier stages that are not passed: the therapist has gone ahead of them,
// or they have been lost or grown old since.
func earlierOpen(s plan.StageState) (open []plan.Criterion) {
	for _, c := range s.Criteria {
		if (s.Next == nil || c.Of != s.Next.ID) && !c.Passed() {
			open = append(open, c)
		}
	}
	return open
}

func (d *desk) outcomeOrNone(c plan.Criterion) string {
	if c.Found == nil || c.Found.Refuse {
		return ""
	}
	return d.outcome(c.Found)
}

// wanted is the mark in words, or the floor in time.
func (d *desk) wanted(c plan.Criterion) string {
	switch {
	case c.Together:
		return d.say("all-of")
	case len(c.Any) > 0:
		return d.say("any-of")
	case c.Wanted.Grade != "":
		return d.word("sense", c.Sense, "mark", d.word("grade", string(c.Wanted.Grade)))
	case c.Sense != "":
		return nonEmpty("; ", d.word("sense", c.Sense, "mark", withUnit(significant(c.Wanted.Number, inputDigits), d.reason(basis.Said(c.Wanted.Unit)))), d.notBefore(c))
	}
	return d.notBefore(c)
}

func (d *desk) notBefore(c plan.Criterion) string {
	if c.NotBefore.IsZero() {
		return ""
	}
	return d.say("not-before", "day", d.nearDay(c.NotBefore))
}

// near says how the mark lies to the error of the test; time and grades have none.
func (d *desk) near(c plan.Criterion) string {
	switch {
	case len(c.Any) > 0 || c.Measure == "time" || c.Wanted.Grade != "" || c.Found == nil || c.Found.Refuse:
		return ""
	case c.Near == nil:
		return d.say("near-not-known")
	case *c.Near:
		return d.band("near", c)
	}
	return d.band("near-not", c)
}

// band puts the width of the error band behind the verdict; where the error comes from stands beside the change of the measure.
func (d *desk) band(key string, c plan.Criterion) string {
	if c.NearBy == nil {
		return d.say(key)
	}
	return d.say("near-band", "near", d.say(key), "band", withUnit(resultNumber(c.Band), c.Wanted.Unit))
}

func (d *desk) whyState(c plan.Criterion) string {
	waived := ""
	if c.Waived != nil {
		waived = d.say("waived-by", "who", d.therapist(c.Waived.By), "reason", c.Waived.Reason)
	}
	optional := ""
	if c.Optional {
		optional = d.say("only-if-tested")
	}
	reason := d.reason(c.Reason, c.Doubt)
	if reason == d.word("state", string(c.State)) {
		reason = "" // the state says it
	}
	return nonEmpty("; ", waived, reason, optional)
}

// ruleOf is where a criterion comes from: source, standing, note.
func (d *desk) ruleOf(c *program.Criterion) string {
	if c == nil {
		return ""
	}
	return nonEmpty("; ", nonEmpty(", ", c.Source, d.word("standing", string(c.Standing))), d.reason(basis.Said(c.Note)))
}
