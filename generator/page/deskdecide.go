package page

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/plan"
)

// decide is the first sheet: what was found, what is asked and not there, what is otherwise than in the block before, what to look at, to
// ask and to decide, and where to sign. Every line of it stands in full, with its basis, in the parts below.
func (d *desk) decide() Part {
	columns := Node{Kind: "group", Class: "decide-columns", Nodes: kept([]Node{
		d.decideStage(), d.decideActivities(), d.decideSince(), d.decideFlags(), d.decideSurgeon(), d.decideYours(), d.signature()})}
	return d.part("decide", d.found(true), columns)
}

// decideStage is whether the next stage is earned: what is passed as a count, what is not by name.
func (d *desk) decideStage() Node {
	s := d.p.Stage
	if s.Next == nil {
		return group("decide-stage", d.say("decide-last"), 3, d.stageAhead(), d.decideEnd())
	}
	asked := criteriaOf(s, s.Next.ID)
	key := "decide-earned"
	if slices.ContainsFunc(asked, func(c plan.Criterion) bool { return !c.Passed() }) {
		key = "decide-not-earned"
	}
	return group("decide-stage", d.say(key, "stage", s.Next.Title), 3, d.stageAhead(), d.marksOf(asked, true), d.earlierLost())
}

// stageAhead says that the recorded stage was set ahead of what the tests bear out.
func (d *desk) stageAhead() Node {
	if s := d.p.Stage; !s.Ahead || s.Answered {
		return Node{}
	}
	return paragraph("alert", d.say("decide-ahead", "stage", phaseTitle(d.p.Stage.Set), "earned", phaseTitle(d.p.Stage.Earned)))
}

func (d *desk) decideEnd() Node {
	if d.p.End == nil {
		return Node{}
	}
	return d.marksOf(d.p.End.Criteria, true)
}

// earlierLost are marks of this stage or an earlier one that are not passed now.
func (d *desk) earlierLost() Node {
	open := earlierOpen(d.p.Stage)
	if len(open) == 0 {
		return Node{}
	}
	return factual("decide-marks", d.labelled("lost", d.markNames(open, true)))
}

// marksOf counts the marks that are passed, and names the others by how they stand.
func (d *desk) marksOf(asked []plan.Criterion, withValues bool) Node {
	facts := []Fact{d.labelled("passed", d.passedOf(asked))}
	for _, state := range []plan.State{plan.NotMet, plan.NotTested, plan.OutOfDate} {
		open := slices.DeleteFunc(slices.Clone(asked), func(c plan.Criterion) bool { return c.State != state || c.Passed() })
		facts = append(facts, fact(d.word("marks-state", string(state)), d.markNames(open, withValues)))
	}
	return factual("decide-marks", facts...)
}

// markNames are marks in words, each with what was found and what is asked.
func (d *desk) markNames(marks []plan.Criterion, withValues bool) string {
	names := make([]string, len(marks))
	for i, c := range marks {
		names[i] = d.markName(c)
		if !withValues || len(c.Any) > 0 {
			continue
		}
		found := d.outcomeOrNone(c)
		switch {
		case c.Measure == "time":
			names[i] = d.say("mark-time", "day", d.nearDay(c.NotBefore))
		case found == "":
			names[i] = d.say("mark-asked", "what", names[i], "wanted", d.wanted(c))
		default:
			names[i] = d.say("mark-found", "what", names[i], "found", found, "wanted", d.wanted(c), "near", d.nearly(c))
		}
	}
	return strings.Join(slices.Compact(names), "; ")
}

// nearly says that a mark lies within the error of its test.
func (d *desk) nearly(c plan.Criterion) string {
	if c.Near != nil && *c.Near {
		return d.say("near-short")
	}
	return ""
}

// markName is a measure in words; of several of which one is enough, all of them.
func (d *desk) markName(c plan.Criterion) string {
	if len(c.Any) > 0 {
		var ids []string
		for _, choice := range c.Any {
			ids = append(ids, cmp.Or(choice.Measure, measured(choice.ID)))
		}
		if c.Together {
			return d.w.Join(d.measuresOf(ids))
		}
		return d.w.Either(d.measuresOf(ids))
	}
	return d.measuresOf([]string{cmp.Or(c.Measure, measured(c.ID))})[0]
}

func (d *desk) measuresOf(ids []string) []string { return d.sheet.measures(ids) }

// nextActivities is how many closed activities the first sheet tells in detail: those that come next. Chosen.
const nextActivities = 2

// decideActivities are the activities that are open or come next; of the others only their days.
func (d *desk) decideActivities() Node {
	var lines, later []string
	closed := 0
	for _, a := range d.p.Activities {
		if a.State == "closed" {
			closed++
		}
		if a.State == "closed" && (closed > nextActivities || a.NotBefore.After(blockEnd(d.p))) {
			day := cmp.Or(d.nearDay(a.NotBefore), "–")
			if !a.NotBefore.IsZero() && !a.NotBefore.After(d.p.AsOf) {
				day = d.say("in-brackets", "what", d.floorOf(a))
			}
			later = append(later, d.say("activity-later", "activity", a.Activity.Title, "day", day))
			continue
		}
		lines = append(lines, d.activityLine(a))
	}
	if len(later) > 0 {
		lines = append(lines, d.say("activities-later", "which", strings.Join(later, ", ")))
	}
	return group("decide-activities", d.say("decide-activities"), 3, bullets("", lines...))
}

// floorOf is the floor in time of a closed activity: a day that is past is no longer what it waits for.
func (d *desk) floorOf(a plan.ActivityState) string {
	if a.NotBefore.After(d.p.AsOf) {
		return d.say("not-before", "day", d.nearDay(a.NotBefore))
	}
	return d.say("floor-passed", "day", d.nearDay(a.NotBefore))
}

func (d *desk) activityLine(a plan.ActivityState) string {
	open := slices.DeleteFunc(withoutFloors(a.Criteria), func(c plan.Criterion) bool { return c.Passed() })
	missing, floor := "", ""
	if len(open) > 0 {
		missing = d.say("activity-missing", "what", d.markNames(open, false))
	}
	if a.State == "closed" && !a.NotBefore.IsZero() {
		floor = d.floorOf(a)
	}
	return d.say("activity-line", "activity", a.Activity.Title, "state", nonEmpty(", ", d.word("activity-state", a.State), floor), "passed", d.passedOf(a.Criteria),
		"more", nonEmpty("; ", missing, d.reason(a.Because)))
}

// mostLines is how many lines of what is otherwise stand on the first sheet. Chosen: what a glance takes in.
const mostLines = 6

// decideSince is what the block asks otherwise than the one before, and why.
func (d *desk) decideSince() Node {
	since := d.p.Since
	if since == nil {
		return Node{}
	}
	var lines []string
	if since.Stage != nil {
		lines = append(lines, d.say("stage-since", "before", since.Stage.Title, "now", phaseTitle(d.p.Stage.Set)))
	}
	all := d.sinceShort()
	lines = append(lines, all[:min(len(all), mostLines)]...)
	if more := len(all) - mostLines; more > 0 {
		lines = append(lines, d.say("since-more", "n", more))
	}
	if len(lines) == 0 {
		lines = []string{d.say("since-nothing", "n", since.Block.Number)}
	}
	return group("decide-since", d.say("decide-since", "n", since.Block.Number), 3, bullets("", lines...))
}

// decideYours is what no tool decides.
func (d *desk) decideYours() Node {
	p := d.p
	var lines []string
	if next := p.Stage.Next; next != nil && !slices.ContainsFunc(criteriaOf(p.Stage, next.ID), func(c plan.Criterion) bool { return !c.Passed() }) {
		lines = append(lines, d.say("yours-stage", "stage", next.Title))
	}
	if !p.Stage.Recorded {
		lines = append(lines, d.say("yours-record"))
	}
	for _, a := range p.Activities {
		if a.State == "closed" && len(a.Missing) == 0 && !a.NotBefore.After(p.AsOf) {
			lines = append(lines, d.say("yours-open", "activity", a.Activity.Title))
		}
	}
	if w := d.standingWaivers(); w != "" {
		lines = append(lines, d.say("yours-waived", "which", w))
	}
	if find := d.toFind(); find != "" {
		lines = append(lines, d.say("yours-find", "which", find))
	}
	if p.Block.NextVisit == nil {
		lines = append(lines, d.say("yours-visit"))
	}
	if r := p.Retest; r != nil && !r.Due.After(blockEnd(p)) {
		lines = append(lines, d.say("yours-measure", "what", d.remeasure()))
	}
	if open := len(OpenLines(p, d.w)); open > 0 {
		lines = append(lines, d.say("yours-cert", "n", open))
	}
	return group("decide-yours", d.say("decide-yours"), 3, bullets("", lines...))
}

// standingWaivers are the criteria that the therapist has waived and that would else be asked.
func (d *desk) standingWaivers() string {
	var ids []string
	for _, c := range allCriteria(d.p) {
		if c.State == plan.Waived && !slices.Contains(ids, c.ID) {
			ids = append(ids, c.ID)
		}
	}
	return strings.Join(ids, ", ")
}

// toFind are the exercises whose load the client has to find.
func (d *desk) toFind() string {
	var titles []string
	for _, pr := range d.p.Prescriptions {
		if pr.Weeks[0].FindYourWeight && !slices.Contains(titles, pr.Exercise.Title) {
			titles = append(titles, pr.Exercise.Title)
		}
	}
	return strings.Join(titles, "; ")
}
