package plan

import (
	"fmt"

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
	var felt *finding.KneeDay // the newest day on which pain was asked: a look at swelling alone says nothing of it
	for i := range f.Knees {
		k := &f.Knees[i]
		if k.On.Before(since) {
			continue
		}
		if k.Effusion != "" {
			swelling.look(k)
		}
		asked := k.Pain.OK() || k.Morning.OK() || k.PainKind != ""
		if asked {
			felt = k
		}
		if asked || k.Effusion != "" {
			s.On = k.On
		}
	}
	s.Signals = append(s.Signals, swelling.signals()...)
	if felt != nil {
		s.Signals = append(s.Signals, painSignals(felt)...)
	}
	s.Signals = append(s.Signals, stoppedForPain(f, since)...)
	s.Signals = append(s.Signals, reported(f, since)...)
	s.strictest()
	return s
}

// strictest takes the strictest signal of those that speak of the whole knee; exercises have their own.
func (s *Symptoms) strictest() {
	for _, g := range s.Signals {
		if g.Exercise != "" {
			s.Exercises = append(s.Exercises, g.Exercise)
			continue
		}
		s.weigh(g)
	}
	if s.Action == NoAction && len(s.Exercises) > 0 {
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
	action Action
}

func (c *swellingCourse) look(k *finding.KneeDay) {
	grade := k.Effusion.Rank()
	two, one, trace := unit.Grade2.Rank(), unit.Grade1.Rank(), unit.GradeTrace.Rank()
	if !k.EffusionValid && grade < two && c.held > 0 {
		return // a knee that does not straighten hides its swelling: such a look ends no pause
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
		c.action, c.held = Contact, c.held+1
	case grade <= trace || c.held >= 2 && grade <= one:
		c.action, c.held = NoAction, 0
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
	g := Signal{Action: c.action, Level: "block", On: c.last.On, Code: "effusion", Because: fmt.Sprintf("effusion %s on %s", c.last.Effusion, c.last.On)}
	if c.action == Stay {
		g.Level = "week"
		if c.held == 0 {
			g.Code = "effusion-rise"
			g.Because = fmt.Sprintf("effusion rose from %s to %s on %s", c.before, c.last.Effusion, c.last.On)
		}
	}
	if c.action == Contact {
		g.Because += ", again after a pause"
	}
	return []Signal{g}
}

// painSignals weighs kind before number, and the next morning.
func painSignals(k *finding.KneeDay) (list []Signal) {
	add := func(a Action, code, because string) {
		list = append(list, Signal{Action: a, Level: "week", On: k.On, Code: code, Because: because + " on " + k.On.String()})
	}
	if client.PainKind(k.PainKind).Alarming() {
		add(StepBack, "pain-kind", "pain of the "+k.PainKind+" kind")
	}
	worst, asked := k.Pain.Value()
	morning, askedMorning := k.Morning.Value()
	switch {
	case askedMorning && morning > painGoOn:
		add(StepBack, "pain-morning", fmt.Sprintf("pain %g the next morning", float64(morning)))
	case asked && worst > painStepUp:
		add(StepBack, "pain-high", fmt.Sprintf("pain %g", float64(worst)))
	case asked && worst > painGoOn && !askedMorning:
		add(Pause, "pain-morning-unknown", fmt.Sprintf("pain %g, and the next morning was not asked", float64(worst)))
	case asked && worst > painGoOn:
		add(Stay, "pain-middle", fmt.Sprintf("pain %g, settled by next morning", float64(worst)))
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
				Because: fmt.Sprintf("%s was stopped for pain on %s", l.Exercise, l.On)})
		}
	}
	return list
}
