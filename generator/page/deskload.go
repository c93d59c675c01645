package page

import (
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What the worksheet says of a load besides its sum: what other equations would say, what moves with it, how coarse its steps are.

// withSpan is an estimated maximum and what all equations make of the same set, or why there is none.
func (d *desk) withSpan(most basis.Num[unit.Kilograms], span finding.Span) string {
	low, ok := span.Low.Value()
	if !most.OK() || !ok {
		return d.amountOr(most)
	}
	return d.say("with-span", "maximum", tenths(most), "low", resultNumber(float64(unit.CutTo(low, 0.1))), "high", tenths(span.High))
}

// tenths is a number to a tenth, never above what it is, with its unit.
func tenths[Q unit.Quantity](n basis.Num[Q]) string {
	v, ok := n.Value()
	if !ok {
		return ""
	}
	return withUnit(resultNumber(float64(unit.CutTo(v, 0.1))), v.Unit())
}

// bodyMoves is which part of the body a load includes.
func (d *desk) bodyMoves(pr plan.Prescription) string {
	b := pr.Body
	switch {
	case b == nil:
		return ""
	case !b.Mass.OK():
		return d.reason(b.Mass.Why())
	case b.Least.Or(0) != b.Most.Or(0):
		return d.say("body-moves-between", "least", amount(b.Least), "most", amount(b.Most), "mass", amount(b.Mass))
	}
	return d.say("body-moves", "share", amount(b.Least), "mass", amount(b.Mass))
}

// step is how much of the load one step of the device is.
func (d *desk) step(pr plan.Prescription) string {
	share, ok := pr.StepShare.Value()
	key := "step-fine"
	switch {
	case !ok:
		return ""
	case share > plan.TooCoarse:
		key = "step-too-coarse"
	case share > plan.CoarseStep:
		key = "step-coarse"
	}
	return d.say(key, "share", tenths(pr.StepShare))
}

// planned is what one session moves in all, and as repetitions times share of the maximum.
func (d *desk) planned(pr plan.Prescription) string {
	if !pr.Volume.OK() {
		return amount(pr.Tonnage)
	}
	return d.say("planned", "tonnage", amount(pr.Tonnage), "volume", tenths(pr.Volume))
}

// mechanics is the first load as a force or a torque, to compare machines.
func (d *desk) mechanics(m plan.Mechanics) string {
	var all []string
	for _, one := range []struct{ key, amount string }{
		{"along-slope", amount(m.AlongSlope)}, {"at-pad", amount(m.AtPad)}, {"torque-of-load", amount(m.Torque)}, {"torque-of-leg", amount(m.OwnLeg)}} {
		if one.amount != "" {
			all = append(all, d.say(one.key, "amount", one.amount))
		}
	}
	return strings.Join(all, "; ")
}

// fromIsometric is what an isometric test says of a first weight, with its limits.
func (d *desk) fromIsometric(s *plan.IsometricStart) string {
	if s == nil || !s.Start.OK() {
		return ""
	}
	return d.say("from-isometric", "start", tenths(s.Start), "maximum", tenths(s.Max), "low", tenths(s.Low), "high", tenths(s.High))
}

// cuffed is the pressure, the time under it and who must not wear one.
func (d *desk) cuffed(pr plan.Prescription) string {
	w := pr.Weeks[0]
	if !w.Pressure.OK() {
		return ""
	}
	return d.say("cuffed", "pressure", amount(w.Pressure), "time", amount(w.Time))
}

// stimulated is how long it takes and who must not be stimulated.
func (d *desk) stimulated(pr plan.Prescription) string {
	w := pr.Weeks[0]
	if pr.Slot == nil || pr.Slot.Stimulated == nil || !w.Time.OK() {
		return ""
	}
	return d.say("stimulated", "time", amount(w.Time))
}

// eachSet are the sets of a week one by one, where they differ.
func (d *desk) eachSet(w plan.WeekDose) string {
	all := make([]string, len(w.Each))
	for i, s := range w.Each {
		times := d.say("as-many")
		if s.Reps != nil {
			times = strconv.Itoa(*s.Reps)
		}
		all[i] = d.say("one-set", "times", times, "load", amount(s.Plates))
	}
	return strings.Join(all, "; ")
}

// whyDose is why a week has no load, or more repetitions than the program asks.
func (d *desk) whyDose(w plan.WeekDose) string {
	switch {
	case w.FindYourWeight:
		return d.say("find-your-weight", "because", d.reason(w.Why))
	case w.Why != "":
		return d.reason(w.Why)
	case w.Reps.OK():
		return d.say("more-reps", "n", *w.Dose.Reps-w.AskedReps, "error", tenths(w.CutError), "reps", amount(w.Reps))
	}
	return ""
}

// liftedSteps are the numbers of a prescription that hold for all its weeks.
func liftedSteps(pr plan.Prescription) []*basis.Step {
	steps := []*basis.Step{pr.OneRM.Step(), pr.Span.Low.Step(), pr.Span.High.Step(), pr.StepShare.Step(), pr.Tonnage.Step(), pr.Volume.Step()}
	m := pr.Mechanics
	steps = append(steps, m.AlongSlope.Step(), m.AtPad.Step(), m.Torque.Step(), m.OwnLeg.Step())
	if s := pr.FromIsometric; s != nil {
		steps = append(steps, s.Start.Step(), s.Max.Step(), s.Low.Step(), s.High.Step())
	}
	return steps
}
