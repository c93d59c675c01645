package plan

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// A step up, and a week as a whole: advice for the worksheet, no load.

// step says what follows for a step up: whether two sessions earned one, and else what comes first (rules 23).
func (b *backer) step(line *BackLine, r *Prescription, all []*told) {
	last := all[len(all)-1]
	d := last.dose.Dose
	if last.spoilt != "" || !last.Load.OK() || d.Reps == nil || d.Reserve == nil {
		return
	}
	above := nextSetting("", last.Load, last.place, last.device)
	next := finding.Moved("", above, last.place, last.device, b.now.body(r.Exercise)).Or(0)
	moved := finding.Moved("", last.Load, last.place, last.device, b.now.body(r.Exercise)).Or(0)
	needed, err := formula.RepsNeeded(moved, next, unit.Count(*d.Reps+*d.Reserve))
	switch {
	case !above.OK():
		line.Step = "the machine ends here: repetitions first, then a slower tempo"
	case err != nil || needed > formula.OneRMRefusedAbove+crumbOfCount:
		line.Step = "the step of the machine is too coarse: a slower tempo, then a smaller plate"
	case restless(b.found, last.Done.On) != "":
		line.Step = basis.Say("no step: {a}", restless(b.found, last.Done.On))
	case d.RepsTo != nil:
		line.Step = last.stepOfRange(needed)
	case b.twice(all, *d.Reps):
		line.Step = "2 for 2: a step is earned"
	default:
		line.Step = basis.Say("repetitions first: one step up needs {a} to failure at this load", int(-unit.CutTo(-needed, 1)))
	}
}

// stepOfRange says what follows for a range of repetitions, where a step up needs so many to failure.
func (t *told) stepOfRange(needed unit.Count) basis.Said {
	top := *t.dose.Dose.RepsTo
	if fewest := t.toTheTop(t.dose); fewest >= 0 && needed <= t.Reps[fewest].Or(0)+t.Reserve.Or(0)+crumbOfCount {
		return basis.Say("every set reached {a}: a step is earned", top)
	}
	return basis.Say("repetitions first: every set to {a} with the reserve; one step up needs {b} to failure at this load", top, int(-unit.CutTo(-needed, 1)))
}

// twice reports whether the last sets of the last two sessions with one load were two repetitions above the goal, with the
// reserve that was asked.
func (b *backer) twice(all []*told, goal int) bool {
	if len(all) < 2 {
		return false
	}
	a, z := all[len(all)-2], all[len(all)-1]
	for _, t := range []*told{a, z} {
		if len(t.Reps) == 0 || t.dose.Dose.Reserve == nil || !t.Reserve.OK() || t.Reserve.Or(0) < unit.Count(*t.dose.Dose.Reserve) || restless(b.found, t.Done.On) != "" {
			return false
		}
	}
	earned, err := formula.TwoForTwo(unit.Count(goal), a.Reps[len(a.Reps)-1].Or(0), z.Reps[len(z.Reps)-1].Or(0))
	return err == nil && earned && a.Load.Or(0) == z.Load.Or(0) && a.Done.On != z.Done.On
}

// weekLoads are session load, monotony and strain of the weeks in which sessions were rated.
func (b *backer) weekLoads() (list []BackWeek) {
	rated := b.rated()
	for _, w := range b.Weeks {
		days, some := make([]basis.Num[unit.Points], 7), false
		for i, on := range daysFrom(w.Starts, 7) {
			n, told := rated[on]
			days[i], some = n, some || told
			if !told && !b.trainsOn(on) {
				days[i] = basis.Given("session-load.rest", byRest, unit.Points(0), "a day without a session")
			}
			if !told && b.trainsOn(on) {
				days[i] = basis.Refused[unit.Points]("session-load."+on.String()+".missing", formula.BySessionLoad, basis.Say("the session of {a} was not rated", on))
			}
		}
		if some {
			list = append(list, b.weekLoad(w.Number, days))
		}
	}
	return list
}

var byRest = basis.Rule{Name: "day of rest"}

func (b *backer) weekLoad(week int, days []basis.Num[unit.Points]) BackWeek {
	id := func(quantity string) string {
		return fmt.Sprintf("sessions.b%d-w%d.%s", b.Block.Number, week, quantity)
	}
	by := formula.ByWeekLoad
	by.Sum = sumRule("", len(days)).Sum
	w := BackWeek{Number: week, Load: basis.OfList(id("load"), by, formula.WeekLoad, days)}
	w.Monotony = basis.OfList(id("monotony"), formula.ByMonotony, func(d []unit.Points) (unit.Points, error) {
		m, err := formula.Monotony(d)
		return unit.Points(m), err
	}, days)
	w.Strain = basis.Try2(id("strain"), formula.ByStrain, func(load, m unit.Points) (unit.Points, error) {
		return formula.Strain(load, formula.Ratio(m))
	}, w.Load, w.Monotony)
	return w
}

// rated are the session loads by day; of two ratings of a day the later log's.
func (b *backer) rated() map[unit.Day]basis.Num[unit.Points] {
	rated := map[unit.Day]basis.Num[unit.Points]{}
	for i := range b.c.Logs {
		l := &b.c.Logs[i]
		for _, e := range l.Efforts {
			if l.Block != b.Block.Number {
				continue
			}
			stem := "session-load." + e.On.String()
			rated[e.On] = basis.Try2(stem+".load", formula.BySessionLoad, formula.SessionLoad, e.Rating.Named(stem+".rating").On(e.On), e.Length.Named(stem+".length").On(e.On)).On(e.On)
		}
	}
	return rated
}

// trainsOn reports whether a session that is not for every day stands on a day.
func (b *backer) trainsOn(on unit.Day) bool {
	for _, s := range b.Sessions {
		if s.Day == on && !s.Daily {
			return true
		}
	}
	return false
}
