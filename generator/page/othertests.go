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
	table := d.table("ratios", d.say("ratios-caption"), "on", "what", "found")
	for _, r := range slices.Backward(all) {
		table.row("", d.nearDay(r.On), r.Test, pair(d.amountOr(legOf(d.bothSides()[0], r.Left, r.Right)), d.amountOr(legOf(d.bothSides()[1], r.Left, r.Right))))
	}
	return table
}

func (d *desk) yBalance(all []finding.YBalance) Node {
	table := d.table("y-balance", d.say("y-balance-caption"), "on", "anterior", "posteromedial", "posterolateral", "composite", "difference", "conditions", "why")
	for _, y := range slices.Backward(all) {
		a, b := legOf(d.bothSides()[0], y.Left, y.Right), legOf(d.bothSides()[1], y.Left, y.Right)
		table.row("", d.nearDay(y.On), pair(amount(a.Anterior), amount(b.Anterior)), pair(amount(a.Posteromedial), amount(b.Posteromedial)), pair(amount(a.Posterolateral), amount(b.Posterolateral)),
			pair(d.amountOr(a.Composite), d.amountOr(b.Composite)), d.amountOr(y.Difference), d.word("score", y.Score), nonEmpty("; ", d.missingOf(0, a.NotTested, false), d.missingOf(1, b.NotTested, false)))
	}
	return table
}

func (d *desk) rises(all []finding.Rise) Node {
	table := d.table("rises", d.say("rises-caption"), "on", "seat", "score", "symmetry", "why")
	for _, r := range slices.Backward(all) {
		a, b := legOf(d.bothSides()[0], r.Left, r.Right), legOf(d.bothSides()[1], r.Left, r.Right)
		table.row("", d.nearDay(r.On), pair(amount(a.Seat), amount(b.Seat)), pair(amount(a.Score), amount(b.Score)), amount(r.LSI),
			nonEmpty("; ", d.missingOf(0, a.NotTested, false), d.missingOf(1, b.NotTested, false), d.whyNone(r.LSI, a.NotTested, b.NotTested)))
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
		table.row("", d.nearDay(s.On), s.ID, d.amountOr(s.Score), why)
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
