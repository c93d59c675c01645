package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Daily adjusted (Knight 1979, second-hand): 10 at half the working weight, 6 at three quarters, as many as can be done at all of
// it, and a fourth set that moves with the third. The working weight is about what can be moved six times; where sets were
// logged, the last of the newest day gives it.

// FourthSet is the fourth set after so many repetitions in the third.
type FourthSet struct {
	From, To int // To 0: and more
	Plates   basis.Num[unit.Kilograms]
	PerSide  []unit.Kilograms
}

// fourthRows are the rows of the table, by repetitions of set 3. Source: Knight 1979, second-hand.
var fourthRows = [][2]int{{0, 2}, {3, 4}, {5, 6}, {7, 10}, {11, 0}}

// workingReps is how often a working weight can be moved. Source: Knight 1979, second-hand.
const workingReps = 6

// daily lays out the four sets of a week; it returns a reason to pass the exercise over.
func (l *loader) daily(w *WeekDose) (passOver basis.Said) {
	if why := l.whyFind(w); why != "" {
		w.FindYourWeight, w.Why = true, why
		return ""
	}
	load := l.steppedLower(l.working(w), w.Week)
	w.Plates = l.put(w.Week, load)
	if !w.Plates.OK() {
		return w.Plates.Why()
	}
	l.moved(w)
	w.Share = basis.Try2(l.weekID(w.Week, "share"), formula.ByTrueShare, formula.TrueShare, w.Moved, l.max)
	for i, reps := range formula.DAPRERepetitions {
		n := int(reps)
		l.addSet(w, i+1, basis.Try2(l.weekID(w.Week, fmt.Sprintf("set-%d-share", i+1)), formula.ByDAPRESet, formula.DAPRESet, load, l.setNumber(i+1)), &n)
	}
	w.Each = append(w.Each, SetDose{Plates: w.Plates, Moved: w.Moved, PerSide: w.PerSide})
	for _, row := range fourthRows {
		plates := l.fourth(w, row[0])
		w.Fourth = append(w.Fourth, FourthSet{From: row[0], To: row[1], Plates: plates, PerSide: perSide(plates.Or(0), l.device)})
	}
	w.shorten()
	return ""
}

// fourth is what to put on in set 4 after so many repetitions in set 3: the load of set 3 where the table asks for a rise that is
// too large for it, or where the machine cannot be set so low.
func (l *loader) fourth(w *WeekDose, reps int) basis.Num[unit.Kilograms] {
	id := l.weekID(w.Week, fmt.Sprintf("set-4-after-%d", reps))
	n := basis.Given(fmt.Sprintf("%s.after-%d", l.slot.ID, reps), byMethod, unit.Count(reps), "repetitions of set 3, the fewest of the row")
	next := basis.Try2(id, formula.DAPREFourthRule(unit.Count(reps), l.marked()), func(kg unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
		return formula.DAPREFourth(kg, n, l.marked())
	}, w.Plates, n)
	if !next.OK() || next.Or(0) == w.Plates.Or(0) {
		return w.Plates
	}
	if cut := cutToDevice(id+"-cut", next, l.place, l.device); cut.OK() {
		return cut
	}
	return w.Plates
}

func (l *loader) marked() formula.Marked {
	if l.device.Pounds {
		return formula.InPounds
	}
	return formula.InKilograms
}

// working is the working weight, as moved: of the newest logged day of this method, else six times' worth of the maximum.
func (l *loader) working(w *WeekDose) basis.Num[unit.Kilograms] {
	if t := l.lastFourth(); t != nil {
		moved := func(id string, kg basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
			return finding.Moved(id, kg, l.place, l.device, l.body)
		}
		load, reps := t.Load.Named(t.id("plates")).On(t.Done.On), t.Reps[len(t.Reps)-1].Named(t.id("last-reps")).On(t.Done.On)
		next := basis.Try2(l.weekID(w.Week, "next-working"), formula.DAPRENextRule(reps.Or(0), l.marked()), func(kg unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
			return formula.DAPRENext(kg, n, l.marked())
		}, load, reps)
		if !next.OK() || next.Or(0) > load.Or(0) && l.restless(t.Done.On) != "" {
			next = load // a rise that is too large for the load, or a knee that was not calm
		}
		return moved(l.weekID(w.Week, "working"), next)
	}
	six := basis.Given(l.slot.ID+".working-reps", byMethod, unit.Count(workingReps), "a working weight can be moved six times")
	return basis.Of2(l.weekID(w.Week, "working"), formula.ByWorkingLoad, formula.WorkingLoad, l.max, l.way.Share(l.weekID(w.Week, "working-share"), six))
}

// lastFourth is the last logged set of the newest day on which this slot's method was done on this device; nil where there is none,
// and where a lift was made on that day or later. A day that was cut short tells of no fourth set.
func (l *loader) lastFourth() (last *told) {
	for i := range l.told {
		t := &l.told[i]
		if t.Do == l.e.ID && t.Side == l.side && t.spoilt == "" && t.device.ID == l.device.ID && t.place.ID == l.place.ID && l.recent(t.Done.On) &&
			t.asked.Slot.Method == program.DailyAdjusted && len(t.Reps) > 0 && !l.cutShort(t) {
			last = t
		}
	}
	if last != nil && l.lift != nil && !l.lift.On.Before(last.Done.On) {
		return nil
	}
	return last
}

// cutShort reports whether the sets of a line's day were told one by one and the fourth is not among them: then the last is
// another one.
func (l *loader) cutShort(last *told) bool {
	lines, sets := 0, 0
	for i := range l.told {
		if t := &l.told[i]; t.Do == last.Do && t.Side == last.Side && t.Done.On == last.Done.On {
			lines, sets = lines+1, sets+len(t.Reps)
		}
	}
	return (lines > 1 || sets > 1) && sets < dailySets
}

// dailySets are the sets of a day of this method.
const dailySets = 4
