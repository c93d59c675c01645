package finding_test

import (
	"testing"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

func typed[Q unit.Quantity](v Q) basis.Num[Q] { return basis.Given("typed", basis.Rule{}, v, "") }

// By each equation the share is the maximum turned round: the load that was lifted comes back. Epley by its name is Epley without one.
func TestAWayGoesBothWays(t *testing.T) {
	for _, e := range append([]formula.Equation{""}, formula.Equations...) {
		way := finding.Way{Equation: e}
		for _, n := range []unit.Count{1, 2, 5, 8, 12, 15} {
			max := way.OneRM("max", typed(unit.Kilograms(40)), typed(n))
			back := formula.WorkingLoad(max.Or(0), way.Share("share", typed(n)).Or(0))
			if back < 39.99 || back > 40.01 {
				t.Errorf("%q, %g repetitions: %g kg come back of 40", e, float64(n), float64(back))
			}
			if again := way.ToFailureAt("n", max, typed(unit.Kilograms(40))).Or(0); n < 15 && (again < n-0.01 || again > n+0.01) {
				t.Errorf("%q: %g repetitions come back of %g", e, float64(again), float64(n))
			}
		}
	}
	plain, named := finding.Way{}, finding.Way{Equation: formula.Epley}
	if a, b := plain.OneRM("a", typed(unit.Kilograms(40)), typed(unit.Count(8))), named.OneRM("a", typed(unit.Kilograms(40)), typed(unit.Count(8))); a.Or(0) != b.Or(0) || a.Step().By != b.Step().By {
		t.Errorf("%v and %v", a.Step(), b.Step())
	}
}

// What moves of the body. Loading plan 5.3: a man's squat on two legs moves 0.8764 of him, one leg 0.938, a heel raise 0.986.
func TestBodyThatMoves(t *testing.T) {
	for _, row := range []struct {
		of          formula.BodyExercise
		sex         string
		least, most float64
	}{
		{formula.TwoLegSquat, "male", 87.64, 87.64}, {formula.TwoLegSquat, "female", 86.64, 86.64}, {formula.TwoLegSquat, "", 86.64, 87.64},
		{formula.OneLegSquat, "male", 93.82, 93.82}, {formula.OneLegHeelRaise, "male", 98.57, 98.57}, {formula.OneLegHeelRaise, "", 98.57, 98.67},
	} {
		b := finding.BodyOf(row.of, client.Sex(row.sex), typed(unit.Kilograms(80)))
		if least, most := float64(b.Least.Or(0)), float64(b.Most.Or(0)); least < row.least-0.005 || least > row.least+0.005 || most < row.most-0.005 || most > row.most+0.005 {
			t.Errorf("%s, %q: %v to %v, want %v to %v", row.of, row.sex, least, most, row.least, row.most)
		}
	}
	if finding.BodyOf("", "male", typed(unit.Kilograms(80))) != nil {
		t.Error("a press moves the body")
	}
	heavy := finding.BodyOf(formula.TwoLegSquat, "male", typed(unit.Kilograms(80)))
	if added := heavy.Without("x", typed(unit.Kilograms(60))); added.OK() {
		t.Errorf("60 kg of a body of which 70 move: %v", added.Or(0))
	}
	if moved := finding.BodyOf(formula.TwoLegSquat, "male", basis.Num[unit.Kilograms]{}).With("x", typed(unit.Kilograms(20))); moved.OK() {
		t.Error("a body that was never weighed moves")
	}
}
