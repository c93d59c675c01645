package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What came back: for the block before and for this one, what logs told of each exercise and leg against what was asked.
// It is for a talk and decides nothing: loads come from logged.go, holding back from report.go.

// CameBack is what logs told of one block.
type CameBack struct {
	Block   *client.Block
	Lines   []BackLine
	Weeks   []BackWeek
	NotDone []client.NotDone
	Also    []string // in the client's words
}

// BackLine is one exercise of one leg.
type BackLine struct {
	Exercise    *program.Exercise
	Side        unit.Side
	Role        string
	Asked, Done int                         // sessions of the weeks that logs reach
	Best        basis.Num[unit.Kilograms]   // best estimate of a logged set
	BestSet     basis.Said                  // as it was told: 50 kg × 10, 2 in reserve
	Tonnage     []basis.Num[unit.Kilograms] // of each week, from the first
	Completed   int                         // the newest week that was completed; 0: none
	Short       basis.Said                  // why the week after it, or the first, was not
	Last        bool                        // the completed week is the block's last: it earns no week of this block
	Denied      basis.Said                  // the rule that keeps the week after the completed one from being earned; empty: none
	Step        basis.Said                  // what follows for a step up: repetitions first, then tempo, then a smaller plate
}

// BackWeek is the load of a week's sessions as a whole.
type BackWeek struct {
	Number                 int
	Load, Monotony, Strain basis.Num[unit.Points]
}

// cameBack gathers what logs told, of the block before and of the plan's own.
func (p *Plan) cameBack(asked *Plan) (wrong []Mistake) {
	for _, of := range []*Plan{asked, p} {
		if of == nil {
			continue
		}
		c := p.Client
		var first *firstPage
		if of == p {
			first = p.firstPage()
		}
		list, more := tell(of, first, c, lastWritten(c))
		if of == p {
			wrong = more // those of the block before have been told
		}
		b := &backer{Plan: of, now: p, c: c, told: list}
		b.found = reportsOf(p, of)
		if back := b.back(first); len(back.Lines)+len(back.Weeks)+len(back.NotDone)+len(back.Also) > 0 {
			p.CameBack = append(p.CameBack, back)
		}
	}
	return wrong
}

func lastWritten(c *client.Client) (last unit.Day) {
	for _, l := range c.Logs {
		if l.Written.After(last) {
			last = l.Written
		}
	}
	return last
}

// reportsOf are all reports of a client, whenever they were told.
func reportsOf(p, of *Plan) *finding.Findings {
	alone := *p.Client
	alone.Tests = nil
	return finding.Of(p.Clinic, &alone, of.Event, lastWritten(p.Client))
}

// backer holds the lines of one block against its plan.
type backer struct {
	*Plan
	now   *Plan // whose page it is told on: its tests have weighed the body
	c     *client.Client
	told  []told
	found *finding.Findings
}

func (b *backer) back(first *firstPage) CameBack {
	back := CameBack{Block: b.Block}
	for i := range b.Prescriptions {
		if line, some := b.line(&b.Prescriptions[i]); some {
			back.Lines = append(back.Lines, line)
		}
	}
	back.Lines = append(back.Lines, b.ofFirstPage(first)...)
	for i := range b.c.Logs {
		l := &b.c.Logs[i]
		if l.Block != b.Block.Number {
			continue
		}
		for _, n := range l.NotDone {
			if !slices.ContainsFunc(back.NotDone, func(o client.NotDone) bool { return o.On == n.On && o.Do == n.Do && o.Why == n.Why }) {
				back.NotDone = append(back.NotDone, n)
			}
		}
		if l.Also != "" && !slices.Contains(back.Also, l.Also) {
			back.Also = append(back.Also, l.Also)
		}
	}
	back.Weeks = b.weekLoads()
	return back
}

// of are the lines of a prescription in a week; 0 for all weeks.
func (b *backer) of(r *Prescription, week int) (list []*told) {
	for i := range b.told {
		if t := &b.told[i]; t.asked == r && (week == 0 || t.week == week) {
			list = append(list, t)
		}
	}
	return list
}

func (b *backer) line(r *Prescription) (BackLine, bool) {
	all := b.of(r, 0)
	if len(all) == 0 {
		return BackLine{}, false
	}
	line := BackLine{Exercise: r.Exercise, Side: r.Side, Role: r.Role}
	last := 0
	for _, t := range all {
		last = max(last, t.week)
	}
	for week := 1; week <= last; week++ {
		asked, done := b.sessions(r, week), daysOf(b.of(r, week))
		line.Asked, line.Done = line.Asked+asked, line.Done+done
		line.Tonnage = append(line.Tonnage, b.tonnage(r, week))
		if short := b.short(r, week); short == "" {
			line.Completed, line.Short = week, ""
		} else if line.Short == "" {
			line.Short = basis.Say("week {a}: {b}", week, short)
		}
	}
	line.Last, line.Denied = line.Completed == b.Block.Weeks, b.denied(r, line.Completed)
	b.best(&line, all)
	b.step(&line, r, all)
	return line, true
}

// sessions are how many sessions of a week ask for a prescription.
func (b *backer) sessions(r *Prescription, week int) (n int) {
	if !slices.ContainsFunc(r.Weeks, func(w WeekDose) bool { return w.Week == week }) {
		return 0
	}
	for _, s := range b.Sessions {
		if s.Week == week && slices.Contains(r.Sessions, s.Session) {
			n++
		}
	}
	return n
}

func daysOf(list []*told) int {
	days := map[unit.Day]bool{}
	for _, t := range list {
		days[t.Done.On] = true
	}
	return len(days)
}

// short says why a week was not completed (rules 22): all sessions, all sets, all repetitions with the reserve, a calm knee.
func (b *backer) short(r *Prescription, week int) basis.Said {
	list := b.of(r, week)
	if asked, done := b.sessions(r, week), daysOf(list); done < asked {
		return basis.Say("{a} of {b} sessions", done, asked)
	}
	for _, t := range list {
		d := t.dose.Dose
		switch {
		case len(t.dose.Each) > 0: // sets that differ: only that the session was done is told
		case d.Sets != nil && setsOn(list, t.Done.On) < *d.Sets:
			return basis.Say("{a} of {b} sets on {c}", setsOn(list, t.Done.On), *d.Sets, t.Done.On)
		case d.Reps != nil && slices.ContainsFunc(t.Reps, func(n basis.Num[unit.Count]) bool { return n.Or(0) < unit.Count(*d.Reps) }):
			return basis.Say("fewer than {a} repetitions on {b}", *d.Reps, t.Done.On)
		case d.Reserve != nil && !t.Reserve.OK():
			return basis.Say("the reserve was not told on {a}", t.Done.On)
		case d.Reserve != nil && t.Reserve.Or(0) < unit.Count(*d.Reserve):
			return basis.Say("only {a} in reserve on {b}", float64(t.Reserve.Or(0)), t.Done.On)
		case r.Weeks[0].Plates.OK() && t.Load.Or(0) < r.Weeks[0].Plates.Or(0)-crumb:
			return basis.Say("less than the load of week 1 on {a}", t.Done.On)
		}
		if why := restless(b.found, t.Done.On); why != "" {
			return why
		}
	}
	return b.unrestIn(week)
}

// best is the set with the highest estimate; of what has no load, the newest count.
func (b *backer) best(line *BackLine, all []*told) {
	p := &planner{plan: b.now, found: b.found, logs: logs{told: b.told}}
	for _, t := range all {
		if t.spoilt != "" || t.dose == nil {
			continue
		}
		if l := p.estimate(t); l != nil && l.max.Or(0) > line.Best.Or(0) {
			reps, _ := t.best()
			line.Best = l.max
			line.BestSet = basis.Say("{a} × {b}, {c} in reserve", t.Load.Step().Typed, float64(reps.Or(0)), float64(t.Reserve.Or(0)))
		}
	}
	if line.BestSet == "" {
		line.BestSet = all[len(all)-1].counted()
	}
}
