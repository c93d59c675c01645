package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// YBalance is a test of reach on one leg, on one day.
type YBalance struct {
	On          unit.Day
	Score       string // best or mean
	Left, Right Reaches
	Difference  basis.Num[unit.Metres] // between the legs, to the front
}

// Reaches is what one leg reached while standing on it.
type Reaches struct {
	Anterior, Posteromedial, Posterolateral basis.Num[unit.Metres]
	Composite                               basis.Num[unit.Percent] // of the length of the leg, cut to a tenth
	NotTested                               basis.Said
}

// Rise is the lowest seat that each leg stood up from, on one day.
type Rise struct {
	On          unit.Day
	Left, Right RiseLeg
	LSI         basis.Num[unit.Percent]
}

// RiseLeg is one leg's seat and what is made of it: higher is better.
type RiseLeg struct {
	Seat      basis.Num[unit.Metres]
	Score     basis.Num[unit.Points]
	NotTested basis.Said
}

// reach takes the Y-balance of a day.
func (f *finder) reach(d *client.TestDay) {
	y := &d.YBalance
	if y.At.File == "" {
		return
	}
	ids := f.stem(client.YBalanceTest, d, func(t *client.TestDay) bool { return t.YBalance.At.File != "" })
	t := YBalance{On: d.On, Score: trialOr(y.Trial)}
	t.Left, t.Right = f.reaches(ids, d, unit.Left, y.Left, t.Score), f.reaches(ids, d, unit.Right, y.Right, t.Score)
	mine, theirs := t.Left, t.Right
	if f.operated() == unit.Right {
		mine, theirs = theirs, mine
	}
	t.Difference = basis.Try2(ids.id("", "anterior-difference"), formula.ByReachDifference, formula.ReachDifference, mine.Anterior, theirs.Anterior).On(d.On)
	f.Reaches = append(f.Reaches, t)
	if d.On.Before(f.event.Date) {
		return
	}
	if v, ok := t.Difference.Value(); ok && formula.ReachFlagged(v) {
		f.flag(t.Difference.ID(), "reach-differs", "the reach to the front differs by more than 4 cm between the legs (a mark of girls who play basketball; a third of healthy soldiers are above it)")
	}
	if f.event.Side == unit.Both {
		return // a composite of two knees is nobody's
	}
	put := func(m Measure) { m.Alike = Alike{Score: t.Score}; f.put(m) }
	put(measured("y-balance.composite", mine.Composite, d.On))
	put(measured("y-balance.anterior-difference", t.Difference, d.On))
	put(measured("y-balance.anterior", mine.Anterior, d.On))
	put(measured("y-balance.posteromedial", mine.Posteromedial, d.On))
	put(measured("y-balance.posterolateral", mine.Posterolateral, d.On))
}

func (f *finder) reaches(ids stem, d *client.TestDay, side unit.Side, typed client.ReachSide, score string) Reaches {
	name := func(quantity string) string { return ids.id(string(side), quantity) }
	r := Reaches{NotTested: whyNot(typed.NotTested, typed.StoppedForPain)}
	if r.NotTested == "" && !typed.Done() {
		r.NotTested = "not tested"
	}
	take := func(quantity string, trials []basis.Num[unit.Metres]) basis.Num[unit.Metres] {
		if r.NotTested != "" {
			return basis.Refused[unit.Metres](name(quantity), formula.ByBest, r.NotTested)
		}
		return kept(name(quantity), score, numbered(trials, func(q string) string { return name(quantity + "-" + q) }, d.On)).On(d.On)
	}
	r.Anterior, r.Posteromedial, r.Posterolateral = take("anterior", typed.Anterior), take("posteromedial", typed.Posteromedial), take("posterolateral", typed.Posterolateral)
	leg := f.c.StandingLeg(&d.YBalance, side).Named(name("leg"))
	share := basis.Try4(name("share-of-leg"), formula.ByYBalance, formula.YBalance, r.Anterior, r.Posteromedial, r.Posterolateral, leg)
	r.Composite = tenth(name("composite"), share).On(d.On)
	return r
}

// rise takes the single-leg rise of a day.
func (f *finder) rise(d *client.TestDay) {
	if d.Rise.At.File == "" {
		return
	}
	ids := f.stem(client.RiseTest, d, func(t *client.TestDay) bool { return t.Rise.At.File != "" })
	t := Rise{On: d.On, Left: riseLeg(ids, d, unit.Left, d.Rise.Left), Right: riseLeg(ids, d, unit.Right, d.Rise.Right)}
	operated, other := t.Left, t.Right
	if f.operated() == unit.Right {
		operated, other = other, operated
	}
	share := basis.Try2(ids.id("", "symmetry"), formula.BySymmetry, formula.Symmetry[unit.Points], operated.Score, other.Score)
	t.LSI = tenth(ids.id("", "lsi"), share).On(d.On)
	f.Rises = append(f.Rises, t)
	if !d.On.Before(f.event.Date) {
		f.put(f.trusted(measured(client.RiseTest+".lsi", t.LSI, d.On), t.LSI))
	}
}

func riseLeg(ids stem, d *client.TestDay, side unit.Side, typed client.RiseSide) RiseLeg {
	name := func(quantity string) string { return ids.id(string(side), quantity) }
	l := RiseLeg{NotTested: whyNot(typed.NotTested, typed.StoppedForPain)}
	if l.NotTested != "" {
		l.Score = basis.Refused[unit.Points](name("score"), formula.ByRiseScore, l.NotTested)
		return l
	}
	l.Seat = typed.Seat.Named(name("seat")).On(d.On)
	l.Score = basis.Try1(name("score"), formula.ByRiseScore, formula.RiseScore, l.Seat).On(d.On)
	return l
}

// whyNot is the reason of a leg without a value: pain goes before words.
func whyNot(typed basis.Said, stopped bool) basis.Said {
	if stopped {
		return "stopped for pain"
	}
	return typed
}

// trialOr is the score that is kept of several trials; best where nothing is said.
func trialOr(t client.Trial) string {
	if t == "" {
		t = client.Best
	}
	return string(t)
}
