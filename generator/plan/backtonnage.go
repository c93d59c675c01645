package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Tonnage, week by week: of one leg, one exercise and one machine.

var bySum = basis.Rule{Name: "tonnage of the week", Source: "definition"}

// tonnage is what one leg moved in a week of an exercise: load times repetitions, set by set.
func (b *backer) tonnage(r *Prescription, week int) basis.Num[unit.Kilograms] {
	id := fmt.Sprintf("%s.%s.b%d-w%d.tonnage", r.Exercise.ID, r.Side, b.Block.Number, week)
	var lines []basis.Num[unit.Kilograms]
	for _, t := range b.of(r, week) {
		if t.spoilt != "" {
			continue
		}
		moved := finding.Moved(t.id("moved"), t.Load.Named(t.id("plates")).On(t.Done.On), t.place, t.device, b.now.body(r.Exercise)).On(t.Done.On)
		reps := basis.OfList(t.id("all-reps"), sumRule("repetitions of all sets", len(t.Reps)), total[unit.Count], t.namedReps())
		lines = append(lines, basis.Try2(t.id("tonnage"), formula.ByTonnage, func(w unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
			return formula.Tonnage([]formula.Lift{{Load: w, Reps: n}})
		}, moved, reps))
	}
	by := bySum
	by.Sum = sumRule("", len(lines)).Sum
	return basis.OfList(id, by, total[unit.Kilograms], lines)
}

func (t *told) namedReps() []basis.Num[unit.Count] {
	list := make([]basis.Num[unit.Count], len(t.Reps))
	for i, n := range t.Reps {
		list[i] = n.Named(t.id(fmt.Sprintf("set-%d-reps", i+1))).On(t.Done.On)
	}
	return list
}

func total[Q unit.Quantity](list []Q) (sum Q, err error) {
	for _, v := range list {
		sum += v
	}
	return sum, nil
}

// sumRule is the rule of a sum of n numbers.
func sumRule(name basis.Said, n int) basis.Rule {
	by := basis.Rule{Name: name, Source: "definition"}
	for i := range n {
		if i > 0 {
			by.Sum += " + "
		}
		by.Sum += fmt.Sprintf("$%d", i+1)
	}
	return by
}
