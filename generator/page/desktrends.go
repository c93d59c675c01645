package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// trends are lines through the tests towards what is still asked. They stand on this page alone: no date of a client rests on them.
func (d *desk) trends() []Node {
	if len(d.p.Trends) == 0 {
		return nil
	}
	table := d.table("trends", d.say("trends-caption"), "id", "wanted", "tests", "span", "could-be", "why", "used-for")
	var without []string
	for _, t := range d.p.Trends {
		mark, why := withUnit(significant(t.Mark.Number, inputDigits), t.Mark.Unit), d.reason(slices.Concat([]basis.Said{t.Refused}, t.Doubts, t.LeftOut)...)
		if t.Straight.Slope == nil {
			without = append(without, d.say("no-line", "measure", t.Measure, "mark", mark, "why", why))
			continue
		}
		table.row("", t.Measure, mark, d.pointsOf(t), d.spanOf(t), d.couldBe(t), why, d.waiting(t))
	}
	return []Node{table, d.note("trends-note"), fold("sums", d.say("trends-none"), bullets("", without...))}
}

// lined is how many marks have a line.
func (d *desk) lined() (n int) {
	for _, t := range d.p.Trends {
		if t.Straight.Slope != nil {
			n++
		}
	}
	return n
}

// lines are the lines behind the trends, and their sums.
func (d *desk) lines() Node {
	lines := d.table("lines", d.say("lines-caption"), "id", "line", "slope", "week-of-mark", "interval", "why")
	var done []string
	for _, t := range d.p.Trends {
		if t.Straight.Slope == nil {
			continue
		}
		mark := withUnit(significant(t.Mark.Number, inputDigits), t.Mark.Unit)
		for _, f := range fits(t) {
			lines.row("", d.say("line-to", "measure", t.Measure, "mark", mark), d.word("line", f.name), d.outcomeOf(f.Slope), d.outcomeOf(f.Week), d.intervalOf(f.Fit), d.reason(f.Refused))
		}
		done = append(done, sums(&d.tests, trendSteps(t)...)...)
	}
	return group("sums", d.say("trends-sums"), 3, lines, bullets("sum", done...))
}

// waiting are the stages and activities that wait for the mark.
func (d *desk) waiting(t plan.Trend) string {
	var all []string
	for _, w := range t.For {
		of, _, _ := strings.Cut(w.ID, ".")
		if !slices.Contains(all, of) {
			all = append(all, of)
		}
	}
	return strings.Join(all, ", ")
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
		all[i] = d.say("value-on", "value", d.outcome(m.Value), "day", d.nearDay(m.On))
	}
	return strings.Join(all, ", ")
}

// spanOf is the span in which the straight line comes to the mark; one that ends before every floor in time says so.
func (d *desk) spanOf(t plan.Trend) string {
	switch {
	case t.First.IsZero():
		return ""
	case !t.Last.IsZero() && !t.Last.After(t.NotBefore):
		return d.say("before-floor", "day", d.nearDay(t.NotBefore))
	}
	return d.say("span", "from", d.nearDay(t.First), "to", d.dayOr(t.Last))
}

// couldBe is the later of the straight line and the line of logarithms.
func (d *desk) couldBe(t plan.Trend) string {
	switch {
	case t.First.IsZero():
		return ""
	case !t.CouldBe.IsZero() && !t.CouldBe.After(t.NotBefore):
		return d.say("before-floor", "day", d.nearDay(t.NotBefore))
	}
	return d.dayOr(t.CouldBe)
}

// dayOr is a day, or that it lies too far off to be told.
func (d *desk) dayOr(day unit.Day) string {
	if day.IsZero() {
		return d.say("too-far")
	}
	return d.nearDay(day)
}

func (d *desk) intervalOf(f plan.Fit) string {
	if f.Low == nil || f.High == nil {
		return ""
	}
	return d.say("span", "from", d.outcome(f.Low), "to", d.outcome(f.High))
}
