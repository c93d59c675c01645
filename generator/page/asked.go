package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
)

// asked is what the next stage and each activity ask, against what was found.
func (d *desk) asked() Part {
	s := d.p.Stage
	var nodes []Node
	if s.Next == nil {
		nodes = append(nodes, d.note("last-stage"))
	} else {
		nodes = append(nodes, d.criteria(d.say("next-caption", "stage", s.Next.Title), criteriaOf(s, s.Next.ID)))
	}
	nodes = append(nodes, d.ending())
	if open := earlierOpen(s); len(open) > 0 {
		nodes = append(nodes, d.criteria(d.say("earlier-caption"), open))
	}
	if len(s.Short) > 0 {
		nodes = append(nodes, d.criteria(d.say("short-caption"), s.Short))
	}
	for _, a := range d.p.Activities {
		nodes = append(nodes, d.activity(a))
	}
	nodes = append(nodes, d.note("near-note"))
	return d.part("asked", nodes...)
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

func (d *desk) activity(a plan.ActivityState) Node {
	title := d.say("activity", "activity", a.Activity.Title, "state", d.word("activity-state", a.State))
	var nodes []Node
	if a.OpenedBy != "" {
		nodes = append(nodes, d.note("opened-by", "who", d.therapist(a.OpenedBy), "day", d.w.Day(a.OpenedFrom)))
	}
	if a.Because != "" {
		nodes = append(nodes, paragraph("note", d.reason(a.Because)))
	}
	if !a.NotBefore.IsZero() {
		nodes = append(nodes, d.note("not-before", "day", d.w.Day(a.NotBefore)))
	}
	nodes = append(nodes, d.criteria(d.say("activity-caption", "activity", a.Activity.Title), a.Criteria))
	return group("activity", title, 3, nodes...)
}

func (d *desk) criteria(caption string, criteria []plan.Criterion) Node {
	table := d.table("criteria", caption, "id", "found", "wanted", "on", "state", "near", "why", "rule")
	for _, c := range criteria {
		d.criterion(&table, c, "")
	}
	return table
}

func (d *desk) criterion(table *Node, c plan.Criterion, mark string) {
	class := ""
	if !c.Passed() {
		class = "missing"
	}
	table.row(class, mark+c.ID, d.outcomeOrNone(c), d.wanted(c), d.w.Day(c.On), d.word("state", string(c.State)), d.near(c), d.whyState(c), d.ruleOf(c.Rule))
	for _, choice := range c.Any {
		d.criterion(table, choice, mark+"› ")
	}
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
	return d.say("not-before", "day", d.w.Day(c.NotBefore))
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

// band puts the width of the error band behind the verdict.
func (d *desk) band(key string, c plan.Criterion) string {
	if c.NearBy == nil {
		return d.say(key)
	}
	return d.say("near-band", "near", d.say(key), "band", withUnit(resultNumber(c.Band), c.Wanted.Unit), "source", nonEmpty(", ", c.NearBy.Source, d.word("standing", string(c.NearBy.Standing))))
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
	return nonEmpty("; ", waived, d.reason(c.Reason, c.Doubt), optional)
}

// ruleOf is where a criterion comes from: source, standing, note.
func (d *desk) ruleOf(c *program.Criterion) string {
	if c == nil {
		return ""
	}
	return nonEmpty("; ", nonEmpty(", ", c.Source, d.word("standing", string(c.Standing))), d.reason(basis.Said(c.Note)))
}
