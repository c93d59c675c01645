package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Repetitions instead of load. Where a coarse step leaves a load that is far lighter than planned, more repetitions reach the
// reserve that was asked for. The load is not touched, and repetitions are never fewer than asked.

// Tool defaults: from which error of the cut on (loading plan), by how many repetitions at most (as far as a plan may lie from a
// test, rules 20), and to how many to failure (as far as an estimate goes).
const (
	coarseCut     unit.Percent = 5
	mostMoreReps               = farReps
	mostToFailure              = formula.OneRMRefusedAbove
)

var (
	byCutError = basis.Rule{Name: "what the cut takes off", Sum: "100 × ($1 − $2) ÷ $1", Source: "definition"}
	byMoreReps = basis.Rule{Name: "repetitions for the same reserve at the load that can be set", Sum: "max($3, min(down($1) − $2, 15 − $2, $3 + 4))",
		Source: "tool default: where the cut takes off more than 5 %"}
)

// moreReps raises the repetitions of a week where the step of the device is why its load is more than 5 % lighter than planned.
// load is what was planned, as moved. Nothing is raised where the knee or a log holds the load back, where the therapist typed
// repetitions or a load, where a range of repetitions leaves them to the client, or where the machine holds no more.
func (l *loader) moreReps(w *WeekDose, load basis.Num[unit.Kilograms]) {
	if m := l.slot.Method; m != "" && m != program.Steady || w.Dose.RepsTo != nil || l.heldDown(w) || w.Plates.Or(0) <= 0 || load.Or(0) > l.max.Or(0) {
		return
	}
	w.CutError = basis.Of2(l.weekID(w.Week, "cut-error"), byCutError, func(planned, moved unit.Kilograms) unit.Percent {
		return unit.Percent(float64(100*float64(planned-moved)) / float64(planned))
	}, load, w.Moved)
	if w.CutError.Or(0) <= coarseCut {
		return
	}
	n := l.way.ToFailureAt(l.weekID(w.Week, "implied-to-failure"), l.max, w.Moved)
	asked, reserve := l.count("reps", w.Dose.Reps), l.count("reserve", w.Dose.Reserve)
	more := basis.Of3(l.weekID(w.Week, "repetitions"), byMoreReps, func(n, q, r unit.Count) unit.Count {
		return max(r, min(unit.CutTo(n, 1)-q, mostToFailure-q, r+mostMoreReps))
	}, n, reserve, asked)
	if reps := int(more.Or(0)); reps > *w.Dose.Reps {
		w.Reps, w.AskedReps, w.Dose.Reps = more, *w.Dose.Reps, &reps
		w.Implied = basis.Of2(l.weekID(w.Week, "implied-reserve"), formula.ByImpliedReserve, formula.ImpliedReserve, n, more)
	}
}

// heldDown reports whether a load is lower than it could be for a reason that more repetitions must not undo.
func (l *loader) heldDown(w *WeekDose) bool {
	if l.symptoms.Action != NoAction || l.backs(l.e, l.side) || l.logged != nil && l.logged.held != "" {
		return true
	}
	for _, o := range l.overridesOf(l.e, l.side) {
		if o.Reps != nil || o.Reserve != nil || o.Plates.OK() {
			return true
		}
	}
	heaviest, ok := l.device.Heaviest.Value()
	return ok && w.Plates.Or(0) >= heaviest
}
