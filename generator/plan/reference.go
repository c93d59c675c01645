package plan

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// A reference that is not sound (rules 12): where the other leg is none, symmetry opens nothing. What it did before the
// operation may stand in its place once the therapist has confirmed that by [[reference]].

// flexionOfOther is the one comparison of range.
const flexionOfOther = "flexion.percent-of-other"

// compares reports whether a measure holds one leg against the other.
func compares(measure string) bool {
	return measure == flexionOfOther || strings.HasSuffix(measure, ".lsi")
}

// reference is what the therapist has confirmed since the event, up to the day; nil where nothing is.
func (j judge) reference() (newest *client.Reference) {
	for i := range j.c.References {
		r := &j.c.References[i]
		if r.From.After(j.asOf) || r.From.Before(j.event.Date) {
			continue
		}
		if newest == nil || !r.From.Before(newest.From) {
			newest = r
		}
	}
	return newest
}

// notConfirmed stands beside each comparison that waits for the therapist's word; howToConfirm once on the worksheet.
const (
	notConfirmed = "compared with before the operation only once a [[reference]] says so"
	howToConfirm = `to compare with the other leg before the operation, write a [[reference]] in client.toml with use (as "pre-operative"), from, by and reason`
)

// unsound is what a criterion compares where the other leg is no sound reference: today's symmetry, which opens nothing,
// or once that is confirmed what the other leg did before the operation.
func (j judge) unsound(m finding.Measure) finding.Measure {
	if !m.OK && j.reference() == nil {
		return m
	}
	before := j.before(m.Name)
	switch {
	case j.reference() == nil && before.OK:
		return doubted(m, notConfirmed)
	case j.reference() == nil:
		return m
	case before.OK:
		return before
	case m.OK: // tested today: "not tested" would let a criterion pass that is asked only where it was tested
		return doubted(m, "nothing of the other leg from before the operation stands against it")
	}
	return m
}

func doubted(m finding.Measure, says basis.Said) finding.Measure {
	m.Doubts = append(append([]basis.Said{}, m.Doubts...), says)
	return m
}

// before compares the operated leg with the other one before the operation; a value from after the other leg's own injury
// or operation is no reference either.
func (j judge) before(measure string) finding.Measure {
	var m finding.Measure
	var of unit.Day
	if measure == flexionOfOther {
		m, of = j.bendBefore()
	} else {
		test := strings.TrimSuffix(measure, ".lsi")
		m = j.found.Measure(test + ".preop-ratio")
		of = j.strengthBefore(test, m.On)
	}
	if !m.OK {
		return m
	}
	if m.Number > float64(finding.TooStrong) {
		m = doubted(m, "above 110 of the other leg before the operation: is that a good reference?")
	}
	for _, e := range j.c.Events {
		if e.Kind != client.Start && isOf(e.Side, j.event.Side.Opposite()) && !e.Date.After(of) {
			m = doubted(m, basis.Say("the other leg's value of {a} is from after its own {b} of {c}", of, e.Kind, e.Date))
		}
	}
	return m
}

// strengthBefore is the day on which the other leg's value behind a pre-operative ratio was measured.
func (j judge) strengthBefore(test string, now unit.Day) (of unit.Day) {
	conditions := ""
	for _, t := range j.found.Strength {
		if t.Test == test && t.On == now {
			conditions = t.Conditions
		}
	}
	for i := range j.found.Strength {
		t := &j.found.Strength[i]
		if t.Test == test && t.Conditions == conditions && t.On.Before(j.event.Date) && t.OfSide(j.event.Side.Opposite()).Torque.OK() {
			of = t.On
		}
	}
	return of
}

// bendBefore compares the newest bend of the operated knee with that of the other before the operation.
func (j judge) bendBefore() (m finding.Measure, of unit.Day) {
	var mine, theirs basis.Num[unit.Degrees]
	var on unit.Day
	for _, k := range j.found.Knees {
		own, other := k.Left, k.Right
		if j.event.Side == unit.Right {
			own, other = other, own
		}
		if k.On.Before(j.event.Date) {
			if other.Flexion.OK() {
				theirs, of = other.Flexion, k.On
			}
		} else if own.Flexion.OK() {
			mine, on = own.Flexion, k.On
		}
	}
	if !mine.OK() || !theirs.OK() {
		return finding.Measure{Name: flexionOfOther, Reason: "the other knee was not measured before the operation"}, of
	}
	share := basis.Try2("flexion.symmetry-before", formula.BySymmetry, formula.Symmetry[unit.Degrees], mine, theirs)
	step := basis.Given("rounding.tenth", basis.Rule{Name: "step of the cut"}, unit.Percent(0.1), "shares are compared and printed in tenths")
	cut := basis.Cut("flexion.percent-of-other-before", finding.ByTenth, unit.CutTo[unit.Percent], share, step)
	v, ok := cut.Value()
	return finding.Measure{Name: flexionOfOther, Value: cut.Step(), Number: float64(v), Unit: v.Unit(), OK: ok, On: on, Reason: cut.Why()}, of
}
