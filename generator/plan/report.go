package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// The client's own reports (rules 30). They may hold back or pause and never open: a calm report ends nothing, and no
// criterion reads one. A later test day that looked at the same thing puts a report aside. One bad evening does not hold
// four weeks: it is of level session, and holds the first week only; told on a second day it is of level week.

// Spans of a report, in days up to the day of the plan; both common practice, no source.
const (
	reportFresh  = 7  // a report that asks for no pause is weighed for so long
	reportRepeat = 14 // and one on another day within so long makes it a repeat
)

// looks are the newest test days that looked at swelling, that asked for pain, and that asked for its kind or found none.
type looks struct{ swelling, pain, kind unit.Day }

func looksOf(f *finding.Findings) (l looks) {
	for i := range f.Knees {
		if f.Knees[i].Effusion != "" {
			l.swelling = f.Knees[i].On
		}
		if f.Knees[i].Pain.OK() || f.Knees[i].Morning.OK() || f.Knees[i].PainKind != "" {
			l.pain = f.Knees[i].On
		}
		if f.Knees[i].PainKind != "" || painless(f.Knees[i].Pain) {
			l.kind = f.Knees[i].On
		}
	}
	return l
}

// reported weighs the reports from since on that no later test day has put aside.
func reported(f *finding.Findings, since unit.Day) (list []Signal) {
	l := looksOf(f)
	var swelling, pain []Signal
	for i := range f.Reports {
		r := &f.Reports[i]
		if r.On.Before(since) {
			continue
		}
		if !r.On.Before(l.swelling) {
			swelling = append(swelling, swollen(r)...)
		}
		for _, g := range painful(r) {
			if !r.On.Before(l.pain) || g.Code == "pain-kind" && !r.On.Before(l.kind) {
				pain = append(pain, g)
			}
		}
	}
	return append(standing(swelling, f.AsOf), standing(pain, f.AsOf)...)
}

// swollen is what a report of swelling asks for.
func swollen(r *finding.Report) []Signal {
	g := Signal{Level: "session", On: r.On, Reported: true, Because: basis.Say("{a} reported on {b}", swellingSaid(r.Swelling), r.On)}
	switch r.Swelling {
	case client.MoreSwelling:
		g.Action, g.Code = Stay, "report-swelling"
	case client.MuchMoreSwelling:
		g.Action, g.Code, g.Level = Pause, "report-swelling-much", "block" // until a test day has looked
	default:
		return nil
	}
	return []Signal{g}
}

func swellingSaid(s client.Swelling) basis.Said { return basis.Say("{a} swelling", s) }

// painful is what a report of pain asks for, by the rules of a test day.
func painful(r *finding.Report) (list []Signal) {
	k := finding.KneeDay{On: r.On, Pain: r.Pain, Morning: r.Morning, PainKind: string(r.Kind)}
	for _, g := range painSignals(&k) {
		g.Level, g.Reported, g.Because = "session", true, basis.Say("reported: {a}", g.Because)
		list = append(list, g)
	}
	return list
}

// standing keeps the newest day's signals and those that still count, and raises what was told on two days to the week.
func standing(all []Signal, asOf unit.Day) (list []Signal) {
	days := map[unit.Day]bool{}
	for _, g := range all {
		if asOf.Sub(g.On) <= reportRepeat {
			days[g.On] = true
		}
	}
	for _, g := range all {
		if g.Level == "session" && asOf.Sub(g.On) > reportFresh {
			continue
		}
		if g.Level == "session" && len(days) > 1 {
			g.Level = "week"
			g.Because = basis.Say("{a} (told on {b} days)", g.Because, len(days))
		}
		list = append(list, g)
	}
	return list
}

// in is what symptoms ask for in a week of the block, and why.
func (s *Symptoms) in(week int) (asked Action, because basis.Said) {
	asked = NoAction
	for _, g := range s.Signals {
		if g.Exercise == "" && g.counts(week) && g.Action.Rank() > asked.Rank() {
			asked, because = g.Action, g.Because
		}
	}
	return asked, because
}

// lasting is the strictest signal of more than one session, and why.
func (s *Symptoms) lasting() (asked Action, because basis.Said) {
	asked = NoAction
	for _, g := range s.Signals {
		if g.Exercise == "" && g.Level != "session" && g.Action.Rank() > asked.Rank() {
			asked, because = g.Action, g.Because
		}
	}
	return asked, because
}

// counts reports whether a signal holds in a week: of one session in the first alone; a pause that came to light later is of
// the whole page, anything less from its own week on.
func (g Signal) counts(week int) bool {
	if g.Level == "session" {
		return week == 1
	}
	return week >= g.Since || g.Action.Rank() >= Pause.Rank()
}
