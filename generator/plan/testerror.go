package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// TestError is what is known of the error of one value. A step that is nil is not known, and never zero.
type TestError struct {
	Rule         *program.Error
	SEM          *basis.Step // standard error of measurement, in the unit of the value
	MDC90, MDC95 *basis.Step // a change above it is more than the error of the test
	Low, High    *basis.Step // the band of this one score
}

var (
	byReadError  = basis.Rule{Name: "error of the test, as printed"}
	byOfValue    = basis.Rule{Name: "standard error as a share of the value", Sum: "$1 × $2 ÷ 100", Source: "SEM in percent"}
	byLowerEnd   = basis.Rule{Name: "low end of the printed band", Sum: "$1 − $2", Source: "band of one score, as printed"}
	byHigherEnd  = basis.Rule{Name: "high end of the printed band", Sum: "$1 + $2", Source: "band of one score, as printed"}
	byDifference = basis.Rule{Name: "change since the test before", Sum: "$2 − $1", Source: "difference"}
)

// made is how a value was made, as far as its error depends on it.
func made(m finding.Measure) program.Made {
	return program.Made{Measure: m.Name, GaugeKind: m.Alike.Kind, AngleBy: m.Alike.Tool, Trial: m.Alike.Score}
}

// errorOf is what the program's errors.toml knows of the error of a value.
func errorOf(all program.Errors, m finding.Measure) (e TestError) {
	rule := all.For(made(m))
	if rule == nil || !m.OK || m.Grade != "" {
		return TestError{}
	}
	id := "error." + m.Name
	e.SEM = semOf(id, rule, m)
	e.MDC90, e.MDC95 = printed(id+".mdc90", rule, rule.MDC90, m), printed(id+".mdc95", rule, rule.MDC95, m)
	if e.SEM == nil {
		if half := printed(id+".band", rule, rule.Band, m); half != nil {
			e.Low, e.High = stepped(m.Name+".low", byLowerEnd, m.Number-half.Value, m.Unit, m.Value, half), stepped(m.Name+".high", byHigherEnd, m.Number+half.Value, m.Unit, m.Value, half)
		}
	} else {
		e.widths(id, m)
	}
	if e == (TestError{}) {
		return e // the file speaks of another unit
	}
	e.Rule = rule
	return e
}

// widths are what follows from the standard error.
func (e *TestError) widths(id string, m finding.Measure) {
	sem := unit.Count(e.SEM.Value)
	if e.MDC90 == nil {
		e.MDC90 = tried(id+".mdc90", formula.ByMDC90, m.Unit, e.SEM)(formula.MDC90(sem))
	}
	if e.MDC95 == nil {
		e.MDC95 = tried(id+".mdc95", formula.ByMDC95, m.Unit, e.SEM)(formula.MDC95(sem))
	}
	score := unit.Count(m.Number)
	e.Low = tried(m.Name+".low", formula.ByBandLow, m.Unit, m.Value, e.SEM)(formula.BandLow(score, sem))
	e.High = tried(m.Name+".high", formula.ByBandHigh, m.Unit, m.Value, e.SEM)(formula.BandHigh(score, sem))
}

// semOf is the standard error in the unit of the value; one in percent of a value that is no percentage is a share of it.
func semOf(id string, rule *program.Error, m finding.Measure) *basis.Step {
	const percent = "%"
	if rule.SEM == nil || rule.SEM.Unit == m.Unit || rule.SEM.Unit != percent {
		return printed(id+".sem", rule, rule.SEM, m)
	}
	share := *read(id+".sem-share", rule, rule.SEM)
	return stepped(id+".sem", byOfValue, float64(m.Number*share.Value)/100, m.Unit, m.Value, &share)
}

// printed is a figure of the file; nil where there is none, or where it is of another unit than the value.
func printed(id string, rule *program.Error, mark *program.Mark, m finding.Measure) *basis.Step {
	if mark == nil || mark.Unit != m.Unit || mark.Number <= 0 {
		return nil
	}
	return read(id, rule, mark)
}

func read(id string, rule *program.Error, mark *program.Mark) *basis.Step {
	by := byReadError
	by.Source = basis.Said(rule.Source)
	return &basis.Step{ID: id, By: by, Value: mark.Number, Unit: mark.Unit, Reason: basis.Said(rule.Standing)}
}

// stepped is a number of any unit with its sum: errors, changes and trends are of whatever their measure is of.
func stepped(id string, by basis.Rule, value float64, unit string, from ...*basis.Step) *basis.Step {
	return &basis.Step{ID: id, By: by, Value: value, Unit: unit, From: from}
}

// tried is stepped around a function that may refuse; nil where it does.
func tried(id string, by basis.Rule, symbol string, from ...*basis.Step) func(unit.Count, error) *basis.Step {
	return func(v unit.Count, err error) *basis.Step {
		if err != nil {
			return nil
		}
		return stepped(id, by, float64(v), symbol, from...)
	}
}
