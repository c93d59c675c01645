package plan

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// byWeeks is the week of a test with its fraction: a line does not jump from week to week.
var byWeeks = basis.Rule{Name: "weeks since the event", Sum: "$1 ÷ 7", Source: "days since the event"}

// pointsOf are tests as points of a line, and the steps of their weeks and values in turn.
func pointsOf(list []finding.Measure, event *Event) (points []formula.Point[unit.Count], steps []*basis.Step) {
	for _, m := range list {
		days := float64(m.On.Sub(event.Date))
		since := stepped("days."+m.On.String(), byCalendar, days, "d")
		week := stepped("weeks."+m.On.String(), byWeeks, days/daysInWeek, "", since)
		points = append(points, formula.Point[unit.Count]{Week: unit.Weeks(week.Value), Value: unit.Count(m.Number)})
		steps = append(steps, week, m.Value)
	}
	return points, steps
}

// fitOf is a line with its sums.
func fitOf(id string, l formula.Line[unit.Count], wrong error, mark unit.Count, bySlope, byLevel basis.Rule, wanted *basis.Step, steps []*basis.Step) (f Fit) {
	if wrong != nil {
		f.Refused = basis.SaidBy(wrong)
		return f
	}
	f.Slope, f.Level = stepped(id+".slope", bySlope, float64(l.Slope), wanted.Unit, steps...), stepped(id+".level", byLevel, float64(l.Intercept), wanted.Unit, steps...)
	week, err := l.Crosses(mark)
	if err != nil {
		f.Refused = basis.SaidBy(err)
		return f
	}
	f.Week = stepped(id+".week", l.CrossingRule(), float64(week), unit.Weeks(0).Unit(), f.Level, f.Slope, wanted)
	span, err := l.CrossingInterval(mark, projected)
	if err != nil {
		f.Refused = basis.SaidBy(err)
		return f
	}
	f.Low, f.High = stepped(id+".first-week", byFieller, float64(span.Low), unit.Weeks(0).Unit(), f.Level, f.Slope, wanted), stepped(id+".last-week", byFieller, float64(span.High), unit.Weeks(0).Unit(), f.Level, f.Slope, wanted)
	return f
}

// governed is the history of what a criterion compares: for a symmetry the lower of it and the pre-operative ratio of that day
// (rules 13).
func governed(found *finding.Findings, name string) []finding.Measure {
	test, isSymmetry := strings.CutSuffix(name, ".lsi")
	if !isSymmetry {
		return found.History[name]
	}
	var all []finding.Measure
	for i, m := range found.History[name] {
		for _, preop := range found.History[test+".preop-ratio"] {
			if preop.On == m.On {
				id := test + "." + m.On.String() + ".governing"
				if i == len(found.History[name])-1 {
					id = test + ".governing"
				}
				m.Value = &basis.Step{ID: id, By: ByLower, From: []*basis.Step{m.Value, preop.Value}, Value: min(m.Number, preop.Number), Unit: m.Unit, On: m.On}
				m.Number = m.Value.Value
			}
		}
		all = append(all, m)
	}
	return all
}
