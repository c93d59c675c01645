package page

import (
	"cmp"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// changes is what is otherwise than before: what this block asks against the block before, and each measure against the test before it that
// was made the same way, with the error of the test.
func (d *desk) changes() Part {
	since := d.sinceTable()
	nodes := []Node{since}
	if since.empty() {
		nodes = []Node{d.note("no-block-before")}
	}
	if s := d.p.Since; s != nil && s.Stage != nil {
		nodes = append(nodes, d.note("stage-since", "before", s.Stage.Title, "now", phaseTitle(d.p.Stage.Set)))
	}
	values := d.measures()
	if values.empty() {
		values = d.note("nothing-measured")
	}
	return d.folded("changes", d.changesLine(), append(nodes, values, d.errorsFrom(), d.note("changes-note"))...)
}

// changesLine counts what is otherwise.
func (d *desk) changesLine() string {
	doses, real := 0, 0
	if d.p.Since != nil {
		doses = len(d.sinceLines())
	}
	for _, c := range d.p.Changes {
		if c.Verdict == plan.RealChange {
			real++
		}
	}
	return d.say("changes-line", "doses", doses, "real", real)
}

// measures are the newest values with their error, and what has become of each since the test before.
func (d *desk) measures() Node {
	table := d.table("measures", d.say("measures-caption", "day", d.w.Day(d.newest())), "id", "found", "before", "change", "verdict", "error", "why")
	f, below := d.p.Found, &notes{}
	if f == nil {
		return table
	}
	changed := map[string]plan.Change{}
	for _, c := range d.p.Changes {
		changed[c.Measure] = c
	}
	for _, name := range f.Order {
		m, c := f.Measures[name], changed[name]
		value, before := "", ""
		if m.OK {
			value = nonEmpty(", ", d.outcome(m.Value), d.notNewest(m.On))
		}
		if c.Before.OK {
			before = d.say("value-on", "value", d.outcome(c.Before.Value), "day", d.nearDay(c.Before.On))
		}
		verdict := ""
		if c.Delta != nil {
			verdict = d.word("verdict", string(c.Verdict))
		}
		table.row("", name, value, before, d.signed(c.Delta), verdict, d.errorOf(m, c.Error), below.mark(d.reason(append([]basis.Said{m.Reason, m.HiddenBy, d.because(c)}, m.Doubts...)...)))
	}
	return Node{Kind: "group", Class: "measured", Nodes: kept([]Node{withoutEmpty(table), below.below()})}
}

// because is why a change is not judged, where the column of errors does not say it.
func (d *desk) because(c plan.Change) basis.Said {
	if c.Because == plan.NoError || c.Because == plan.NoTestBefore {
		return ""
	}
	return c.Because
}

func (d *desk) notNewest(on unit.Day) string {
	if on == d.newest() {
		return ""
	}
	return d.nearDay(on)
}

// errorOf is the error of a value and of a change, with the band of the one score. Where it comes from stands below.
func (d *desk) errorOf(m finding.Measure, e plan.TestError) string {
	switch {
	case !m.OK || m.Unit == "" && m.Grade != "":
		return ""
	case m.SEM == nil && e.Rule == nil:
		return d.say("error-not-known")
	}
	one, change, band := "", "", ""
	if m.SEM != nil {
		one = d.say("error", "sem", withUnit(resultNumber(*m.SEM), m.Unit))
		if e.Rule == nil {
			one = nonEmpty(", ", one, m.SEMSource)
		}
	}
	if e.MDC95 != nil || e.MDC90 != nil {
		change = d.say("error-of-change", "mdc95", cmp.Or(d.outcomeOf(e.MDC95), "–"), "mdc90", cmp.Or(d.outcomeOf(e.MDC90), "–"))
	}
	if b := d.bandOf(e); b != "" {
		band = d.say("error-band", "band", b)
	}
	return nonEmpty("; ", one, change, band)
}

// errorsFrom is where the errors come from, each rule once with all that it is about.
func (d *desk) errorsFrom() Node {
	var order []string
	of := map[string][]string{}
	for _, c := range d.p.Changes {
		rule := d.errorRule(c.Error)
		if rule == "" {
			continue
		}
		if of[rule] == nil {
			order = append(order, rule)
		}
		of[rule] = append(of[rule], c.Measure)
	}
	lines := make([]string, len(order))
	for i, rule := range order {
		lines[i] = d.say("errors-from", "which", strings.Join(of[rule], ", "), "rule", rule)
	}
	return bullets("errors", lines...)
}

// newestSums are the sums of what criteria and newest values were found to be, inputs below, and of the changes.
func (d *desk) newestSums() (lines []string) {
	for _, c := range allCriteria(d.p) {
		lines = append(lines, sums(&d.tests, c.Found)...)
	}
	if f := d.p.Found; f != nil {
		for _, name := range f.Order {
			lines = append(lines, sums(&d.tests, f.Measures[name].Value)...)
		}
	}
	for _, c := range d.p.Changes {
		lines = append(lines, sums(&d.tests, changeSteps(c)...)...)
	}
	return lines
}

// changeSteps are the numbers of a change whose error is known; of another there is only the difference, which anybody sees.
func changeSteps(c plan.Change) []*basis.Step {
	if c.Error.Rule == nil {
		return nil
	}
	return present([]*basis.Step{c.Delta, c.Error.MDC95, c.Error.MDC90, c.Error.Low, c.Error.High})
}

func present(steps []*basis.Step) (kept []*basis.Step) {
	for _, s := range steps {
		if s != nil {
			kept = append(kept, s)
		}
	}
	return kept
}

// signed is a change with its sign: + for more, − for less.
func (d *desk) signed(s *basis.Step) string {
	switch {
	case s == nil:
		return ""
	case s.Value > 0:
		return "+" + d.outcome(s)
	}
	return d.outcome(s)
}

// outcomeOf is a number that may be missing.
func (d *desk) outcomeOf(s *basis.Step) string {
	if s == nil {
		return ""
	}
	return d.outcome(s)
}

// bandOf is the band of one score: a value from it is no better known than that.
func (d *desk) bandOf(e plan.TestError) string {
	if e.Low == nil || e.High == nil {
		return ""
	}
	return d.say("span", "from", d.outcome(e.Low), "to", d.outcome(e.High))
}

func (d *desk) errorRule(e plan.TestError) string {
	if e.Rule == nil {
		return ""
	}
	return nonEmpty("; ", nonEmpty(", ", e.Rule.Source, d.word("standing", string(e.Rule.Standing))), e.Rule.Note)
}
