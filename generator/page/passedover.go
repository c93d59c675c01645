package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
)

// passedOver is every choice that was not taken, with the reason; the same reason in several weeks is one line.
func (d *desk) passedOver() Part {
	if len(d.p.Dropped) == 0 {
		return d.part("passed-over", d.note("nothing-passed-over"))
	}
	table := d.table("passed-over", d.say("passed-over-caption"), "slot", "exercise", "leg", "weeks", "why")
	for _, row := range gathered(d.p.Dropped) {
		why := d.reason(row.first.Because)
		if row.first.Empty {
			why = nonEmpty("; ", why, d.say("slot-empty"))
		}
		table.row("", row.first.Slot, d.exercise(row.first.Exercise), d.leg(row.first.Side), spanOf(row.weeks), why)
	}
	return d.part("passed-over", table)
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
	return d.part("deviations", table)
}

// deskDates are the dates that matter. None is a promise: each says what is still missing.
func (d *desk) deskDates() Part {
	if len(d.p.Dates) == 0 {
		return d.part("desk-dates", d.note("no-dates"))
	}
	table := d.table("dates", d.say("dates-caption"), "on", "leg", "what", "missing", "set-by")
	for _, line := range d.p.Dates {
		table.row("", d.w.Day(line.On), d.legOfLimit(line.Side), d.dateOf(line), strings.Join(line.Missing, ", "), d.reason(line.SetBy))
	}
	return d.part("desk-dates", table)
}

// dateOf says what a date is for: the limit that lifts or loosens, the activity, the visit.
func (d *desk) dateOf(line plan.DateLine) string {
	what := d.word("kind", line.Title)
	if what == "" && (line.Kind == "lifts" || line.Kind == "loosens") {
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
