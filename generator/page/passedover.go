package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
)

// passedOver is every choice that was not taken: one line a reason, leg and weeks, with the places in the program and what was passed over there.
func (d *desk) passedOver() Node {
	if len(d.p.Dropped) == 0 {
		return d.note("nothing-passed-over")
	}
	type line struct{ why, leg, weeks string }
	var order []line
	what := map[line][]string{}
	for _, row := range gathered(d.p.Dropped) {
		l := line{d.reason(row.first.Because), d.leg(row.first.Side), spanOf(row.weeks)}
		if row.first.Empty {
			l.why = nonEmpty("; ", l.why, d.say("slot-empty"))
		}
		if what[l] == nil {
			order = append(order, l)
		}
		what[l] = append(what[l], d.say("passed-at", "slot", row.first.Slot, "exercise", d.exercise(row.first.Exercise)))
	}
	table := d.table("passed-over", d.say("passed-over-caption"), "why", "leg", "weeks", "exercise")
	for _, l := range order {
		table.row("", l.why, l.leg, l.weeks, strings.Join(what[l], ", "))
	}
	return fold("sums", d.say("passed-over-line", "n", len(table.Rows)), table)
}

// droppedRow is one reason over some weeks.
type droppedRow struct {
	first plan.Dropped
	weeks []int
}

func gathered(all []plan.Dropped) (rows []droppedRow) {
	at := map[plan.Dropped]int{}
	for _, drop := range all {
		same := drop
		same.Week = 0
		i, known := at[same]
		if !known {
			i = len(rows)
			at[same] = i
			rows = append(rows, droppedRow{first: drop})
		}
		rows[i].weeks = append(rows[i].weeks, drop.Week)
	}
	return rows
}

// spanOf writes weeks as 1–4, 6.
func spanOf(weeks []int) string {
	slices.Sort(weeks)
	weeks = slices.Compact(weeks)
	var parts []string
	for i := 0; i < len(weeks); {
		j := i
		for j+1 < len(weeks) && weeks[j+1] == weeks[j]+1 {
			j++
		}
		part := strconv.Itoa(weeks[i])
		if j > i {
			part += "–" + strconv.Itoa(weeks[j])
		}
		parts = append(parts, part)
		i = j + 1
	}
	return strings.Join(parts, ", ")
}

// deviations are the overrides of the block and what each changed.
func (d *desk) deviations() Part {
	if len(d.p.Overrides) == 0 {
		return d.part("deviations", d.note("no-overrides"))
	}
	table := d.table("overrides", d.say("overrides-caption"), "exercise", "leg", "changed", "why", "stands")
	for _, o := range d.p.Overrides {
		changed := d.reason(o.Changed...)
		if !o.Applied {
			changed = nonEmpty("; ", d.say("not-applied"), changed)
		}
		leg := ""
		if o.Override.Side != "" {
			leg = d.leg(o.Override.Side)
		}
		table.row("", d.exercise(o.Override.Exercise), leg, changed, o.Override.Reason, standsAt(o.Override.At, nil))
	}
	return d.folded("deviations", d.say("deviations-line", "n", len(d.p.Overrides)), table)
}

// deskDates are the dates on which a limit changes, the visit and the end, and where the tests seem to go. None is a promise; an activity's
// earliest day stands beside what it still asks.
func (d *desk) deskDates() Part {
	table := d.table("dates", d.say("dates-caption"), "on", "leg", "what", "set-by")
	for _, line := range d.p.Dates {
		if line.Kind != "not-before" {
			table.row("", d.nearDay(line.On), d.legOfLimit(line.Side), d.dateOf(line), d.reason(line.SetBy))
		}
	}
	table = withoutEmpty(table)
	trends := d.trends()
	if len(table.Rows)+len(trends) == 0 {
		return d.part("desk-dates", d.note("no-dates"))
	}
	return d.folded("desk-dates", d.say("dates-line", "n", len(table.Rows), "lines", d.lined()), append([]Node{table}, trends...)...)
}

// dateOf says what a date is for: the limit that lifts or loosens, the activity, the visit.
func (d *desk) dateOf(line plan.DateLine) string {
	what := d.word("kind", line.Title)
	if what == "" && (line.Kind == "lifts" || line.Kind == "loosens" || line.Kind == "tightens") {
		what = d.word("kind", line.What)
	}
	if what == "" {
		what = line.What
	}
	allows := ""
	if line.Allow != nil {
		allows = d.allowance(*line.Allow)
	}
	return d.word("date", line.Kind, "what", what, "allows", allows)
}
