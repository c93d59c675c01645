package page

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// cameBack is what the client logged of the block before and of this one, against what was asked. It is for a talk: load,
// monotony and strain stop nothing.
func (d *desk) cameBack() Part {
	var nodes []Node
	for _, back := range d.p.CameBack {
		nodes = append(nodes, group("came-back", d.say("came-back-block", "number", back.Block.Number, "day", d.w.Day(back.Block.Starts)), 3,
			d.backLines(back), d.backWeeks(back), bullets("not-done", d.notDone(back)...), bullets("also", d.also(back)...)))
	}
	if len(kept(nodes)) == 0 {
		return Part{}
	}
	return d.folded("came-back", d.say("came-back-line"), append(nodes, d.reports(), d.note("came-back-note"))...)
}

// backLines are the exercises, leg by leg: how much was done, the best set, the last completed week.
func (d *desk) backLines(back plan.CameBack) Node {
	table := d.table("came-back", d.say("came-back-caption"), "exercise", "leg", "sessions", "best-set", "estimate", "tonnage", "completed", "next-step")
	for _, l := range back.Lines {
		table.row("", l.Exercise.Title, d.word("role", l.Role, "side", d.word("side", string(l.Side))), d.say("done-of", "done", l.Done, "asked", l.Asked),
			d.reason(l.BestSet), tenths(l.Best), d.tonnages(l), nonEmpty("; ", d.completed(l), d.reason(l.Short)), d.reason(l.Step))
	}
	return table
}

// tonnages are the kilograms of each week, from the first.
func (d *desk) tonnages(l plan.BackLine) string {
	all, some := make([]string, len(l.Tonnage)), false
	for i, n := range l.Tonnage {
		if all[i] = "–"; n.OK() {
			all[i], some = amount(n), true
		}
	}
	if !some {
		return ""
	}
	return strings.Join(all, ", ")
}

// completed is the newest completed week, with what it has earned: nothing where it was the last of its block, or where the knee denies it.
func (d *desk) completed(l plan.BackLine) string {
	if l.Completed == 0 {
		return d.say("completed-none")
	}
	key := "completed-week"
	switch {
	case l.Last && l.Denied != "":
		key = "completed-last-denied"
	case l.Last:
		key = "completed-last"
	case l.Denied != "":
		key = "completed-denied"
	}
	return d.say(key, "n", l.Completed, "next", l.Completed+1, "why", d.reason(l.Denied))
}

// backWeeks are the sessions of a week as a whole, where they were rated.
func (d *desk) backWeeks(back plan.CameBack) Node {
	table := d.table("came-back-weeks", d.say("came-back-weeks-caption"), "week", "session-load", "monotony", "strain")
	for _, w := range back.Weeks {
		table.row("", fmt.Sprint(w.Number), d.amountOr(w.Load), d.amountOr(w.Monotony), d.amountOr(w.Strain))
	}
	return table
}

func (d *desk) notDone(back plan.CameBack) (lines []string) {
	for _, n := range back.NotDone {
		lines = append(lines, nonEmpty(": ", nonEmpty(", ", d.say("not-done", "day", d.w.Day(n.On)), n.Do), n.Why))
	}
	return lines
}

func (d *desk) also(back plan.CameBack) (lines []string) {
	for _, text := range back.Also {
		lines = append(lines, d.say("also-done", "what", text))
	}
	return lines
}

// reports are the client's own words on the knee, day by day, up to the block's first day.
func (d *desk) reports() Node {
	table := d.table("reports", d.say("reports-caption"), "on", "pain", "pain-morning", "pain-kind", "swelling")
	for _, r := range d.p.Found.Reports {
		table.row("", d.nearDay(r.On), amount(r.Pain), amount(r.Morning), d.word("pain-kind", string(r.Kind)), d.word("swelling", string(r.Swelling)))
	}
	return table
}

// backSums are the sums of what came back.
func (d *desk) backSums() []string {
	return sums(&d.tests, append(backSteps(d.p), reportSteps(d.p)...)...)
}

// backSteps are the numbers of what came back.
func backSteps(p *plan.Plan) (all []*basis.Step) {
	add := func(s *basis.Step) {
		if s != nil && !(s.Refuse && len(s.From) == 0) {
			all = append(all, s)
		}
	}
	for _, back := range p.CameBack {
		for _, l := range back.Lines {
			add(l.Best.Step())
			for _, n := range l.Tonnage {
				add(n.Step())
			}
		}
		for _, w := range back.Weeks {
			add(w.Load.Step())
			add(w.Monotony.Step())
			add(w.Strain.Step())
		}
	}
	return all
}

// reportSteps are the numbers of the client's own reports.
func reportSteps(p *plan.Plan) (all []*basis.Step) {
	if p.Found == nil {
		return nil
	}
	for _, r := range p.Found.Reports {
		all = append(all, r.Pain.Step(), r.Morning.Step())
	}
	return all
}
