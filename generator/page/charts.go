package page

import (
	"slices"
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// progress is how the client is doing, frozen with the block: how strong each leg was, and the weights of the block. No ratio, no
// score and nothing of what is to come but the plan itself.
func (h handout) progress() Part {
	strong := h.strongChart()
	weights := h.weightChart()
	if strong.empty() && weights.empty() {
		return Part{}
	}
	return h.part("progress", h.w.Say("chart.title"), paragraph("lead", h.w.Say("chart.as-of", "day", h.w.Day(h.AsOf))), strong, weights)
}

// bothSides are the two legs, the event's own first.
func (h handout) bothSides() [2]unit.Side {
	if h.side() == unit.Right {
		return [2]unit.Side{unit.Right, unit.Left}
	}
	return [2]unit.Side{unit.Left, unit.Right}
}

// strongChart is the course of the strength of both legs, of the front of the thigh before any other; one sentence where nobody tested.
func (h handout) strongChart() Node {
	test := h.chartedTest()
	if test == "" {
		return paragraph("", h.w.Say("chart.none"))
	}
	c := strengthCourse(h.Plan, test, h.bothSides(), false)
	if c.known() == 0 {
		return paragraph("", h.w.Say("chart.none"))
	}
	title := h.w.Say("chart.strength")
	if key := "chart." + test; h.w.Has(key) {
		title = h.w.Say(key)
	}
	drawn := figure.Chart{ID: "chart-strength", Unit: c.unit, Across: h.since(), FromZero: true, Lines: c.lines(h.legEnds())}
	return group("chart-group", title, 3, charted(title, h.w.Say("chart.read"), h.howToRead(c), drawn), h.strongTable(c))
}

// chartedTest is the test that the client sees.
func (h handout) chartedTest() string {
	if h.Found == nil {
		return ""
	}
	var all []string
	for _, t := range slices.Backward(h.Found.Strength) {
		all = append(all, t.Test)
	}
	if i := slices.Index(all, "knee-extension"); i >= 0 {
		return all[i]
	}
	if len(all) > 0 {
		return all[0]
	}
	return ""
}

// since names the axis of weeks.
func (h handout) since() string {
	switch {
	case h.operated():
		return h.w.Say("chart.since-operation")
	case h.injured():
		return h.w.Say("chart.since-injury")
	}
	return h.w.Say("chart.since-start")
}

func (h handout) legEnds() (names [2]string) {
	for i, side := range h.bothSides() {
		names[i] = h.w.Say("chart.leg-" + string(side))
	}
	return names
}

// howToRead is one line for the eye, and what is special in this chart.
func (h handout) howToRead(c course) string {
	w := h.w
	says := []string{w.Say("chart.how")} // the lines end in the names of their legs
	for _, s := range []struct {
		key  string
		said bool
	}{{"chart.one", c.known() == 1}, {"chart.early", c.early()}, {"chart.gap", c.gaps()}, {"chart.anew", c.anew()}, {"chart.band", c.banded()}} {
		if s.said {
			says = append(says, w.Say(s.key))
		}
	}
	return strings.Join(says, " ")
}

// strongTable is the chart in numbers, cut down to whole ones.
func (h handout) strongTable(c course) Node {
	sides := h.bothSides()
	table := Node{Kind: "table", Class: "chart-numbers", Title: h.w.Say("chart.in-unit", "unit", c.unit),
		Head: []string{h.w.Say("chart.day"), h.w.Say("leg." + string(sides[0])), h.w.Say("leg." + string(sides[1]))}}
	for _, d := range c.days {
		day := h.w.Day(d.on)
		if d.anew {
			day = h.w.Say("chart.day-anew", "day", day)
		}
		row := []string{day}
		for _, v := range d.legs {
			text := h.w.Say("chart.not-tested")
			if v.ok {
				text = h.w.Number(float64(unit.CutTo(unit.Count(v.v), 1)), 0)
			}
			row = append(row, text)
		}
		table.row("", row...)
	}
	return fold("numbers", h.w.Say("chart.numbers"), table)
}

// weightChart is the plan of the block for the first exercise that has weights in two weeks or more: what is due in the first, and
// up to where it may go.
func (h handout) weightChart() Node {
	if h.pausedThroughout() {
		return Node{} // nothing may go up
	}
	for _, m := range h.moves() {
		legs := slices.DeleteFunc(slices.Clone(m.Legs), func(p plan.Prescription) bool { return len(h.weights(p)) < 2 })
		if len(legs) == 0 || len(legs) > 2 || h.turn(legs[0]) > 0 {
			continue
		}
		title := h.w.Say("chart.weights", "exercise", m.Exercise.Title)
		drawn := figure.Chart{ID: "chart-weights", Unit: h.weightUnit(legs[0]), Across: h.w.Say("chart.of-block"), FromZero: true}
		says := []string{h.w.Say("chart.due")}
		if slices.ContainsFunc(legs, func(p plan.Prescription) bool { return len(h.weights(p)) < len(h.Weeks) }) {
			says = append(says, h.w.Say("chart.no-dot"))
		}
		for i, p := range legs {
			drawn.Lines = append(drawn.Lines, figure.Course{Name: h.w.Say("chart.leg-" + string(p.Side)), Other: i > 0, Spots: h.weights(p)})
		}
		return group("chart-group", title, 3, charted(title, h.w.Say("chart.read"), strings.Join(says, " "), drawn), h.weightTable(legs))
	}
	return Node{}
}

// weights are the loads of a leg as they stand in its box: on each side of a bar, in the unit of the device.
func (h handout) weights(p plan.Prescription) (spots []figure.Spot) {
	last := 0
	for _, d := range p.Weeks {
		kg, ok := d.Plates.Value()
		if !ok || d.FindYourWeight || kg == 0 {
			continue
		}
		if len(d.PerSide) > 0 {
			kg = total(d.PerSide)
		}
		if marked(p.Device) {
			kg /= unit.KilogramsPerPound
		}
		spots = append(spots, figure.Spot{X: float64(d.Week), Y: float64(kg), Breaks: d.Week != last+1, Ceiling: !d.Due})
		last = d.Week
	}
	return spots
}

func (h handout) weightUnit(p plan.Prescription) string {
	symbol := h.w.Say("chart.kg")
	if marked(p.Device) {
		symbol = h.w.Say("chart.lb")
	}
	if slices.ContainsFunc(p.Weeks, func(d plan.WeekDose) bool { return len(d.PerSide) > 0 }) {
		return h.w.Say("load.each-side", "load", symbol)
	}
	return symbol
}

// weightTable is the same in the words of the boxes.
func (h handout) weightTable(legs []plan.Prescription) Node {
	table := Node{Kind: "table", Class: "chart-numbers", Title: h.w.Say("chart.weights-table"), Head: []string{h.w.Say("chart.week")}}
	for _, p := range legs {
		table.Head = append(table.Head, h.w.Say("leg."+string(p.Side)))
	}
	for _, week := range h.Weeks {
		row := []string{h.w.Number(float64(week.Number), 0)}
		for _, p := range legs {
			d, _ := doseOf(p, week.Number)
			text := h.loadOf(p, d)
			switch {
			case d.FindYourWeight:
				text = h.w.Say("load.find")
			case text == "":
				text = h.w.Say("chart.no-weight")
			case !d.Due:
				text = h.w.Say("later.up-to", "what", text)
			}
			row = append(row, strings.TrimSuffix(text, "."))
		}
		table.row("", row...)
	}
	return fold("numbers", h.w.Say("chart.numbers"), table)
}
