package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Under a cuff: light sets, 30, 15, 15 and 15. Only where the place has a cuff, the therapist has said so for this block, and the
// pressure that stops the flow to this leg was measured lately. A pressure is never guessed.

// cuffOld is after how many days a measured pressure is too old. Tool default.
const cuffOld = 28

// cuffRest is the rest between cuffed sets where the slot names none. Source: Patterson 2019, second-hand (30 to 60 s).
const cuffRest unit.Seconds = 30

// oneMillimetre is what a cuff is set to: whole mmHg, cut down.
var (
	byCuffStep = basis.Rule{Name: "step of the cuff", Source: "tool default"}
	byCuffCut  = basis.Rule{Name: "cut to step", Sum: "down($1 ÷ $2) × $2", Source: "one rounding, toward caution"}
)

// cuffed lays out the sets of a week under a cuff; it returns a reason to pass the exercise over.
func (l *loader) cuffed(w *WeekDose) (passOver basis.Said) {
	occlusion := l.occlusion()
	switch why := l.whyFind(w); {
	case l.cuffClosed() != "":
		return l.cuffClosed()
	case !occlusion.OK():
		return occlusion.Why()
	case why != "":
		return basis.Say("no load under the cuff: {a}", why)
	}
	share := basis.Given(l.slot.ID+".cuff-load", byDose, l.slot.Cuffed.Load, basis.Say("load of slot {a}", l.slot.ID))
	load := basis.Try2(l.weekID(w.Week, "cuff-load"), formula.ByCuffLoad, formula.CuffLoad, l.max, share)
	load = l.stepUp(load, w)
	load = l.steppedBack(load, l.steppedLower(load, w.Week), w)
	if w.Plates = l.put(w.Week, load); !w.Plates.OK() {
		return w.Plates.Why()
	}
	l.moved(w)
	w.Share = basis.Try2(l.weekID(w.Week, "share"), formula.ByTrueShare, formula.TrueShare, w.Moved, l.max)
	for _, reps := range formula.CuffRepetitions {
		n := int(reps)
		w.Each = append(w.Each, SetDose{Plates: w.Plates, Moved: w.Moved, PerSide: w.PerSide, Reps: &n})
	}
	w.shorten()
	l.underCuff(w, occlusion)
	return ""
}

// underCuff is the pressure, and how long it is worn.
func (l *loader) underCuff(w *WeekDose, occlusion basis.Num[unit.MillimetresOfMercury]) {
	part := basis.Given(l.slot.ID+".cuff-pressure", byDose, l.slot.Cuffed.Pressure, basis.Say("pressure of slot {a}", l.slot.ID))
	pressure := basis.Try2(l.weekID(w.Week, "cuff-share"), formula.ByCuffPressure, formula.CuffPressure, occlusion, part)
	w.Pressure = basis.Cut(l.weekID(w.Week, "cuff-pressure"), byCuffCut, unit.CutTo[unit.MillimetresOfMercury], pressure,
		basis.Given("cuff.step", byCuffStep, unit.MillimetresOfMercury(1), "whole mmHg"))
	if w.Dose.Rest == nil {
		rest := cuffRest
		w.Dose.Rest = &rest
	}
	total := 0
	for _, s := range w.Each {
		total += *s.Reps
	}
	lift, hold, lower := l.slot.Speed(l.e)
	each := lift + hold + lower
	if each == 0 {
		each = unit.Seconds(secondsARep)
	}
	given := func(what string, v unit.Count) basis.Num[unit.Count] {
		return basis.Given(l.weekID(w.Week, what), byMethod, v, basis.Said(what))
	}
	w.Time = basis.Try4(l.weekID(w.Week, "cuff-time"), formula.ByCuffTime, formula.CuffTime, given("cuff-repetitions", unit.Count(total)),
		basis.Given(l.thing+".tempo", byDose, each, "one repetition"), given("cuff-rests", unit.Count(len(w.Each)-1)), basis.Given(l.weekID(w.Week, "cuff-rest"), byDose, *w.Dose.Rest, "rest"))
}

// cuffClosed says why this exercise is not cuffed; empty where it may be.
func (l *loader) cuffClosed() basis.Said {
	switch {
	case l.block.Cuffed == nil:
		return `under a cuff only with the therapist's word: [cuffed] by = "…" in the block's file`
	case l.side == unit.Both:
		return "a cuff is worn by one leg at a time"
	case pick(l.place, "cuff", nil) == nil:
		return basis.Say("{a} has no cuff", l.place.ID)
	}
	return ""
}

// occlusion is the newest pressure that stops the flow to the leg, measured after the event and not too long ago.
func (l *loader) occlusion() (newest basis.Num[unit.MillimetresOfMercury]) {
	by := basis.Rule{Name: "pressure that stops the flow"}
	id := "cuff." + string(l.side) + ".occlusion"
	newest = basis.Refused[unit.MillimetresOfMercury](id, by, "the pressure that stops the flow to this leg was not measured: no pressure of a cuff is guessed")
	for i := range l.client.Tests {
		d := &l.client.Tests[i]
		knee := map[unit.Side]*client.KneeRange{unit.Left: &d.Left, unit.Right: &d.Right}[l.side]
		if knee == nil || !knee.Occlusion.OK() || d.On.After(l.block.Starts) || d.On.Before(l.event.Date) {
			continue
		}
		newest = knee.Occlusion.Named(id).On(d.On)
		if l.block.Starts.Sub(d.On) > cuffOld {
			newest = basis.Refused[unit.MillimetresOfMercury](id, by, basis.Say("the pressure that stops the flow was measured on {a}, more than 4 weeks ago: measure again", d.On))
		}
	}
	return newest
}
