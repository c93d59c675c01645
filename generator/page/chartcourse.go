package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/figure"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What a chart shows of tests, and the table of the same: both pages make their charts of it.

// course is a quantity of both legs from test to test, oldest first.
type course struct {
	unit string
	days []courseDay
}

// courseDay is one test. Anew: it was made in another way than the one before, and no line joins them.
type courseDay struct {
	on   unit.Day
	week float64
	legs [2]value // the event's own first
	anew bool
}

// value is what one leg gave; ok is false where there is nothing.
type value struct {
	v         float64
	low, high *float64
	ok        bool
}

// weekOf is where a day stands on the axis: weeks since the event with their fraction, before it negative.
func weekOf(p *plan.Plan, on unit.Day) float64 {
	if p.Event == nil {
		return float64(on.Sub(p.Block.Starts)) / 7
	}
	return float64(on.Sub(p.Event.Date)) / 7
}

// strengthCourse is the course of a test of force. Which quantity it is, the newest test with a value says.
func strengthCourse(p *plan.Plan, test string, sides [2]unit.Side, perKg bool) (c course) {
	var before *finding.StrengthTest
	var all []finding.StrengthTest
	for _, t := range p.Found.Strength {
		if t.Test == test {
			all = append(all, t)
		}
	}
	read := quantityOf(all, sides, perKg)
	for i := range all {
		t := &all[i]
		day := courseDay{on: t.On, week: weekOf(p, t.On), anew: before != nil && before.Alike.Apart(t.Alike) != ""}
		for k, side := range sides {
			m := read(t.OfSide(side))
			if !m.OK {
				continue
			}
			m.Name, m.On, m.Alike = test+m.Name, t.On, t.Alike
			c.unit, day.legs[k] = m.Unit, bandedValue(p, m)
		}
		before = t
		c.days = append(c.days, day)
	}
	return c
}

// quantityOf reads of a leg what the newest test with any value gives: strength per kilogram where it is asked for, else torque, else
// force. Another quantity has another axis, so an older test that lacks it has no dot.
func quantityOf(all []finding.StrengthTest, sides [2]unit.Side, perKg bool) func(finding.Leg) finding.Measure {
	kinds := []func(finding.Leg) finding.Measure{
		func(l finding.Leg) finding.Measure { return read(".nm-per-kg", l.PerKg) },
		func(l finding.Leg) finding.Measure { return read(".torque", l.Torque) },
		func(l finding.Leg) finding.Measure { return read(".force", l.Force) },
	}
	if !perKg {
		kinds = kinds[1:]
	}
	for i := len(all) - 1; i >= 0; i-- {
		for _, kind := range kinds {
			for _, side := range sides {
				if kind(all[i].OfSide(side)).OK {
					return kind
				}
			}
		}
	}
	return kinds[0]
}

// angleCourse is the course of an end of the range of both knees.
func angleCourse(p *plan.Plan, measure string, sides [2]unit.Side, of func(finding.KneeAngles) finding.Measure) (c course) {
	tool := ""
	for _, k := range p.Found.Knees {
		day := courseDay{on: k.On, week: weekOf(p, k.On)}
		found := false
		for i, side := range sides {
			m := of(legOf(side, k.Left, k.Right))
			if !m.OK {
				continue
			}
			found = true
			m.Name, m.On, m.Alike = measure, k.On, finding.Alike{Tool: k.AngleBy}
			c.unit, day.legs[i] = m.Unit, bandedValue(p, m)
		}
		if !found {
			continue // a look without a goniometer is no missing test of range
		}
		day.anew = len(c.days) > 0 && tool != k.AngleBy
		tool = k.AngleBy
		c.days = append(c.days, day)
	}
	return c
}

// bandedValue is a value with its error band, where the program knows one.
func bandedValue(p *plan.Plan, m finding.Measure) value {
	v := value{v: m.Number, ok: true}
	if e := p.ErrorOf(m); e.Low != nil && e.High != nil {
		v.low, v.high = &e.Low.Value, &e.High.Value
	}
	return v
}

// lines are the lines of a chart; names stand at their ends.
func (c course) lines(names [2]string) []figure.Course {
	lines := []figure.Course{{Name: names[0]}, {Name: names[1], Other: true}}
	for k := range lines {
		breaks := false
		for i, d := range c.days {
			breaks = breaks || d.anew || i > 0 && c.days[i-1].week < 0 && d.week >= 0 // no line runs across the event
			if v := d.legs[k]; v.ok {
				lines[k].Spots = append(lines[k].Spots, figure.Spot{X: d.week, Y: v.v, Low: v.low, High: v.high, Breaks: breaks})
			}
			breaks = !d.legs[k].ok
		}
	}
	return lines
}

// known counts the days with any value.
func (c course) known() (n int) {
	for _, d := range c.days {
		if d.legs[0].ok || d.legs[1].ok {
			n++
		}
	}
	return n
}

// gaps reports whether a leg lacks a value on a day, anew whether a test was made in another way, banded whether a band is drawn.
func (c course) gaps() (gap bool) {
	for _, d := range c.days {
		gap = gap || !d.legs[0].ok || !d.legs[1].ok
	}
	return gap
}

func (c course) anew() (anew bool) {
	for _, d := range c.days {
		anew = anew || d.anew
	}
	return anew
}

func (c course) banded() (banded bool) {
	for _, d := range c.days {
		banded = banded || d.legs[0].low != nil || d.legs[1].low != nil
	}
	return banded
}

// early reports whether a test lies before the event.
func (c course) early() bool { return len(c.days) > 0 && c.days[0].week < 0 }

// read is a number as a measure; name is the end of its name.
func read[Q unit.Quantity](name string, n basis.Num[Q]) finding.Measure {
	v, ok := n.Value()
	return finding.Measure{Name: name, Value: n.Step(), Number: float64(v), Unit: v.Unit(), OK: ok}
}
