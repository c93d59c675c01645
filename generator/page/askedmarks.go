package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A mark that several activities ask for stands once, with all that ask for it. Who needs the whole name of a criterion puts the two
// together: who asks, a dot, what is measured.

// askedMark is one mark with whoever asks for it, and what each says of its source.
type askedMark struct {
	plan.Criterion
	of    []string
	rules []*program.Criterion // as long as of
}

// criteria is a table of marks, each once, with the remarks of its rows below it.
func (d *desk) criteria(caption string, criteria []plan.Criterion) Node {
	table := d.table("criteria", caption, "id", "found", "wanted", "state", "asked-by", "near", "rule")
	below := &notes{}
	for _, m := range d.together(criteria) {
		d.mark(&table, below, m, "")
	}
	return Node{Kind: "group", Class: "asked", Nodes: kept([]Node{table, below.below()})}
}

func (d *desk) mark(table *Node, below *notes, m askedMark, deeper string) {
	class := ""
	if !m.Passed() {
		class = "missing"
	}
	found := nonEmpty(", ", d.outcomeOrNone(m.Criterion), d.otherDay(m.Criterion))
	table.row(class, deeper+rowName(m.Criterion), found, d.wanted(m.Criterion), nonEmpty(" ", d.word("state", string(m.State)), below.mark(d.whyState(m.Criterion))), d.inTurn(m.of), d.near(m.Criterion), d.sourceOf(m, below))
	for _, choice := range m.Any {
		d.mark(table, below, askedMark{choice, nil, []*program.Criterion{choice.Rule}}, deeper+"› ")
	}
}

// together are criteria that say the same, each once, in order of their first appearance.
func (d *desk) together(criteria []plan.Criterion) (marks []askedMark) {
	at := map[string]int{}
	for _, c := range criteria {
		key := d.sameAs(c)
		i, known := at[key]
		if !known {
			i = len(marks)
			at[key] = i
			marks = append(marks, askedMark{Criterion: c})
		}
		marks[i].of, marks[i].rules = append(marks[i].of, c.Of), append(marks[i].rules, c.Rule)
	}
	return marks
}

// sameAs is all that a row says of a criterion besides who asks for it and by which source.
func (d *desk) sameAs(c plan.Criterion) string {
	parts := []string{measured(c.ID), d.outcomeOrNone(c), d.wanted(c), c.On.String(), string(c.State), d.near(c), d.whyState(c)}
	for _, choice := range c.Any {
		parts = append(parts, d.sameAs(choice), d.ruleOf(choice.Rule))
	}
	return strings.Join(parts, "\n")
}

// sourceOf is where a mark comes from; where not all that ask for it say the same, each with its name.
func (d *desk) sourceOf(m askedMark, below *notes) string {
	var texts []string
	of := map[string][]string{}
	for i, r := range m.rules {
		rule := d.sourceNoted(r, below)
		if of[rule] == nil {
			texts = append(texts, rule)
		}
		if i < len(m.of) {
			of[rule] = append(of[rule], m.of[i])
		}
	}
	if len(texts) == 1 {
		return texts[0]
	}
	for i, text := range texts {
		if text != "" {
			texts[i] = d.inTurn(of[text]) + ": " + text
		}
	}
	return nonEmpty("; ", texts...)
}

// sourceNoted is the source of a rule with its standing; its remark stands below the table.
func (d *desk) sourceNoted(r *program.Criterion, below *notes) string {
	if r == nil {
		return ""
	}
	return nonEmpty(" ", nonEmpty(", ", r.Source, d.word("standing", string(r.Standing))), below.mark(d.reason(basis.Said(r.Note))))
}

// inTurn names stages and activities; three or more that follow each other in the program are named by the first and the last.
func (d *desk) inTurn(of []string) string {
	order := d.askers()
	var parts []string
	for i := 0; i < len(of); {
		j := i + 1
		at := slices.Index(order, of[i])
		for j < len(of) && at >= 0 && at+j-i < len(order) && order[at+j-i] == of[j] {
			j++
		}
		if j-i < 3 {
			j = i + 1
			parts = append(parts, of[i])
		} else {
			parts = append(parts, d.say("from-to", "from", of[i], "to", of[j-1]))
		}
		i = j
	}
	return strings.Join(parts, ", ")
}

// askers are the next stage and the activities, in the order of the program.
func (d *desk) askers() (order []string) {
	if next := d.p.Stage.Next; next != nil {
		order = append(order, next.ID)
	}
	for _, a := range d.p.Activities {
		order = append(order, a.Activity.ID)
	}
	return order
}

// rowName is what is measured; what is measured by no test, time and choices, has its whole name.
func rowName(c plan.Criterion) string {
	if c.Measure == "time" || len(c.Any) > 0 {
		return c.ID
	}
	return measured(c.ID)
}

// measured is the name of a criterion without who asks for it: running.knee-extension.lsi is knee-extension.lsi.
func measured(id string) string {
	if _, rest, ok := strings.Cut(id, "."); ok {
		return rest
	}
	return id
}

// newest is the day of the newest test of all: a value of another day says so.
func (d *desk) newest() (on unit.Day) {
	if d.p.Found == nil {
		return on
	}
	for _, name := range d.p.Found.Order {
		if m := d.p.Found.Measures[name]; m.OK && m.On.After(on) {
			on = m.On
		}
	}
	return on
}

// otherDay is the day of a value that is not of the newest test day; the calendar is of no day.
func (d *desk) otherDay(c plan.Criterion) string {
	if c.Measure == "time" || c.On == d.newest() {
		return ""
	}
	return d.nearDay(c.On)
}

// floors are the criteria of time alone, and withoutFloors the others: an activity's own line tells when.
func floors(criteria []plan.Criterion) []plan.Criterion {
	return slices.DeleteFunc(slices.Clone(criteria), func(c plan.Criterion) bool { return !isFloor(c) })
}

func withoutFloors(criteria []plan.Criterion) []plan.Criterion {
	return slices.DeleteFunc(slices.Clone(criteria), isFloor)
}

func isFloor(c plan.Criterion) bool { return len(c.Any) == 0 && c.Measure == "time" && c.Waived == nil }

// activities is a line an activity: how it stands, its floor in time, how much is passed. What is missing stands below, beside who asks for it.
func (d *desk) activities() Node {
	below := &notes{}
	table := d.table("activities", d.say("activities-caption"), "activity", "state", "floor", "passed", "why", "rule")
	for _, a := range d.p.Activities {
		var time, rules []string
		for _, c := range floors(a.Criteria) {
			time = append(time, d.say("floor-state", "floor", d.wanted(c), "state", d.word("state", string(c.State)), "found", d.outcomeOrNone(c)))
			rules = append(rules, d.sourceNoted(c.Rule, below))
		}
		class := ""
		if a.State != "open" {
			class = "missing"
		}
		table.row(class, d.say("activity", "activity", a.Activity.Title, "id", a.Activity.ID), d.activityState(a), nonEmpty("; ", time...), d.passedOf(a.Criteria),
			d.reason(a.Because), nonEmpty("; ", rules...))
	}
	return Node{Kind: "group", Class: "asked", Nodes: kept([]Node{withoutEmpty(table), below.below()})}
}

func (d *desk) activityState(a plan.ActivityState) string {
	opened := ""
	if a.OpenedBy != "" {
		opened = d.say("opened-by", "who", d.called(a.OpenedBy), "day", d.nearDay(a.OpenedFrom))
	}
	return nonEmpty("; ", d.word("activity-state", a.State), opened)
}

// passedOf counts: 5 of 8.
func (d *desk) passedOf(criteria []plan.Criterion) string {
	n := 0
	for _, c := range criteria {
		if c.Passed() {
			n++
		}
	}
	return d.say("passed-of", "n", n, "all", len(criteria))
}

// standing counts the marks by how they stand: 5 met, 8 not met, 3 not tested.
func (d *desk) standing(criteria []plan.Criterion) string {
	count := map[plan.State]int{}
	for _, m := range d.together(criteria) {
		count[m.State]++
	}
	var parts []string
	for _, state := range []plan.State{plan.Met, plan.Waived, plan.NotMet, plan.NotTested, plan.OutOfDate} {
		if n := count[state]; n > 0 {
			parts = append(parts, d.say("counted", "n", n, "what", d.word("state", string(state))))
		}
	}
	if len(parts) == 0 {
		return d.say("nothing-asked")
	}
	return strings.Join(parts, ", ")
}
