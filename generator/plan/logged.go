package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Loads from logged sets (rules 20, 23, 24). A lift of the block that is over, or of this morning, comes first. An older
// one gives way to the sets of the last two weeks. Of these the best estimate counts, from at most 10 repetitions to
// failure; from 11 to 15 it is doubted and raises nothing.

// loggedDays is how far back from the block's first day a logged set may lie. Source: loading plan, chosen.
const loggedDays = 14

// mostStep is by how much a load may rise above a logged one. Source: ACSM 2009, 2 to 10 %.
const mostStep unit.Percent = 10

// loggedLoad is the logged set that a load comes from.
type loggedLoad struct {
	on    unit.Day
	reach *unit.Reach // in force in its week
	moved basis.Num[unit.Kilograms]
	max   basis.Num[unit.Kilograms]
	span  finding.Span
	held  basis.Said // why it raises nothing; empty where it may
}

// loggedFor finds the logged set behind a load; nil where a lift comes first or no set counts.
func (p *planner) loggedFor(e *program.Exercise, side unit.Side, place *client.Place, device *client.Device) (best *loggedLoad) {
	if device == nil || place == nil || p.asked == nil {
		return nil
	}
	if lift := p.newestLift(e.ID, place, device); lift != nil && !lift.On.Before(p.asked.Block.Starts) {
		return nil
	}
	for _, t := range p.lines(e, side, place, device) {
		if l := p.estimate(t); l != nil && l.better(best) {
			best = l
		}
	}
	return best
}

// lines are the logged lines that a load of an exercise on a device may come from: of the last two weeks, oldest first.
func (p *planner) lines(e *program.Exercise, side unit.Side, place *client.Place, device *client.Device) (list []*told) {
	for i := range p.told {
		t := &p.told[i]
		if t.Do == e.ID && t.Side == side && t.spoilt == "" && t.device.ID == device.ID && t.place.ID == place.ID && p.recent(t.Done.On) {
			list = append(list, t)
		}
	}
	return list
}

// recent reports whether a day lies in the two weeks before the block.
func (p *planner) recent(on unit.Day) bool {
	return on.Before(p.block.Starts) && p.block.Starts.Sub(on) <= loggedDays
}

// better reports whether a set is the better source: one that may raise before one that may not, then the higher estimate.
func (l *loggedLoad) better(than *loggedLoad) bool {
	if than == nil || (l.held == "") != (than.held == "") {
		return than == nil || l.held == ""
	}
	return l.max.Or(0) > than.max.Or(0)
}

// estimate is what a logged line says of the maximum; nil where it says nothing.
func (p *planner) estimate(t *told) *loggedLoad {
	reps, doubted := t.best()
	if !reps.OK() || !p.counts(t) {
		return nil
	}
	l := p.estimateFrom(t, reps.Named(t.id("reps")), "")
	if l != nil && doubted {
		l.held = basis.Say("more than {a} repetitions to failure: doubted", float64(formula.OneRMDoubtedAbove))
	}
	return l
}

// counts reports whether a line may give a load: its reserve was told, and a weight that the client found, twice.
func (p *planner) counts(t *told) bool {
	return t.Reserve.OK() && (t.dose.Plates.OK() || p.toldAgain(t))
}

// estimateFrom is what one set of a line says of the maximum, its ids beginning with name; nil where it says nothing.
func (p *planner) estimateFrom(t *told, reps basis.Num[unit.Count], name string) *loggedLoad {
	l := &loggedLoad{on: t.Done.On, reach: t.dose.Range, held: p.restless(t.Done.On)}
	l.moved = finding.Moved(t.id("moved"), t.Load.Named(t.id("plates")).On(l.on), t.place, t.device, p.plan.body(t.asked.Exercise)).On(l.on)
	n := basis.Try2(t.id(name+"to-failure"), formula.ByToFailure, formula.ToFailure, reps.On(l.on), t.Reserve.Named(t.id("reserve")).On(l.on))
	if t.dose.Dose.RepsTo != nil && n.Or(0) > formula.OneRMRefusedAbove {
		n = basis.Of1(t.id(name+"counted"), byCounted, func(n unit.Count) unit.Count { return min(n, formula.OneRMRefusedAbove) }, n)
	}
	l.max, l.span = t.asked.Way.OneRM(t.id(name+"one-rm"), l.moved, n).On(l.on), finding.SpanOf(t.id(name+"one-rm"), l.moved, n)
	if !l.max.OK() {
		return nil
	}
	return l
}

// id names a number of a logged line.
func (t *told) id(quantity string) string {
	nth := ""
	if t.nth > 1 {
		nth = fmt.Sprint(t.nth)
	}
	return fmt.Sprintf("%s.%s.%s.logged%s-%s", t.Do, t.Side, t.Done.On, nth, quantity)
}

// best is the set of a line with the most repetitions that can be trusted, else the least doubtful.
func (t *told) best() (reps basis.Num[unit.Count], doubted bool) {
	for _, r := range t.Reps {
		n, most := r.Or(0)+t.Reserve.Or(0), formula.OneRMDoubtedAbove
		switch {
		case r.Or(0) < 1:
		case n <= most && (!reps.OK() || doubted || r.Or(0) > reps.Or(0)):
			reps, doubted = r, false
		case n > most && (!reps.OK() || doubted && r.Or(0) < reps.Or(0)):
			reps, doubted = r, true
		}
	}
	return reps, doubted
}

// toldAgain reports whether a weight that the client found was told on a second day too, and not half of it: a slip of the
// finger there has nothing else to be held against.
func (p *planner) toldAgain(t *told) bool {
	for i := range p.told {
		o := &p.told[i]
		if o.Do == t.Do && o.Side == t.Side && o.spoilt == "" && o.Done.On != t.Done.On && float64(o.Load.Or(0)) > farBelow*float64(t.Load.Or(0)) {
			return true
		}
	}
	return false
}

// restless says why a set of a day raises nothing: the knee was not calm, or nobody told (rules 22).
func (p *planner) restless(on unit.Day) basis.Said { return restless(p.found, on) }

func restless(f *finding.Findings, on unit.Day) basis.Said {
	switch why, asked := unrest(f, on); {
	case why != "":
		return why
	case !asked:
		return basis.Say("how the knee was on {a} and the morning after was not told", on)
	}
	return ""
}

// unrest says what the client told against the knee of a day, and whether anything of its pain was told.
func unrest(f *finding.Findings, on unit.Day) (why basis.Said, asked bool) {
	for i := range f.Reports {
		r := &f.Reports[i]
		if r.On != on && r.On != on.AddDays(1) {
			continue
		}
		if r.Swelling == client.MoreSwelling || r.Swelling == client.MuchMoreSwelling {
			return basis.Say("{a} on {b}", swellingSaid(r.Swelling), r.On), true
		}
		if r.On != on {
			continue
		}
		asked = r.Pain.OK() && r.Morning.OK()
		if len(painful(r)) > 0 {
			return basis.Say("pain on {a}", on), true
		}
	}
	return "", asked
}

// byCounted: of a range of repetitions more than can be estimated from may be done; that many were shown.
var byCounted = basis.Rule{Name: "no more than 15 to failure count", Sum: "min($1, 15)", Source: "no estimate above 15 (rules 20)"}

var (
	byHeld = basis.Rule{Name: "no more than was logged", Sum: "min($1, $2)", Source: "tool default (rules 22, 23)"}
	byStep = basis.Rule{Name: "a step up from a logged set: 10 % at most", Sum: "min($1, $2 × 1.1)", Source: "ACSM 2009: 2 to 10 %"}
)

// stepUp holds a load against the logged set that it comes from (rules 23). The load itself is the one at which the asked
// repetitions and reserve are predicted, and cutting it adds to them: so a step up is predicted to be done. What is left is
// how far it may go: not at all from a set that is doubted or hurt, and by a tenth at most.
func (l *loader) stepUp(load basis.Num[unit.Kilograms], w *WeekDose) basis.Num[unit.Kilograms] {
	switch {
	case l.logged == nil:
		return load
	case w.Dose.RepsTo != nil:
		return l.repsFirst(load, w)
	case load.Or(0) <= l.logged.moved.Or(0):
		return load
	case l.logged.held != "":
		return l.asLogged(load, w, l.logged.held)
	}
	return basis.Of2(l.weekID(w.Week, "step-up"), byStep, func(a, b unit.Kilograms) unit.Kilograms {
		return min(a, unit.Kilograms(float64(b)*float64(1+mostStep/100)))
	}, load, l.logged.moved)
}

// asLogged keeps a load from going above the logged one.
func (l *loader) asLogged(load basis.Num[unit.Kilograms], w *WeekDose, because basis.Said) basis.Num[unit.Kilograms] {
	return basis.Of2(l.weekID(w.Week, "as-logged"), byHeld, func(a, b unit.Kilograms) unit.Kilograms { return min(a, b) }, load, l.logged.moved).Because(because)
}

// span is what all equations say of the set behind a load; empty where there is none.
func (l *loader) span() finding.Span {
	switch {
	case l.logged != nil:
		return l.logged.span
	case l.lift != nil:
		return l.lift.OfSide(l.side).Span
	}
	return finding.Span{}
}

// source is the maximum of the exercise's own behind a load: of the logged set, else of the lift.
func (l *loader) source() (basis.Num[unit.Kilograms], basis.Said) {
	switch {
	case l.logged != nil:
		return l.logged.max, ""
	case l.lift == nil && l.nowhere():
		return basis.Num[unit.Kilograms]{}, "the lift does not say on which device"
	case l.lift == nil:
		return basis.Num[unit.Kilograms]{}, "no lift of this exercise on this machine"
	}
	own := l.lift.OfSide(l.side).OneRM
	return own, own.Why()
}

// nowhere reports whether a lift of the exercise stands at this place without a device.
func (l *loader) nowhere() bool {
	return slices.ContainsFunc(l.found.Lifts, func(t finding.LiftTest) bool {
		return t.Exercise == l.e.ID && t.Place == l.place.ID && t.Device == "" && t.OfSide(l.side).OneRM.OK()
	})
}

// tested is the range in which the source of a load was lifted, and whether there is a source.
func (l *loader) tested() (reach *unit.Reach, ok bool) {
	switch {
	case l.logged != nil:
		return l.logged.reach, true
	case l.lift != nil:
		return l.lift.Range, true
	}
	return nil, false
}
