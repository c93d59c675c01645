package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Methods: sets that differ. A set is a share of the load that a steady slot would ask, so nothing here is heavier than that; a
// method that goes on to failure waits until all-out effort is open and the knee is calm.

// SetDose is one set where the sets of a dose differ.
type SetDose struct {
	Plates, Moved basis.Num[unit.Kilograms] // what is put on or pinned; all that is moved
	PerSide       []unit.Kilograms
	Reps          *int // nil: as many as can be done
}

var byMethod = basis.Rule{Name: "repetitions of the method", Source: "program"}

// sharesOf lays out the sets of a rising or falling method: 50, 75 and 100 % of the load, or the other way round.
func (l *loader) sharesOf(w *WeekDose, load basis.Num[unit.Kilograms]) {
	by, share := formula.ByDeLorme, formula.DeLorme
	switch l.slot.Method {
	case program.Rising:
	case program.Falling:
		by, share = formula.ByOxford, formula.Oxford
	default:
		return
	}
	for set := 1; set <= 3; set++ {
		id := fmt.Sprintf("set-%d-share", set)
		l.addSet(w, set, basis.Try2(l.weekID(w.Week, id), by, share, load, l.setNumber(set)), w.Dose.Reps)
	}
	w.shorten()
}

func (l *loader) setNumber(set int) basis.Num[unit.Count] {
	return basis.Given(fmt.Sprintf("%s.set-%d", l.slot.ID, set), byMethod, unit.Count(set), "which set")
}

// addSet adds a set of a load; a light one that the device cannot be set to is left out.
func (l *loader) addSet(w *WeekDose, set int, load basis.Num[unit.Kilograms], reps *int) {
	name := fmt.Sprintf("set-%d-", set)
	plates := l.putAs(name, w.Week, load)
	if !plates.OK() {
		return
	}
	moved := finding.Moved(l.weekID(w.Week, name+"moved"), plates, l.place, l.device, l.body)
	w.Each = append(w.Each, SetDose{Plates: plates, Moved: moved, PerSide: perSide(plates.Or(0), l.device), Reps: reps})
}

// shorten keeps as many sets as the dose has: a step back or the therapist may ask for fewer.
func (w *WeekDose) shorten() {
	if w.Dose.Sets != nil && *w.Dose.Sets < len(w.Each) {
		w.Each = w.Each[:*w.Dose.Sets]
	}
}

// capEach brings every set of a week down to a load that was typed.
func (l *loader) capEach(w *WeekDose) {
	for i := range w.Each {
		if w.Each[i].Plates.Or(0) > w.Plates.Or(0) {
			w.Each[i].Plates, w.Each[i].Moved, w.Each[i].PerSide = w.Plates, w.Moved, w.PerSide
		}
	}
	w.Fourth = nil
}

// allOutClosed says why a method to failure waits; empty where it may be used.
func (l *loader) allOutClosed(w *WeekDose) basis.Said {
	switch reserve := w.Dose.Reserve; {
	case l.slot.Method == program.DailyAdjusted:
	case l.slot.Method != program.Rising && l.slot.Method != program.Falling || reserve == nil || unit.Count(*reserve) >= toFailureBelow:
		return ""
	}
	switch {
	case l.allOut(0, w, l.e, l.side):
		return "sets to failure: all-out effort is closed"
	case l.symptoms.Action != NoAction:
		return "sets to failure wait until the knee is calm"
	}
	return ""
}
