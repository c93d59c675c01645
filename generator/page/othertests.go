package page

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
)

// otherTests are the tests besides force, lifts and hops: bending against straightening, reach, the rise from a seat, scores.
func (d *desk) otherTests(f *finding.Findings) (tables []Node) {
	return append(tables, d.ratios(f.Ratios), d.yBalance(f.Reaches), d.rises(f.Rises), d.scores(f.Scores))
}

func (d *desk) ratios(all []finding.Ratio) Node {
	table := d.table("ratios", d.say("ratios-caption"), "on", "what", "leg", "found")
	for _, r := range slices.Backward(all) {
		for _, side := range d.sides() {
			table.row("", d.w.Day(r.On), r.Test, d.leg(side), d.amountOr(legOf(side, r.Left, r.Right)))
		}
	}
	return table
}

func (d *desk) yBalance(all []finding.YBalance) Node {
	table := d.table("y-balance", d.say("y-balance-caption"), "on", "leg", "anterior", "posteromedial", "posterolateral", "composite", "difference", "conditions", "why")
	for _, y := range slices.Backward(all) {
		for i, side := range d.sides() {
			r := legOf(side, y.Left, y.Right)
			difference := ""
			if i == 0 {
				difference = d.amountOr(y.Difference)
			}
			table.row("", d.w.Day(y.On), d.leg(side), amount(r.Anterior), amount(r.Posteromedial), amount(r.Posterolateral), d.amountOr(r.Composite), difference,
				d.word("score", y.Score), d.reason(r.NotTested))
		}
	}
	return table
}

func (d *desk) rises(all []finding.Rise) Node {
	table := d.table("rises", d.say("rises-caption"), "on", "leg", "seat", "score", "symmetry", "why")
	for _, r := range slices.Backward(all) {
		for i, side := range d.sides() {
			l := legOf(side, r.Left, r.Right)
			ratio := ""
			if i == 0 {
				ratio = d.amountOr(r.LSI)
			}
			table.row("", d.w.Day(r.On), d.leg(side), amount(l.Seat), amount(l.Score), ratio, d.reason(l.NotTested))
		}
	}
	return table
}

func (d *desk) scores(all []finding.Score) Node {
	table := d.table("scores", d.say("scores-caption"), "on", "id", "score", "why")
	for _, s := range slices.Backward(all) {
		why := ""
		if step := s.Score.Step(); step != nil && !step.Refuse {
			why = d.reason(step.Reason)
		}
		table.row("", d.w.Day(s.On), s.ID, d.amountOr(s.Score), why)
	}
	return table
}

// otherSteps are the numbers of these tests.
func otherSteps(f *finding.Findings) (steps []*basis.Step) {
	for _, r := range slices.Backward(f.Ratios) {
		steps = append(steps, r.Left.Step(), r.Right.Step())
	}
	for _, y := range slices.Backward(f.Reaches) {
		steps = append(steps, y.Difference.Step())
		for _, r := range []finding.Reaches{y.Left, y.Right} {
			steps = append(steps, r.Composite.Step(), r.Anterior.Step(), r.Posteromedial.Step(), r.Posterolateral.Step())
		}
	}
	for _, r := range slices.Backward(f.Rises) {
		steps = append(steps, r.LSI.Step(), r.Left.Score.Step(), r.Right.Score.Step())
	}
	for _, s := range slices.Backward(f.Scores) {
		steps = append(steps, s.Score.Step())
	}
	return steps
}
