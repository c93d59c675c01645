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
	t := HopTest{On: d.On, Test: h.Test, Score: trialOr(h.Trial)}
	t.Left, t.Right = f.hopLeg(ids, d.On, unit.Left, h.Left, t), f.hopLeg(ids, d.On, unit.Right, h.Right, t)
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
	if d.On.Before(f.event.Date) {
		return
	}
	if ids.when == "" {
		f.flagSpread(t)
	}
	m := f.trusted(measured(thing+".lsi", t.LSI, d.On), t.LSI)
	m.Alike = Alike{Score: t.Score}
	f.put(m)
	if operated.OfHeight.OK() && f.event.Side != unit.Both {
		m := measured(thing+".percent-of-height", operated.OfHeight, d.On)
		m.Alike = Alike{Score: t.Score}
		f.put(m)
	}
}

func (f *finder) hopLeg(ids stem, on unit.Day, side unit.Side, typed client.HopSide, of HopTest) HopLeg {
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
		l.Spread = spread(name("spread"), numbered(typed.Distance, name, on))
		l.Distance = kept(name("distance"), of.Score, numbered(typed.Distance, name, on))
	}
	if len(typed.Time) > 0 {
		l.Spread = spread(name("spread"), numbered(typed.Time, name, on))
		l.Time = quickest(name("time"), of.Score, numbered(typed.Time, name, on))
	}
	if len(typed.Count) > 0 {
		l.Count = kept(name("count"), of.Score, numbered(typed.Count, name, on))
	}
	if height := f.c.Height; of.Test == "single" && height.OK() && l.Distance.OK() {
		share := basis.Try2(name("share-of-height"), formula.ByHopForHeight, formula.HopForHeight, l.Distance, height.Named("body.height"))
		l.OfHeight = tenth(name("percent-of-height"), share).On(on)
	}
	return l
}

// flagSpread asks for one more trial where those of the newest test lie far apart. A hop is learnt from trial to trial, so that it
// is a flag and no doubt; of a pull it is a doubt.
func (f *finder) flagSpread(t HopTest) {
	for _, leg := range []struct {
		side unit.Side
		HopLeg
	}{{unit.Left, t.Left}, {unit.Right, t.Right}} {
		if v, ok := leg.Spread.Value(); ok && v > spreadLimit {
			f.flag(leg.Spread.ID(), "spread", basis.Say("trials of the {a} leg spread more than {b} %: add a trial", leg.side, float64(spreadLimit)))
		}
	}
}

// quickest is the score of several trials of which less is better.
func quickest(id, score string, trials []basis.Num[unit.Seconds]) basis.Num[unit.Seconds] {
	if score == string(client.Mean) {
		return kept(id, score, trials)
	}
	return basis.OfList(id, formula.ByQuickest, formula.Quickest[unit.Seconds], trials)
}
