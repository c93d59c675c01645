package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// Symptoms (rules 27 to 29): every look at the knee up to the block's first day is weighed; the strictest signal of the
// newest looks wins. Swelling has a memory: after a pause it takes a trace to resume, and a second 2+ calls the clinician.

// Limits of pain on the 0 to 10 scale. Source: our composite of published pain rules, tool default (rules 29).
const (
	painGoOn   unit.Points = 2 // up to here go on
	painStepUp unit.Points = 5 // above painGoOn up to here stay; above it step back
)

// staleLook is after how many days the knee should be looked at again before a block. Common practice, no source.
const staleLook = 14

// symptoms weighs the looks at the knee after the event.
func symptoms(f *finding.Findings, since unit.Day) Symptoms {
	s := Symptoms{Action: NoAction}
	var swelling swellingCourse
	var pain painCourse
	for i := range f.Knees {
		k := &f.Knees[i]
		if k.On.Before(since) {
			continue
		}
		if k.Effusion != "" {
			swelling.look(k)
		}
		if pain.look(k) || k.Effusion != "" {
			s.On = k.On
		}
	}
	s.Signals = append(s.Signals, swelling.signals()...)
	s.Signals = append(s.Signals, pain.signals()...)
	s.Signals = append(s.Signals, stoppedForPain(f, since)...)
	s.Signals = append(s.Signals, reported(f, since)...)
	s.strictest()
	return s
}

// strictest takes the strictest signal of those that speak of the whole knee; exercises have their own.
func (s *Symptoms) strictest() {
	all := s.Signals
	s.Signals = nil
	for _, g := range all {
		s.take(g)
	}
}

// take weighs one more signal: the strictest wins, of two alike the one that holds longer.
func (s *Symptoms) take(g Signal) {
	s.Signals = append(s.Signals, g)
	if g.Exercise == "" {
		s.weigh(g)
		return
	}
	if !slices.Contains(s.Exercises, g.Exercise) {
		s.Exercises = append(s.Exercises, g.Exercise)
	}
	if s.Action == NoAction {
		s.Level = "exercise"
	}
}

// weigh lets a signal speak for the knee where it is stricter, or as strict and of more than one session.
func (s *Symptoms) weigh(g Signal) {
	if g.Action.Rank() > s.Action.Rank() || g.Action == s.Action && s.Level == "session" && g.Level != "session" {
		s.Action, s.Because, s.Level = g.Action, g.Because, g.Level
	}
}

// swellingCourse is the course of the sweep test from look to look.
// Source: effusion decision table, IJSPT 2018;13:422 Table 5; a rise by a grade: common practice.
type swellingCourse struct {
	last   *finding.KneeDay
	before unit.Grade // at the look before the last
	held   int        // how many looks the pause has lasted: 0 none, 1 the look that began it
	called bool       // the clinician was called, and no look since was calmer
	action Action
}

func (c *swellingCourse) look(k *finding.KneeDay) {
	grade := k.Effusion.Rank()
	two, one, trace := unit.Grade2.Rank(), unit.Grade1.Rank(), unit.GradeTrace.Rank()
	if c.held > 0 && grade < two {
		if grade = k.AtWorst().Rank(); grade >= two {
			return // a look that may have missed as much ends no pause
		}
	}
	switch {
	case c.held == 0 && grade >= two:
		c.action, c.held = Pause, 1
	case c.held == 0:
		c.action = NoAction
		if c.last != nil && grade > c.last.Effusion.Rank() {
			c.action = Stay
		}
	case c.held == 1 && grade >= two:
		c.action, c.held = Pause, 2
	case c.held == 1 && grade == one:
		c.action, c.held = Stay, 2
	case c.held >= 2 && grade >= two:
		c.action, c.held, c.called = Contact, c.held+1, true
	case c.called && grade == one:
		c.action, c.called = Stay, false // contact is a pause: what follows it begins as after one
	case grade <= trace || c.held >= 2 && grade <= one:
		c.action, c.held, c.called = NoAction, 0, false
	}
	if c.last != nil {
		c.before = c.last.Effusion
	}
	c.last = k
}

// signals says what the newest look at swelling asks for.
func (c *swellingCourse) signals() []Signal {
	if c.last == nil || c.action == "" || c.action == NoAction {
		return nil
	}
	g := Signal{Action: c.action, Level: "block", On: c.last.On, Code: "effusion", Because: basis.Say("effusion {a} on {b}", c.last.Effusion, c.last.On)}
	if c.action == Stay {
		g.Level = "week"
		if c.held == 0 {
			g.Code = "effusion-rise"
			g.Because = basis.Say("effusion rose from {a} to {b} on {c}", c.before, c.last.Effusion, c.last.On)
		}
	}
	if c.action == Contact {
		g.Because = basis.Say("{a}, again after a pause", g.Because)
	}
	return []Signal{g}
}

// painCourse is the newest answer to each question about pain: one that was not asked again takes nothing away (rules 29).
type painCourse struct{ number, kind finding.KneeDay }

// look takes what was asked on a day; it reports whether anything was.
func (c *painCourse) look(k *finding.KneeDay) bool {
	switch {
	case k.Pain.OK():
		c.number = finding.KneeDay{On: k.On, Pain: k.Pain, Morning: k.Morning}
	case k.Morning.OK():
		c.number.On, c.number.Morning = k.On, k.Morning
	}
	if k.PainKind != "" || painless(k.Pain) {
		c.kind = finding.KneeDay{On: k.On, PainKind: k.PainKind}
	}
	return k.Pain.OK() || k.Morning.OK() || k.PainKind != ""
}

// painless reports whether pain was asked and there was none, which is of no kind.
func painless(pain basis.Num[unit.Points]) bool { return pain.OK() && pain.Or(1) == 0 }

func (c *painCourse) signals() []Signal {
	return append(painSignals(&c.kind), painSignals(&c.number)...)
}

// painSignals weighs kind before number, and the next morning.
func painSignals(k *finding.KneeDay) (list []Signal) {
	add := func(a Action, code string, because basis.Said) {
		list = append(list, Signal{Action: a, Level: "week", On: k.On, Code: code, Because: basis.Say("{a} on {b}", because, k.On)})
	}
	if client.PainKind(k.PainKind).Alarming() {
		add(StepBack, "pain-kind", basis.Say("pain of the {a} kind", basis.Said(k.PainKind)))
	}
	worst, asked := k.Pain.Value()
	morning, askedMorning := k.Morning.Value()
	switch {
	case askedMorning && morning > painGoOn:
		add(StepBack, "pain-morning", basis.Say("pain {a} the next morning", float64(morning)))
	case asked && worst > painGoOn && !askedMorning: // above painStepUp too: the worse pain must not do less
		add(Pause, "pain-morning-unknown", basis.Say("pain {a}, and the next morning was not asked", float64(worst)))
	case asked && worst > painStepUp:
		add(StepBack, "pain-high", basis.Say("pain {a}", float64(worst)))
	case asked && worst > painGoOn:
		add(Stay, "pain-middle", basis.Say("pain {a}, settled by next morning", float64(worst)))
	}
	return list
}

// stoppedForPain counts a test that was stopped for pain as pain above 5 for that exercise, while it is the newest.
func stoppedForPain(f *finding.Findings, since unit.Day) (list []Signal) {
	newest := map[string]finding.LiftTest{}
	for _, l := range f.Lifts {
		newest[l.Exercise] = l
	}
	for _, l := range f.Lifts {
		n := newest[l.Exercise]
		if n.On == l.On && !l.On.Before(since) && (n.Left.StoppedForPain || n.Right.StoppedForPain || n.Both.StoppedForPain) {
			list = append(list, Signal{Action: StepBack, Level: "exercise", Exercise: l.Exercise, On: l.On, Code: "stopped-for-pain",
				Because: basis.Say("{a} was stopped for pain on {b}", l.Exercise, l.On)})
		}
	}
	return list
}
