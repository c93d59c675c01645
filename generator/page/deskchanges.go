package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// changes are what has become of each measure since the test before under the same conditions, against the error of the test; those
// whose error is not known stand in a table of their own.
func (d *desk) changes() Part {
	judged := d.table("changes", d.say("changes-caption"), "id", "before", "found", "change", "mdc95", "mdc90", "verdict", "band", "why", "rule")
	others := d.table("changes", d.say("changes-others"), "id", "before", "found", "change", "why")
	var lines []string
	for _, c := range d.p.Changes {
		before, now := "", d.say("value-on", "value", d.outcome(c.Now.Value), "day", d.w.Day(c.Now.On))
		if c.Before.OK {
			before = d.say("value-on", "value", d.outcome(c.Before.Value), "day", d.w.Day(c.Before.On))
		}
		if c.Error.Rule == nil {
			others.row("", c.Measure, before, now, d.signed(c.Delta), d.reason(c.Because))
			continue
		}
		judged.row("", c.Measure, before, now, d.signed(c.Delta), d.outcomeOf(c.Error.MDC95), d.outcomeOf(c.Error.MDC90), d.word("verdict", string(c.Verdict)),
			d.bandOf(c.Error), d.reason(c.Because), d.errorRule(c.Error))
		lines = append(lines, sums(&d.tests, changeSteps(c)...)...)
	}
	if len(judged.Rows)+len(others.Rows) == 0 {
		return Part{}
	}
	return d.part("changes", judged, others, d.note("changes-note"), fold("sums", d.say("changes-sums"), bullets("sum", lines...)))
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
