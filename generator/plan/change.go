package plan

import (
	"math"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
)

// Verdict says whether a change is more than the error of its test.
type Verdict string

const (
	RealChange  Verdict = "real change"
	WithinError Verdict = "within error"
	NotKnown    Verdict = "not known"
)

// NoError is why a change is not judged: nobody has published the error of such a test, or we have not read it.
const NoError = "no error of this test is known"

// NoTestBefore is why nothing can be compared.
const NoTestBefore = "no test before it"

// Change is what has become of a measure since the test before under the same conditions. It opens and closes nothing.
type Change struct {
	Measure string
	Before  finding.Measure // not OK where there is none to compare with
	Now     finding.Measure
	Delta   *basis.Step // nil where nothing can be compared
	Error   TestError
	Verdict Verdict
	Because basis.Said // why not known, or which tests between were passed over
}

// changes holds every measure against its test before.
func changes(found *finding.Findings, errors program.Errors) (all []Change) {
	for _, name := range found.Order {
		if m := found.Measures[name]; m.OK && m.Grade == "" {
			all = append(all, changeOf(m, found.History[name], errors))
		}
	}
	return all
}

func changeOf(now finding.Measure, history []finding.Measure, errors program.Errors) Change {
	c := Change{Measure: now.Name, Now: now, Error: errorOf(errors, now), Verdict: NotKnown}
	for i := len(history) - 1; i >= 0 && !c.Before.OK; i-- {
		before := history[i]
		if !before.On.Before(now.On) {
			continue
		}
		if apart := before.Alike.Apart(now.Alike); apart == "" {
			c.Before = before
		} else if c.Because == "" {
			c.Because = basis.Say("not compared with {a}: {b}", before.On, apart)
		}
	}
	if !c.Before.OK {
		if c.Because == "" {
			c.Because = NoTestBefore
		}
		return c
	}
	id := now.Name + ".change"
	c.Delta = stepped(id, byDifference, now.Number-c.Before.Number, now.Unit, c.Before.Value, now.Value)
	c.judge()
	return c
}

// judge says whether the change is more than the error. A doubtful test has no error that anybody knows.
func (c *Change) judge() {
	size := math.Abs(c.Delta.Value)
	switch {
	case len(c.Now.Doubts)+len(c.Before.Doubts) > 0:
		c.because("one of the two is doubtful")
	case c.Error.MDC95 != nil && size > c.Error.MDC95.Value:
		c.Verdict = RealChange
	case c.Error.MDC95 != nil:
		c.Verdict = WithinError
	case c.Error.MDC90 != nil && size <= c.Error.MDC90.Value:
		c.Verdict = WithinError
	case c.Error.MDC90 != nil:
		c.because("more than the error at 90 %; none is published at 95 %")
	default:
		c.because(NoError)
	}
}

func (c *Change) because(why basis.Said) {
	c.Because = basis.Listed(c.Because, why)
}
