package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// tick is a diary for paper: one grid for the block, a row a training day, a column an exercise by its number. A box to fill is a
// cell without text.
func (h handout) tick() Part {
	grid := h.grid()
	if len(grid.Rows) == 0 {
		return Part{}
	}
	key := Node{Kind: "list", Class: "key", Ordered: true}
	for _, m := range h.moves() {
		key.Items = append(key.Items, plain(m.Exercise.Title))
	}
	return h.part("tick", h.w.Say("tick.title"), paragraph("lead", h.w.Say("tick.lead")), key, grid)
}

func (h handout) grid() Node {
	w := h.w
	g := Node{Kind: "grid", Class: "diary", Head: []string{w.Say("tick.day")}}
	moves := h.moves()
	for i := range moves {
		g.Head = append(g.Head, w.Number(float64(i+1), 0))
	}
	g.Head = append(g.Head, w.Say("tick.pain-evening"), w.Say("tick.pain-morning"), w.Say("tick.swelling"))
	for _, week := range h.Weeks {
		for i, sessions := range h.trainingDays(week.Number) {
			day := []Span{{Text: w.DayMonth(sessions[0].Day)}}
			if i == 0 {
				day = append([]Span{strong(w.Say("tick.week", "week", week.Number)), {Text: " "}}, day...)
			}
			g.Rows = append(g.Rows, h.gridRow(day, h.diaryDay(week.Number, sessions, moves).Do, len(moves), i == 0))
		}
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

// boxesOfKnee are the columns that every day asks for: pain in the evening, pain next morning, swelling.
const boxesOfKnee = 3

// gridRow has a box below each exercise that the day asks for, a dash below the others, and the boxes of the knee. The first day
// of a week says so in its class.
func (h handout) gridRow(day []Span, asked []int, moves int, first bool) []Cell {
	class := ""
	if first {
		class = "week-starts"
	}
	row := []Cell{{Spans: day, Head: true, Class: class}}
	for i := range moves + boxesOfKnee {
		cell := Cell{Class: "box"}
		if i < moves && !slices.Contains(asked, i) {
			cell = Cell{Spans: plain(h.w.Say("tick.none")), Class: "none"}
		}
		row = append(row, cell)
	}
	return row
}
