package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// tick is a diary for paper: one grid a week, a row an exercise, a column a training day. A box to fill is a cell
// without text.
func (h handout) tick() Part {
	w := h.w
	nodes := []Node{paragraph("lead", w.Say("tick.lead"))}
	for _, week := range h.Weeks {
		if grid := h.grid(week); len(grid.Head) > 1 {
			nodes = append(nodes, grid)
		}
	}
	if len(nodes) == 1 {
		return Part{}
	}
	return h.part("tick", w.Say("tick.title"), nodes...)
}

func (h handout) grid(week plan.Week) Node {
	w := h.w
	g := Node{Kind: "grid", Class: "diary", Title: w.Say("tick.week", "week", week.Number, "days", h.runs(week.Starts, week.Ends)),
		Head: []string{w.Say("tick.what")}}
	days := h.trainingDays(week.Number)
	for _, d := range days {
		g.Head = append(g.Head, w.GridDay(d[0].Day))
	}
	if len(days) > 4 {
		g.Class += " wide"
	}
	for _, m := range h.moves() {
		if !m.anyWeek(func(d plan.WeekDose) bool { return d.Week == week.Number }) {
			continue
		}
		g.Rows = append(g.Rows, h.gridRow(m.Exercise.Title, days, func(s plan.SessionDay) bool { return m.in(s.Session) }))
	}
	for _, ask := range []string{"tick.pain-evening", "tick.pain-morning", "tick.swelling"} {
		g.Rows = append(g.Rows, h.gridRow(w.Say(ask), days, func(plan.SessionDay) bool { return true }))
	}
	return g
}

// trainingDays are the sessions of a week, day by day.
func (h handout) trainingDays(week int) (days [][]plan.SessionDay) {
	for _, s := range h.Sessions {
		if s.Week != week {
			continue
		}
		if last := len(days) - 1; last >= 0 && days[last][0].Day == s.Day {
			days[last] = append(days[last], s)
			continue
		}
		days = append(days, []plan.SessionDay{s})
	}
	return days
}

// gridRow has a box under each day that asks for it, a dash under the others.
func (h handout) gridRow(title string, days [][]plan.SessionDay, asks func(plan.SessionDay) bool) []Cell {
	row := []Cell{{Spans: plain(title), Head: true}}
	for _, d := range days {
		cell := Cell{Class: "box"}
		if !slices.ContainsFunc(d, asks) {
			cell = Cell{Spans: plain(h.w.Say("tick.none")), Class: "none"}
		}
		row = append(row, cell)
	}
	return slices.Clip(row)
}
