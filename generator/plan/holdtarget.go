package plan

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// A hold has a target where its slot names one, the newest isometric test of that leg was made at the very angle that is held, and
// the gauge hangs at the place. The client reads it in the unit of the gauge.

// steps of the gauges' units that a target is cut down to. Tool default.
var holdSteps = map[string]unit.Newtons{"N": 1, "kgf": 0.5 * unit.NewtonsPerKgf, "lbf": unit.NewtonsPerLbf}

var (
	byHoldStep = basis.Rule{Name: "step of a target", Source: "tool default"}
	byHoldCut  = basis.Rule{Name: "cut to step", Sum: "down($1 ÷ $2) × $2", Source: "one rounding, toward caution"}
)

// holdTarget puts the force of a hold into a week's dose.
func (l *loader) holdTarget(w *WeekDose) {
	if l.slot.HoldPercent <= 0 || !l.e.Isometric() || w.Range == nil {
		return
	}
	test := l.isometric(testOf(l.e), w.Range.MostBent)
	if test == nil || w.Range.Straightest != w.Range.MostBent || !l.gaugeHere(test.Gauge) {
		return
	}
	force := test.OfSide(l.side).Force
	if !force.OK() {
		return
	}
	w.HoldIn = typedIn(force.Step())
	share := basis.Given(l.slot.ID+".hold-percent", byDose, l.slot.HoldPercent, basis.Say("target of slot {a}", l.slot.ID))
	target := basis.Try2(l.weekID(w.Week, "hold-share"), formula.ByHoldTarget, formula.HoldTarget[unit.Newtons], force, share)
	w.HoldAt = basis.Cut(l.weekID(w.Week, "hold-target"), byHoldCut, unit.CutTo[unit.Newtons], target,
		basis.Given("gauge.step-in-"+strings.ToLower(w.HoldIn), byHoldStep, holdSteps[w.HoldIn], "a step of the gauge"))
}

// testOf is the test of force that tells of an exercise's muscle.
func testOf(e *program.Exercise) string {
	if slices.Contains(e.Trains, "hamstrings") {
		return "knee-flexion"
	}
	return "knee-extension"
}

// isometric is the newest isometric test of that name at an angle, after the event; nil where there is none.
func (p *planner) isometric(name string, at unit.Degrees) (newest *finding.StrengthTest) {
	for i := range p.found.Strength {
		t := &p.found.Strength[i]
		if angle, ok := t.Angle.Value(); ok && angle == at && t.Test == name && t.Mode == "isometric" && !t.On.Before(p.event.Date) {
			newest = t
		}
	}
	return newest
}

// gaugeHere reports whether a gauge hangs at the place of the week.
func (l *loader) gaugeHere(id string) bool {
	g := l.plan.Clinic.Gauge(id)
	return g != nil && g.Place != "" && g.Place == l.place.ID
}

// typedIn is the unit in which the trials behind a force were typed.
func typedIn(s *basis.Step) string {
	in := "N"
	basis.Walk(s, func(s *basis.Step) {
		for _, symbol := range []string{"kgf", "lbf"} {
			if strings.HasSuffix(s.Typed, " "+symbol) {
				in = symbol
			}
		}
	})
	return in
}
