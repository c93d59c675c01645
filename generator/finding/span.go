package finding

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Span is what the seven equations say of one set: the lowest and the highest estimate. It is there to be seen; no load comes from it.
type Span struct{ Low, High basis.Num[unit.Kilograms] }

// SpanOf is the span of a set of n repetitions to failure; empty for a single, which is no estimate, and where there is none.
func SpanOf(id string, moved basis.Num[unit.Kilograms], n basis.Num[unit.Count]) Span {
	if !moved.OK() || !n.OK() || n.Or(0) <= 1 || n.Or(0) > formula.OneRMRefusedAbove {
		return Span{}
	}
	return Span{Low: ofAll(id+"-low", "min", slices.Min, moved, n), High: ofAll(id+"-high", "max", slices.Max, moved, n)}
}

func ofAll(id, key string, choose func([]unit.Kilograms) unit.Kilograms, moved basis.Num[unit.Kilograms], n basis.Num[unit.Count]) basis.Num[unit.Kilograms] {
	sums := make([]string, len(formula.Equations))
	for i, e := range formula.Equations {
		sums[i] = formula.OneRMRuleBy(e, n.Or(0)).Sum
	}
	by := basis.Rule{Name: basis.Say("estimated maximum, {a} of seven equations", key), Sum: key + "(" + strings.Join(sums, ", ") + ")", Source: "reprints, second-hand"}
	return basis.Try2(id, by, func(kg unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
		all := make([]unit.Kilograms, len(formula.Equations))
		for i, e := range formula.Equations {
			var err error
			if all[i], err = formula.OneRMBy(e, kg, n); err != nil {
				return 0, err
			}
		}
		return choose(all), nil
	}, moved, n)
}
