package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// IsometricStart is what an isometric test at 90° says of a first weight on the knee extension machine, with its limits. It is for
// the therapist beside "find your weight", never on the client's page: it was found in 21 healthy men on one machine.
type IsometricStart struct {
	Start, Max, Low, High basis.Num[unit.Kilograms]
}

// startShare is the share of such a maximum that is offered. Chosen; package formula refuses more.
const startShare unit.Percent = 60

// isometricStart is the estimate for a machine on which the client has to find the weight; nil where there is no such test.
func (l *loader) isometricStart(w *WeekDose) *IsometricStart {
	if !w.FindYourWeight || !slices.Contains(l.e.Needs, "knee-extension-stack") || l.side == unit.Both {
		return nil
	}
	test := l.isometric("knee-extension", 90)
	if test == nil || !test.OfSide(l.side).Force.OK() {
		return nil
	}
	force := test.OfSide(l.side).Force
	s := &IsometricStart{Max: basis.Try1(l.id("isometric-maximum"), formula.ByMaximumFromIsometric, formula.MaximumFromIsometric, force)}
	s.Low = basis.Try1(l.id("isometric-low"), formula.ByIsometricLow, formula.IsometricLow, s.Max)
	s.High = basis.Try1(l.id("isometric-high"), formula.ByIsometricHigh, formula.IsometricHigh, s.Max)
	s.Start = basis.Try2(l.id("isometric-start"), formula.ByStartFromIsometric, formula.StartFromIsometric, force,
		basis.Given("isometric-start.share", byDose, startShare, "at most 60 % of such a maximum; chosen"))
	return s
}
