package page

import "paceleaf/generator/plan"

// goals are what the knee should have reached by now or later, and whom to tell of what is late. They open and close nothing.
func (d *desk) goals() []Node {
	if len(d.p.Goals) == 0 {
		return nil
	}
	below := &notes{}
	table := d.table("goals", d.say("goals-caption"), "id", "found", "wanted", "by", "state", "tell", "rule")
	for _, g := range d.p.Goals {
		class, tell := "", ""
		if g.State == "late" || !g.Lost.IsZero() {
			class = "missing"
		}
		if g.State != "reached" || !g.Lost.IsZero() {
			tell = d.word("set-by", string(g.Goal.Tell))
		}
		table.row(class, g.Goal.Measure, d.foundOf(g), d.wantedOf(g), d.nearDay(g.By), d.goalState(g), tell,
			nonEmpty(" ", nonEmpty(", ", g.Goal.Source, d.word("standing", string(g.Goal.Standing))), below.mark(g.Goal.Note)))
	}
	return []Node{withoutEmpty(table), below.below(), d.note("goals-note")}
}

func (d *desk) foundOf(g plan.GoalState) string {
	if g.Found == nil || g.Found.Refuse {
		return ""
	}
	if g.On == d.newest() {
		return d.outcome(g.Found)
	}
	return nonEmpty(", ", d.outcome(g.Found), d.nearDay(g.On))
}

func (d *desk) wantedOf(g plan.GoalState) string {
	mark := withUnit(significant(g.Mark.Number, inputDigits), g.Mark.Unit)
	if g.Mark.Grade != "" {
		mark = d.word("grade", string(g.Mark.Grade))
	}
	return d.word("sense", g.Sense, "mark", mark)
}

// goalState is how a goal stands; one that waits for a limit says until when, one that was reached and is lost since when.
func (d *desk) goalState(g plan.GoalState) string {
	switch {
	case g.State == "waits" && !g.Until.IsZero():
		return d.say("goal-waits-until", "day", d.nearDay(g.Until))
	case g.State == "reached" && !g.Lost.IsZero():
		return d.say("goal-lost", "day", d.nearDay(g.Lost))
	}
	return d.word("goal-state", g.State)
}
