package page

import (
	"strconv"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// weighed is every limit that was weighed, with who set it: those in force, then those that lost.
func (d *desk) weighed() Part {
	if len(d.p.Limits) == 0 {
		return d.part("weighed", d.note("no-limits"))
	}
	columns := []string{"limit", "allows", "from", "lifts", "set-by", "why", "stands"}
	won, lost := d.table("limits", d.say("limits-won"), columns...), d.table("limits", d.say("limits-lost"), columns...)
	for _, l := range d.p.Limits {
		table := &lost
		if l.Wins {
			table = &won
		}
		table.row("", d.limitName(l), d.allows(l), d.nearDay(l.From), d.liftsOn(l), nonEmpty("; ", d.setBy(l), nonEmpty(", ", l.Source, d.word("standing", string(l.Standing)))),
			nonEmpty("; ", l.Reason, l.Note), standsAt(l.At, nil))
	}
	return d.folded("weighed", d.say("weighed-line", "won", len(won.Rows), "all", len(d.p.Limits)), won, lost, d.note("limits-note"))
}

// limitSums are the sums of parts of the body's weight.
func (d *desk) limitSums() (lines []string) {
	for _, l := range d.p.Limits {
		lines = append(lines, sums(&d.tests, l.PartLoad.Step())...)
	}
	return lines
}

// limitName is the kind of a limit, with the leg where it is not the event's, and whether it lies outside the block.
func (d *desk) limitName(l plan.Window) string {
	leg, outside := "", ""
	if e := d.p.Event; l.Side != "" && (e == nil || l.Side != e.Side) {
		leg = d.leg(l.Side)
	}
	if !l.Touches {
		outside = d.say("outside-block")
	}
	return nonEmpty(", ", d.kinds(l.Kind, l.On), leg, outside)
}

// legOfLimit is the leg that a limit binds; one that names none binds the event's.
func (d *desk) legOfLimit(side unit.Side) string {
	if side == "" {
		return ""
	}
	return d.leg(side)
}

// kinds is the kind of a limit, and the only exercises that it speaks of.
func (d *desk) kinds(k unit.Kind, on []unit.Kind) string {
	if len(on) == 0 {
		return d.word("kind", string(k))
	}
	only := make([]string, len(on))
	for i, o := range on {
		only[i] = d.word("kind", string(o))
	}
	return d.say("kind-on", "kind", d.word("kind", string(k)), "only", d.w.Join(only))
}

func (d *desk) allows(l plan.Window) string {
	if l.Gap {
		return d.say("allows-gap")
	}
	return d.allowance(l.Allow)
}

// allowance is what a limit allows, in words.
func (s sheet) allowance(a unit.Allowance) string {
	var all []string
	if a.Allowed != nil {
		all = append(all, s.word("allows", strconv.FormatBool(*a.Allowed)))
	}
	if a.Range != nil {
		all = append(all, s.reach(a.Range))
	}
	if a.Grade != "" {
		all = append(all, s.word("work", string(a.Grade)))
	}
	if a.Part != nil {
		all = append(all, s.say("allows-share", "share", withUnit(resultNumber(float64(*a.Part)), "%")))
	}
	if a.PartMass != nil {
		all = append(all, s.say("allows-weight", "weight", withUnit(resultNumber(float64(*a.PartMass)), "kg")))
	}
	if a.BothOnly {
		all = append(all, s.say("allows-both-only"))
	}
	if a.Locked != nil {
		all = append(all, s.say("allows-locked", "bend", degreesText(*a.Locked)))
	}
	if a.Night != nil {
		all = append(all, s.word("night", strconv.FormatBool(*a.Night)))
	}
	if len(all) == 0 {
		return s.say("allows-true")
	}
	return strings.Join(all, ", ")
}

func (d *desk) liftsOn(l plan.Window) string {
	if l.Lifts.IsZero() {
		return d.say("until-further-notice")
	}
	return d.nearDay(l.Lifts)
}

// setBy is who, by which route, and when it was said; of a program's row its place says the rest.
func (d *desk) setBy(l plan.Window) string {
	if l.SetBy == "program" {
		return d.word("set-by", l.SetBy)
	}
	return nonEmpty(", ", d.word("set-by", l.SetBy), l.Name, d.word("route", l.Route), d.nearDay(l.Said))
}
