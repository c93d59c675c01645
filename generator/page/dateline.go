package page

import (
	"slices"
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// datePicture is the line of weeks with the days of the list below it. Each day has its date as a name and a shape for what kind it
// is; what may change, the list says.
func (h handout) datePicture(said []plan.DateLine) Node {
	if len(said) == 0 {
		return Node{}
	}
	line := figure.DateLine{ID: "chart-dates", Across: h.since(), Block: figure.Spell{From: weekOf(h.Plan, h.Block.Starts), To: weekOf(h.Plan, h.ends().AddDays(1))}}
	said = slices.Clone(said)
	slices.SortStableFunc(said, func(a, b plan.DateLine) int { return a.On.Sub(b.On) })
	var last unit.Day
	kinds := map[figure.DateKind]bool{}
	for _, d := range said {
		if d.On != last {
			line.Days = append(line.Days, figure.LineDay{X: weekOf(h.Plan, d.On), Name: h.w.ShortDay(d.On)})
			last = d.On
		}
		day, kind := &line.Days[len(line.Days)-1], shapeOf(d.Kind)
		if !slices.Contains(day.Kinds, kind) {
			day.Kinds = append(day.Kinds, kind)
		}
		kinds[kind] = true
	}
	says := []string{h.w.Say("chart.dates-how")}
	for _, k := range []figure.DateKind{figure.LimitDay, figure.StartDay, figure.VisitDay} {
		if kinds[k] {
			says = append(says, h.w.Say("chart.dates-"+string(k)))
		}
	}
	if line.Broken() {
		says = append(says, h.w.Say("chart.dates-break"))
	}
	return dated(h.w.Say("chart.dates"), h.w.Say("chart.read"), strings.Join(says, " "), line)
}

// shapeOf is the shape of a kind of date.
func shapeOf(kind string) figure.DateKind {
	switch kind {
	case "lifts", "loosens", "tightens":
		return figure.LimitDay
	case "not-before":
		return figure.StartDay
	}
	return figure.VisitDay
}
