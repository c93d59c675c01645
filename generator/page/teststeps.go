package page

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
)

// testSteps are the numbers of every test, the newest first.
func testSteps(f *finding.Findings) (steps []*basis.Step) {
	if f == nil {
		return nil
	}
	for _, t := range slices.Backward(f.Strength) {
		steps = append(steps, t.LSI.Step(), t.Deficit.Step(), t.Preop.Step(), t.Angle.Step())
		steps = append(steps, pullSteps(t.Left)...)
		steps = append(steps, pullSteps(t.Right)...)
	}
	for _, t := range slices.Backward(f.Lifts) {
		steps = append(steps, t.LSI.Step())
		for _, l := range []finding.LiftLeg{t.Left, t.Right, t.Both} {
			steps = append(steps, l.OneRM.Step(), l.Span.Low.Step(), l.Span.High.Step(), l.Moved.Step(), l.Reps.Step(), l.Reserve.Step())
		}
	}
	for _, t := range slices.Backward(f.Hops) {
		steps = append(steps, t.LSI.Step())
		for _, l := range []finding.HopLeg{t.Left, t.Right} {
			steps = append(steps, l.Distance.Step(), l.Time.Step(), l.Count.Step(), l.Spread.Step(), l.OfHeight.Step())
		}
	}
	steps = append(steps, otherSteps(f)...)
	for _, k := range slices.Backward(f.Knees) {
		steps = append(steps, kneeSteps(k)...)
	}
	return slices.DeleteFunc(steps, func(s *basis.Step) bool { return s == nil })
}

func pullSteps(l finding.Leg) []*basis.Step {
	return []*basis.Step{l.Force.Step(), l.Torque.Step(), l.PerKg.Step(), l.Spread.Step()}
}

func kneeSteps(k finding.KneeDay) []*basis.Step {
	return []*basis.Step{k.Pain.Step(), k.Morning.Step(), k.QuadsLag.Step(), k.Mass.Step(),
		k.Left.Straight.Step(), k.Left.Flexion.Step(), k.Right.Straight.Step(), k.Right.Flexion.Step()}
}
