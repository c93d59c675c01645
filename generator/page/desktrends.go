package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// trends are lines through the tests towards what is still asked. They stand on this page alone: no date of a client rests on them.
func (d *desk) trends() Part {
	table := d.table("trends", d.say("trends-caption"), "id", "wanted", "tests", "span", "could-be", "why", "used-for")
	lines := d.table("lines", d.say("lines-caption"), "id", "line", "slope", "week-of-mark", "interval", "why")
	var without, done []string
	for _, t := range d.p.Trends {
		mark, why := withUnit(significant(t.Mark.Number, inputDigits), t.Mark.Unit), d.reason(slices.Concat([]basis.Said{t.Refused}, t.Doubts, t.LeftOut)...)
		if t.Straight.Slope == nil {
			without = append(without, d.say("no-line", "measure", t.Measure, "mark", mark, "why", why))
			continue
		}
		table.row("", t.Measure, mark, d.pointsOf(t), d.spanOf(t), d.couldBe(t), why, d.waiting(t))
		for _, f := range fits(t) {
			lines.row("", d.say("line-to", "measure", t.Measure, "mark", mark), d.word("line", f.name), d.outcomeOf(f.Slope), d.outcomeOf(f.Week), d.weeksOf(f.Fit), d.reason(f.Refused))
		}
		done = append(done, sums(&d.tests, trendSteps(t)...)...)
	}
	if len(d.p.Trends) == 0 {
		return Part{}
	}
	return d.part("trends", d.note("trends-note"), table, lines, fold("lines", d.say("trends-none"), bullets("", without...)), fold("sums", d.say("trends-sums"), bullets("sum", done...)))
}

// waiting are the criteria that wait for the mark, each with its own floor in time.
func (d *desk) waiting(t plan.Trend) string {
	all := make([]string, len(t.For))
	for i, w := range t.For {
		if all[i] = w.ID; !w.NotBefore.IsZero() {
			all[i] = d.say("waiting", "id", w.ID, "day", d.w.Day(w.NotBefore))
		}
	}
	return strings.Join(all, "; ")
}

// fit is one line with its name.
type fit struct {
	name string
	plan.Fit
}

func fits(t plan.Trend) []fit {
	return []fit{{"straight", t.Straight}, {"log-time", t.Log}, {"resistant", t.Resistant}}
}

// trendSteps are the numbers of a trend.
func trendSteps(t plan.Trend) (steps []*basis.Step) {
	for _, f := range fits(t) {
		steps = append(steps, f.Week, f.Slope, f.Level, f.Low, f.High)
	}
	return present(steps)
}

// pointsOf are the tests behind a trend.
func (d *desk) pointsOf(t plan.Trend) string {
	all := make([]string, len(t.Points))
	for i, m := range t.Points {
		all[i] = d.say("value-on", "value", d.outcome(m.Value), "day", d.w.Day(m.On))
	}
	return strings.Join(all, ", ")
}

// spanOf is the span in which the straight line comes to the mark; one that ends before every floor in time says so.
func (d *desk) spanOf(t plan.Trend) string {
	switch {
	case t.First.IsZero():
		return ""
	case !t.Last.IsZero() && !t.Last.After(t.NotBefore):
		return d.say("before-floor", "day", d.w.Day(t.NotBefore))
	}
	return d.say("span", "from", d.w.Day(t.First), "to", d.dayOr(t.Last))
}

// couldBe is the later of the straight line and the line of logarithms.
func (d *desk) couldBe(t plan.Trend) string {
	switch {
	case t.First.IsZero():
		return ""
	case !t.CouldBe.IsZero() && !t.CouldBe.After(t.NotBefore):
		return d.say("before-floor", "day", d.w.Day(t.NotBefore))
	}
	return d.dayOr(t.CouldBe)
}

// dayOr is a day, or that it lies too far off to be told.
func (d *desk) dayOr(day unit.Day) string {
	if day.IsZero() {
		return d.say("too-far")
	}
	return d.w.Day(day)
}

func (d *desk) weeksOf(f plan.Fit) string {
	if f.Low == nil || f.High == nil {
		return ""
	}
	return d.say("span", "from", d.outcome(f.Low), "to", d.outcome(f.High))
}
