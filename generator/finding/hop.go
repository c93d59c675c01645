package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// hop takes one hop test; for a timed hop less is better, so the ratio is turned round.
func (f *finder) hop(d *client.TestDay, h *client.Hop) {
	thing := "hop-" + h.Test
	ids := f.stem(thing, d, func(t *client.TestDay) bool {
		for i := range t.Hops {
			if t.Hops[i].Test == h.Test {
				return true
			}
		}
		return false
	})
	t := HopTest{On: d.On, Test: h.Test, Left: hopLeg(ids, d.On, unit.Left, h.Left), Right: hopLeg(ids, d.On, unit.Right, h.Right)}
	operated, other := t.Left, t.Right
	if f.operated() == unit.Right {
		operated, other = other, operated
	}
	id := ids.id("", "symmetry")
	var share basis.Num[unit.Percent]
	switch {
	case operated.Time.OK() || other.Time.OK():
		share = basis.Try2(id, formula.BySymmetryTimed, formula.SymmetryTimed[unit.Seconds], operated.Time, other.Time)
	case operated.Count.OK() || other.Count.OK():
		share = basis.Try2(id, formula.BySymmetry, formula.Symmetry[unit.Count], operated.Count, other.Count)
	default:
		share = basis.Try2(id, formula.BySymmetry, formula.Symmetry[unit.Metres], operated.Distance, other.Distance)
	}
	t.LSI = tenth(ids.id("", "lsi"), share).On(d.On)
	f.Hops = append(f.Hops, t)
	if !d.On.Before(f.event.Date) {
		f.put(f.trusted(measured(thing+".lsi", t.LSI, d.On), t.LSI))
	}
}

func hopLeg(ids stem, on unit.Day, side unit.Side, typed client.HopSide) HopLeg {
	l := HopLeg{NotTested: typed.NotTested, StoppedForPain: typed.StoppedForPain}
	name := func(quantity string) string { return ids.id(string(side), quantity) }
	if typed.StoppedForPain {
		l.NotTested = "stopped for pain"
	}
	if l.NotTested != "" {
		l.Distance = basis.Refused[unit.Metres](name("distance"), formula.ByBest, l.NotTested)
		l.Time = basis.Refused[unit.Seconds](name("time"), formula.ByQuickest, l.NotTested)
		l.Count = basis.Refused[unit.Count](name("count"), formula.ByBest, l.NotTested)
		return l
	}
	if len(typed.Distance) > 0 {
		l.Distance = basis.OfList(name("distance"), formula.ByBest, formula.Best[unit.Metres], numbered(typed.Distance, name, on))
	}
	if len(typed.Time) > 0 {
		l.Time = basis.OfList(name("time"), formula.ByQuickest, formula.Quickest[unit.Seconds], numbered(typed.Time, name, on))
	}
	if len(typed.Count) > 0 {
		l.Count = basis.OfList(name("count"), formula.ByBest, formula.Best[unit.Count], numbered(typed.Count, name, on))
	}
	return l
}

// questionnaire takes a score.
func (f *finder) questionnaire(d *client.TestDay, q *client.Questionnaire) {
	if !q.Score.OK() {
		return
	}
	ids := f.stem(q.ID, d, func(t *client.TestDay) bool {
		for i := range t.Questionnaires {
			if t.Questionnaires[i].ID == q.ID && t.Questionnaires[i].Score.OK() {
				return true
			}
		}
		return false
	})
	f.put(measured(q.ID, q.Score.Named(ids.id("", "score")).On(d.On), d.On))
}
