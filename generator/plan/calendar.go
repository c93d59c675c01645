package plan

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// weeksOf lays out the training weeks of a block: seven days from its first day on. A week with a day away is spent at
// the other place (rules 3).
func weeksOf(clinic *client.Clinic, c *client.Client, b *client.Block, event *client.Event, stage StageState) (list []Week) {
	for i := range b.Weeks {
		w := Week{Number: i + 1, Starts: b.Starts.AddWeeks(i), Ends: b.Starts.AddWeeks(i + 1).AddDays(-1), Place: clinic.Place(c.Place)}
		w.SinceEvent = w.Starts.WeeksSince(event.Date)
		w.PhaseWeek = max(1, w.Starts.WeeksSince(stage.Since)+1)
		for j := range c.Away {
			if a := &c.Away[j]; !a.From.After(w.Ends) && !a.Until.Before(w.Starts) {
				w.Away, w.Place = a, clinic.Place(a.Place)
			}
		}
		list = append(list, w)
	}
	return list
}

// sessionDays puts the sessions of the phase on the days of the block: daily ones on every day, the others on the
// training days, in turn, across blocks: the turn counts from the day the stage was recorded.
func sessionDays(weeks []Week, days []client.Weekday, phase *program.Phase, since unit.Day) (list []SessionDay) {
	var daily, inTurn, apart []program.Session
	for _, s := range phase.Sessions {
		switch {
		case s.Daily:
			daily = append(daily, s)
		case s.EveryDays > 0:
			apart = append(apart, s)
		default:
			inTurn = append(inTurn, s)
		}
	}
	turn := 0
	if len(weeks) > 0 {
		for d := since; d.Before(weeks[0].Starts); d = d.AddDays(1) {
			if trains(days, d) {
				turn++
			}
		}
	}
	for _, w := range weeks {
		for _, d := range daysFrom(w.Starts, 7) {
			for _, s := range daily {
				list = append(list, SessionDay{Day: d, Week: w.Number, Session: s.ID, Title: s.Title, Daily: true})
			}
			for _, s := range apart {
				if fallsOn(s, d, since) {
					list = append(list, SessionDay{Day: d, Week: w.Number, Session: s.ID, Title: s.Title})
				}
			}
			if len(inTurn) == 0 || !trains(days, d) {
				continue
			}
			s := inTurn[turn%len(inTurn)]
			list = append(list, SessionDay{Day: d, Week: w.Number, Session: s.ID, Title: s.Title})
			turn++
		}
	}
	return list
}

// fallsOn reports whether a session that is done every so many days is done on a day.
func fallsOn(s program.Session, d, since unit.Day) bool {
	day := d.Sub(since) - max(0, s.FromDay-1)
	return day >= 0 && day%s.EveryDays == 0
}

func trains(days []client.Weekday, d unit.Day) bool {
	return slices.Contains(days, client.Weekday(strings.ToLower(d.Weekday().String()[:3])))
}

// dates are the days that matter: limits that loosen or lift, activities' earliest days, the visit, the block's end.
func (p *planner) dates() (list []DateLine) {
	for _, side := range p.knees.sides() {
		list = append(list, p.knees.of[side].changes(p.block.Starts)...)
	}
	for _, a := range p.plan.Activities {
		if a.State == "closed" && !a.NotBefore.IsZero() {
			list = append(list, DateLine{On: a.NotBefore, Kind: "not-before", What: a.Activity.ID, Title: a.Activity.Title, Missing: a.Missing})
		}
	}
	for i, w := range p.weeks {
		if w.Away != nil && (i == 0 || p.weeks[i-1].Away != w.Away) {
			list = append(list, DateLine{On: w.Away.From, Kind: "away", What: w.Away.Place})
		}
	}
	if p.block.NextVisit != nil {
		list = append(list, DateLine{On: *p.block.NextVisit, Kind: "visit"})
	}
	list = append(list, DateLine{On: p.block.Starts.AddWeeks(p.block.Weeks).AddDays(-1), Kind: "ends"})
	slices.SortStableFunc(list, func(a, b DateLine) int {
		order := cmp.Or(a.On.Compare(b.On), strings.Compare(a.Kind, b.Kind))
		if a.Kind == "not-before" {
			return order // steps of sport stay in the program's order
		}
		return cmp.Or(order, strings.Compare(a.What, b.What))
	})
	return list
}

// changes are the days after the first one on which what is allowed of a kind becomes wider, or stricter, with what holds from
// then.
func (l *limits) changes(first unit.Day) (list []DateLine) {
	for _, about := range l.subjects() {
		before := l.rule(about.kind, about.named, first)
		for _, d := range l.turns(about.kind, first) {
			now := l.rule(about.kind, about.named, d)
			if sameAllowance(before.allow, now.allow) {
				continue
			}
			list = append(list, changed(DateLine{Side: l.side, On: d, What: string(about.kind), Title: string(about.on)}, before, now))
			before = now
		}
	}
	return list
}

// changed is the line of a day on which a ruling changes: lifts, loosens, or tightens.
func changed(line DateLine, before, now ruling) DateLine {
	line.Kind, line.SetBy = "lifts", before.setBy()
	if now.allow.Free() {
		return line
	}
	allow := now.allow
	line.Kind, line.Allow = "loosens", &allow
	if !wider(before.allow, now.allow) {
		line.Kind, line.SetBy = "tightens", now.setBy()
	}
	return line
}

// subject is what limits speak of: a kind, perhaps only of exercises that also name another.
type subject struct {
	kind  unit.Kind
	on    unit.Kind
	named []unit.Kind
}

func (l *limits) subjects() (list []subject) {
	seen := map[string]bool{}
	for _, w := range l.windows {
		s := subject{kind: w.Kind, named: []unit.Kind{w.Kind}}
		if len(w.On) > 0 {
			s.on, s.named = w.On[0], append(slices.Clone(w.On), w.Kind)
		}
		if key := string(s.kind) + "/" + string(s.on); !seen[key] {
			seen[key] = true
			list = append(list, s)
		}
	}
	slices.SortStableFunc(list, func(a, b subject) int {
		return cmp.Or(strings.Compare(string(a.kind), string(b.kind)), strings.Compare(string(a.on), string(b.on)))
	})
	return list
}

// turns are the days after first on which a window of the kind begins or lifts.
func (l *limits) turns(k unit.Kind, first unit.Day) (days []unit.Day) {
	for _, w := range l.windows {
		for _, d := range []unit.Day{w.From, w.Lifts} {
			if w.Kind == k && d.After(first) && !slices.Contains(days, d) {
				days = append(days, d)
			}
		}
	}
	slices.SortFunc(days, unit.Day.Compare)
	return days
}

func sortByDay[T any](list []T, day func(T) unit.Day) {
	slices.SortStableFunc(list, func(a, b T) int { return day(a).Compare(day(b)) })
}
