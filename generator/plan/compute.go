package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Compute makes the plan of a client's newest block. Mistakes are what only shows when a client is held against its
// program; where one of them is wrong (not a question) there is no plan.
func Compute(clinic *client.Clinic, p *program.Program, c *client.Client) (*Plan, []Mistake) {
	plan, asked, mistakes := computed(clinic, p, c)
	if plan != nil {
		plan.Since = plan.sinceBlock(asked)
	}
	return plan, mistakes
}

// compute is Compute of a block that is only held against: nobody asks what was before it.
func compute(clinic *client.Clinic, p *program.Program, c *client.Client) (*Plan, []Mistake) {
	plan, _, mistakes := computed(clinic, p, c)
	return plan, mistakes
}

// computed is the plan, and the one of the block before where logs tell of it.
func computed(clinic *client.Clinic, p *program.Program, c *client.Client) (*Plan, *Plan, []Mistake) {
	b := c.Block()
	if b == nil {
		noBlock := Mistake{At: c.At, What: "there is no block yet", Instead: "begin one by: paceleaf start block " + c.Code + " --on DATE", Ask: true}
		return nil, nil, append(noEvent(p, c), noBlock)
	}
	if wrong := noEvent(p, c); wrong != nil {
		return nil, nil, wrong
	}
	event := c.Event(p.CountsFrom, b.Starts)
	mistakes := held(p, c, b, event)
	knees := gatherKnees(p, c, event, b.Starts)
	for _, side := range knees.sides() {
		mistakes = append(mistakes, knees.of[side].contradictions()...)
		mistakes = append(mistakes, knees.of[side].saidTogether(b.Starts)...)
	}
	lifted, unsure := liftsOnDevices(clinic, p, c)
	tested, refused := knees.refusals(p, lifted)
	mistakes = slices.Concat(mistakes, unsure, refused)
	mistakes = append(mistakes, unknownLogged(p, c)...)
	if wrong(mistakes) {
		return nil, nil, mistakes
	}
	asked, told, questions := gatherLogs(clinic, p, c, b)
	plan := assemble(clinic, p, c, tested, b, event, knees, logs{asked, told})
	mistakes = slices.Concat(mistakes, questions, plan.mistakes, plan.cameBack(asked))
	if wrong(mistakes) {
		return nil, nil, mistakes
	}
	return plan, asked, slices.Concat(mistakes, guardian(plan), stageAhead(plan), openedAhead(plan), askSurgeon(plan), moreSessions(plan))
}

// noEvent is the mistake of a client without the event that the program counts from.
func noEvent(p *program.Program, c *client.Client) []Mistake {
	if c.Event(p.CountsFrom, unit.Day{}) != nil {
		return nil
	}
	write := fmt.Sprintf("procedure = %q", p.CountsFrom)
	if p.CountsFrom == string(client.Injury) || p.CountsFrom == string(client.Start) {
		write = fmt.Sprintf("kind = %q", p.CountsFrom)
	}
	return []Mistake{{At: c.At.At("event"), What: fmt.Sprintf("program %s counts from %s, and no such event is typed", p.ID, p.CountsFrom),
		Instead: "write an [[event]] with " + write + ", or choose another program: README.md lists what each counts from"}}
}

// wrong reports whether one of them is a mistake and not a question.
func wrong(mistakes []Mistake) bool {
	return slices.ContainsFunc(mistakes, func(m Mistake) bool { return !m.Ask })
}

// held holds a client's names and days against its program.
func held(p *program.Program, c *client.Client, b *client.Block, event *client.Event) (wrong []Mistake) {
	wrong = append(unknownIDs(p, c, event, b.Starts), oldWaivers(c, event, b.Starts)...)
	if b.Starts.Before(event.Date) {
		wrong = append(wrong, Mistake{At: b.At.At("starts"), What: fmt.Sprintf("block %d begins before the event of %s", b.Number, event.Date), Instead: "mend the one or the other, or choose a program that counts from the injury, such as before-acl-reconstruction, until the event"})
	}
	for i := range c.Limits {
		if l := &c.Limits[i]; l.Side != "" && l.Side != unit.Both && l.Side != event.Side && event.Side != unit.Both && c.SoundOther() {
			wrong = append(wrong, Mistake{At: l.At.At("side"), Ask: true, What: fmt.Sprintf("this limit binds the sound %s leg, not the %s knee of the event", l.Side, event.Side), Instead: "see whether the side is right"})
		}
	}
	for _, o := range b.Overrides {
		if p.Exercises[o.Exercise] == nil {
			wrong = append(wrong, Mistake{At: o.At.At("exercise"), What: fmt.Sprintf("there is no exercise %q in program %s", o.Exercise, p.ID), Instead: p.Meant(o.Exercise)})
		}
	}
	for id, s := range c.Setups {
		if s.Device != "" && p.Exercises[id] == nil {
			wrong = append(wrong, Mistake{At: s.At, What: fmt.Sprintf("there is no exercise %q in program %s", id, p.ID), Instead: p.Meant(id), Ask: true})
		}
	}
	for i := range c.Tests {
		for j := range c.Tests[i].Lifts {
			if l := &c.Tests[i].Lifts[j]; p.Exercises[l.Exercise] == nil {
				wrong = append(wrong, Mistake{At: l.At.At("exercise"), What: fmt.Sprintf("there is no exercise %q in program %s", l.Exercise, p.ID), Instead: p.Meant(l.Exercise)})
			}
		}
	}
	return wrong
}

// assemble computes a plan from what has been found sound.
func assemble(clinic *client.Clinic, p *program.Program, c, tested *client.Client, b *client.Block, event *client.Event, k knees, l logs) *Plan {
	asOf := b.Starts
	findings := func(on unit.Day) *finding.Findings { return waysOf(p).Of(clinic, tested, event, on) }
	found := findings(asOf)
	withErrors(found, p.Errors)
	judge := judge{p: p, c: c, event: event, found: found, asOf: asOf}
	stage := judge.stage(findings)
	plan := &Plan{Clinic: clinic, Program: p, Client: c, Block: b, Event: event, AsOf: asOf, Found: found, Stage: stage}
	plan.Symptoms = symptoms(found, event.Date)
	newer := findings(lastWord(tested, b))
	plan.Symptoms.revised(c, b, event, symptoms(newer, event.Date))
	plan.Weeks = weeksOf(clinic, c, b, event, stage)
	for i := range b.Overrides {
		plan.Overrides = append(plan.Overrides, AppliedOverride{Override: &b.Overrides[i]})
	}
	planner := &planner{program: p, client: c, event: event, block: b, found: found, knees: k, phase: stage.Set,
		symptoms: plan.Symptoms, weeks: plan.Weeks, plan: plan, logs: l, things: map[string]string{}, missed: map[string]int{}}
	plan.Activities = judge.activities(clinic, k, plan.Symptoms, findings, newer)
	plan.Changes, plan.Trends = changes(found, p.Errors), trends(stage, plan.Activities, found, event)
	plan.Groups = groups(clinic, c, event, found, asOf)
	plan.Goals = judge.goals(k)
	plan.End, plan.Retest = judge.end(stage), plan.retest(tested)
	planner.fillSlots()
	planner.gentleDaily()
	plan.Minutes = planner.minutes()
	plan.Sessions = planner.pausedSessions(sessionDays(plan.Weeks, c.TrainingDays, stage.Set, stage.Since))
	plan.Dates = planner.dates()
	for _, side := range k.sides() {
		plan.Limits = append(plan.Limits, k.of[side].weighed(b)...)
	}
	plan.Worn = k.worn(b)
	for i := range plan.Limits {
		partLoad(&plan.Limits[i], found, fmt.Sprintf("limit-%d.%s", i+1, plan.Limits[i].Kind))
	}
	planner.flags()
	return plan
}

// weighed lists the windows that touch the block or lie ahead, and which of them make the ruling.
func (l *limits) weighed(b *client.Block) (list []Window) {
	end := b.Starts.AddWeeks(b.Weeks)
	for _, w := range l.windows {
		if !w.Lifts.IsZero() && !w.Lifts.After(b.Starts) {
			continue
		}
		shown := w.Window
		shown.Side = l.side
		shown.Touches = w.From.Before(end)
		first := later(w.From, b.Starts)
		days := []unit.Day{first}
		for _, d := range append(l.turns(w.Kind, first), end.AddDays(-1)) {
			if w.covers(d) {
				days = append(days, d)
			}
		}
		named := append(slices.Clone(w.On), w.Kind)
		for _, d := range days {
			r := l.rule(w.Kind, named, d)
			shown.Wins = shown.Wins || slices.Contains(r.by, w) && (r.binds(w) || w.Allow.Free() && r.allow.Free())
		}
		list = append(list, shown)
	}
	slices.SortStableFunc(list, func(a, b Window) int {
		if a.Kind != b.Kind {
			if a.Kind < b.Kind {
				return -1
			}
			return 1
		}
		return a.From.Compare(b.From)
	})
	return list
}

// withErrors sets beside each finding the standard error that the program knows of its measure.
func withErrors(found *finding.Findings, errors program.Errors) {
	for name, m := range found.Measures {
		if e := errorOf(errors, m); e.SEM != nil {
			sem := e.SEM.Value
			m.SEM, m.SEMSource = &sem, e.Rule.Source
			found.Measures[name] = m
		}
	}
}
