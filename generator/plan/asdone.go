package plan

import (
	"fmt"

	"paceleaf/generator/unit"
)

// What was done as asked (rules 20, 22, 23). A set with the repetitions and the reserve that a week asks for is no estimate: the
// load that it was done with may be asked for again, although a later set of that line was cut short, or although so many
// repetitions are doubted. It raises nothing. The newest day decides: where no set of it was done as asked the estimate
// stands, and may lower the load.

// repeated is why such a load goes no further.
const repeated = "done as asked: the load is repeated"

// doneAsAsked is the set of the newest logged day that was done as a week asks, the heaviest of that day; nil where there is none.
// A both-leg maximum that the weaker leg caps is left as it is.
func (l *loader) doneAsAsked(w *WeekDose) (best *loggedLoad) {
	if l.logged == nil || l.max.ID() != l.logged.max.ID() {
		return nil
	}
	lines := l.lines(l.e, l.side, l.place, l.device)
	for _, t := range lines {
		if t.Done.On != lines[len(lines)-1].Done.On {
			continue
		}
		if done := l.doneIn(t, w); done != nil && (best == nil || done.moved.Or(0) > best.moved.Or(0)) {
			best = done
		}
	}
	return best
}

// doneIn is the set of a line that was done as a week asks, the one with the fewest repetitions; nil where there is none, where the
// client told of pain or swelling, and where the line was not so deep.
func (l *loader) doneIn(t *told, w *WeekDose) *loggedLoad {
	why, _ := unrest(l.found, t.Done.On)
	if why != "" || !l.counts(t) || len(t.dose.Each) > 0 || t.Reserve.Or(0) < unit.Count(*w.Dose.Reserve) || l.beyond(t.dose.Range, w.Range) != "" {
		return nil
	}
	set := -1
	for i, r := range t.Reps {
		if r.Or(0) >= unit.Count(*w.Dose.Reps) && (set < 0 || r.Or(0) < t.Reps[set].Or(0)) {
			set = i
		}
	}
	if set < 0 {
		return nil
	}
	name := fmt.Sprintf("set-%d-", set+1)
	done := l.estimateFrom(t, t.Reps[set].Named(t.id(name+"reps")), name)
	if done != nil {
		done.held = repeated
	}
	return done
}
