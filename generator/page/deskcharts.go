package page

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/figure"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// charts are strength, symmetry and range over time, drawn: the tables of both legs, made to be seen at once. Symmetry, marks and the
// weeks in which a line comes to one stand on this page alone.
func (d *desk) charts() []Node {
	var all []Node
	for _, test := range eachOnce(d.p.Found.Strength, func(t finding.StrengthTest) string { return t.Test }) {
		all = append(all, d.strengthChart(test), d.symmetryChart(test))
	}
	wall := func(charts ...Node) Node { return Node{Kind: "group", Class: "chart-wall", Nodes: kept(charts)} }
	ends := fold("sums", d.say("charts-range"), wall(
		d.angleChart("flexion", "chart-bend", 1, func(a finding.KneeAngles) finding.Measure { return read("", a.Flexion) }),
		d.angleChart("extension", "chart-straight", -1, straightUp)))
	if all = kept(all); len(all) == 0 && ends.empty() {
		return nil
	}
	return []Node{wall(all...), ends, d.note("charts-note")}
}

// straightUp is the straight end with its sign turned: 0 is straight, below it lacks, so that more is better and higher.
func straightUp(a finding.KneeAngles) finding.Measure {
	m := read("", a.Straight)
	m.Number = 0 - m.Number
	return m
}

func (d *desk) bothSides() [2]unit.Side { return [2]unit.Side(d.sides()) }

func (d *desk) legNames() (names [2]string) {
	for i, side := range d.bothSides() {
		names[i] = d.word("side", string(side))
	}
	return names
}

func (d *desk) across() string { return d.say("chart-across") }

func (d *desk) strengthChart(test string) Node {
	c := strengthCourse(d.p, test, d.bothSides(), true)
	drawn := figure.Chart{ID: "chart-" + test, FromZero: true}
	if c.unit == unit.NmPerKg(0).Unit() {
		drawn.Marks = d.marks(test+".nm-per-kg", 1)
	}
	return d.courseChart(c, drawn, d.say("chart-strength", "test", test))
}

// angleChart is an end of the range; sense is -1 where its sign is turned.
func (d *desk) angleChart(measure, title string, sense float64, of func(finding.KneeAngles) finding.Measure) Node {
	drawn := figure.Chart{ID: "chart-" + measure, Unit: d.say("chart-degrees"), Marks: d.marks(measure, sense)}
	return d.courseChart(angleCourse(d.p, measure, d.bothSides(), of), drawn, d.say(title))
}

// courseChart is a course of both legs, with what there is to be said of it.
func (d *desk) courseChart(c course, drawn figure.Chart, title string) Node {
	if c.known() == 0 {
		return Node{}
	}
	names := d.legNames()
	drawn.Unit, drawn.Across, drawn.Lines = cmp.Or(drawn.Unit, c.unit), d.across(), c.lines(names)
	says := []string{d.say("chart-dots", "full", d.leg(d.bothSides()[0]), "open", d.leg(d.bothSides()[1]))}
	if c.banded() {
		says = append(says, d.say("chart-band"))
	} else {
		says = append(says, d.say("chart-no-band"))
	}
	says = append(says, d.special(c)...)
	return d.charted(title, strings.Join(says, " "), drawn, d.courseTable(title, c, [2]string{d.leg(d.bothSides()[0]), d.leg(d.bothSides()[1])}))
}

// special is what a reader of the chart should know of its days.
func (d *desk) special(c course) (says []string) {
	if c.known() == 1 {
		says = append(says, d.say("chart-one"))
	}
	if c.anew() {
		says = append(says, d.say("chart-anew"))
	}
	return says
}

func (d *desk) charted(title, says string, drawn figure.Chart, table Node) Node {
	return Node{Kind: "group", Class: "chart-group", Nodes: []Node{charted(title, title+".", says, drawn), fold("sums", d.say("chart-numbers"), table)}}
}

// courseTable is what is drawn, in numbers.
func (d *desk) courseTable(title string, c course, names [2]string) Node {
	table := d.table("chart-numbers", title, "on")
	table.Head = append(table.Head, names[0], names[1])
	for _, day := range c.days {
		row := []string{d.w.Day(day.on)}
		if day.anew {
			row[0] = d.say("chart-day-anew", "day", row[0])
		}
		for _, v := range day.legs {
			row = append(row, d.valueText(v, c.unit))
		}
		table.row("", row...)
	}
	return table
}

func (d *desk) valueText(v value, symbol string) string {
	switch {
	case !v.ok:
		return ""
	case v.low == nil || v.high == nil:
		return withUnit(resultNumber(v.v), symbol)
	}
	return d.say("chart-value", "value", withUnit(resultNumber(v.v), symbol), "low", resultNumber(*v.low), "high", resultNumber(*v.high))
}

// symmetryChart is symmetry, the ratio to the other leg before the event beside it, the marks of criteria, and the weeks in which
// the straight line comes to the lowest of them.
func (d *desk) symmetryChart(test string) Node {
	c := d.symmetries(test)
	if c.known() == 0 {
		return Node{}
	}
	title := d.say("chart-symmetry", "test", test)
	names := [2]string{d.say("chart-lsi"), d.say("chart-preop")}
	drawn := figure.Chart{ID: "chart-" + test + "-symmetry", Unit: c.unit, Across: d.across(), Lines: c.lines(names)}
	own, other := d.leg(d.bothSides()[0]), d.leg(d.bothSides()[1])
	says := []string{d.say("chart-ratio", "own", own, "other", other)}
	if len(drawn.Lines[1].Spots) > 0 {
		says = append(says, d.say("chart-ratio-preop", "other", other))
	}
	drawn.Marks = d.marks(test+".lsi", 1)
	if t := d.nextTrend(test); t != nil {
		drawn.Weeks = &figure.Spell{From: weekOf(d.p, t.First), To: weekOf(d.p, t.Last), Open: t.Last.IsZero()}
		if t.Last.IsZero() {
			drawn.Weeks.To = drawn.Weeks.From
		}
		says = append(says, d.say("chart-weeks", "mark", resultNumber(t.Mark.Number), "from", d.w.Day(t.First), "to", d.dayOr(t.Last)))
	}
	return d.charted(title, strings.Join(append(says, d.special(c)...), " "), drawn, d.courseTable(title, c, names))
}

// symmetries are symmetry and pre-operative ratio in the places of the two legs.
func (d *desk) symmetries(test string) (c course) {
	var before *finding.StrengthTest
	for i := range d.p.Found.Strength {
		t := &d.p.Found.Strength[i]
		if t.Test != test {
			continue
		}
		day := courseDay{on: t.On, week: weekOf(d.p, t.On), anew: before != nil && before.Alike.Apart(t.Alike) != ""}
		for k, m := range []finding.Measure{read(test+".lsi", t.LSI), read(test+".preop-ratio", t.Preop)} {
			if m.OK {
				m.Alike = t.Alike
				c.unit, day.legs[k] = m.Unit, bandedValue(d.p, m)
			}
		}
		before = t
		c.days = append(c.days, day)
	}
	return c
}

// marks are what criteria ask of a measure, the lowest first, each once.
func (d *desk) marks(measure string, sense float64) (all []figure.Level) {
	for _, c := range allCriteria(d.p) {
		at := float64(sense * c.Wanted.Number)
		known := slices.ContainsFunc(all, func(l figure.Level) bool { return l.At == at })
		if c.Measure == measure && c.Wanted.Grade == "" && !known {
			all = append(all, figure.Level{At: at + 0, Name: d.say("chart-mark", "mark", resultNumber(at))})
		}
	}
	slices.SortFunc(all, func(a, b figure.Level) int { return cmp.Compare(a.At, b.At) })
	return all
}

// nextTrend is the trend to the lowest mark that has a span; a line that has come to its mark already has none.
func (d *desk) nextTrend(test string) (next *plan.Trend) {
	for i := range d.p.Trends {
		t := &d.p.Trends[i]
		if t.Measure == test+".lsi" && !t.First.IsZero() && (t.Last.IsZero() || t.Last.After(t.NotBefore)) && (next == nil || t.Mark.Number < next.Mark.Number) {
			next = t
		}
	}
	return next
}
