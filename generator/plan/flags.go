package plan

import (
	"math"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Flags are what the therapist should look at before signing. None of them decides anything.

// referenceRise is by how much the other leg may have gained before the ratio is looked at anew (rules 14).
const referenceRise unit.Percent = 10

// staleLift is after how many weeks a lift behind a load is called old. Common practice, no source.
const staleLift = 8

// farReps is how far a planned set may lie from the tested repetitions (rules 20).
const farReps = 4

func (p *planner) flag(id, about, key string, values ...any) {
	p.plan.Flags = append(p.plan.Flags, Flag{ID: id, About: about, Says: basis.Say(key, values...)})
}

// say flags what has been said already.
func (p *planner) say(id, about string, says basis.Said) {
	p.plan.Flags = append(p.plan.Flags, Flag{ID: id, About: about, Says: says})
}

func (p *planner) flags() {
	s := p.plan.Stage
	if s.Ahead {
		p.flag("stage-ahead", s.Set.ID, "stage {a} was set ahead of what was earned ({b}): {c} was not passed on {d}", s.Set.ID, s.Earned.ID, strings.Join(missing(s.Short), ", "), s.Since)
	}
	if says := aheadOf(p.plan.Activities); says != "" {
		p.flag("opened-ahead", "activities", "opened ahead of what was earned: {a}", says)
	}
	if !s.Recorded {
		p.flag("stage-not-recorded", s.Set.ID, "no [[stage]] is recorded: the first phase is taken")
	}
	for _, d := range p.found.Doubts {
		p.say(d.Code, d.ID, d.Says)
	}
	for _, d := range p.found.Flags {
		p.say(d.Code, d.ID, d.Says)
	}
	p.flagTold()
	p.flagSurgeon()
	p.flagTightens()
	p.flagUnsound()
	p.flagGoals()
	p.flagReference()
	p.flagLooks()
	p.flagMeasured()
	p.flagLoads()
	p.flagMissed()
	p.flagSteps()
	p.flagDays()
	p.flagSessions()
	p.flagRuns()
	for _, o := range p.plan.Overrides {
		if !o.Applied {
			p.flag("override-without-effect", o.Override.Exercise, "the override of {a} changes nothing in this block", o.Override.Exercise)
		}
	}
	for _, w := range p.knees.main().windows {
		if w.Gap && !w.Lifts.IsZero() && w.Lifts.After(p.block.Starts) {
			p.flag("gap", string(w.Kind), "no row covers {a} before {b}: closed", w.Kind, w.Lifts)
		}
	}
}

// flagTold says what the client told of one session of the block. The page stays as it is, for its flare plan says what to do;
// that the therapist hears of it is what the page promises.
func (p *planner) flagTold() {
	for _, g := range p.plan.Symptoms.Told {
		p.flag("told-in-block", "report", "{a}: the page stays as it is; ask the client how it went, and call a hold where it asks for one", g.Because)
	}
}

// flagUnsound says what stands in the place of a reference that is not sound, and whether the therapist has confirmed it.
func (p *planner) flagUnsound() {
	if p.client.SoundOther() {
		return
	}
	confirmed, how := basis.Said("not confirmed"), basis.Said(howToConfirm)
	if r := (judge{c: p.client, event: p.event, asOf: p.plan.AsOf}).reference(); r != nil {
		confirmed = basis.Say("confirmed by {a} on {b} ({c})", r.By, r.From, r.Reason)
		how = ""
	}
	p.say("reference-not-sound", "other leg", basis.Listed(basis.Say("the other leg is no sound reference ({a}): symmetry opens nothing", p.client.OtherLeg), how))
	for _, name := range p.found.Order {
		if m := p.found.Measures[name]; m.OK && strings.HasSuffix(name, ".preop-ratio") {
			p.flag("reference-before-event", name, "the operated leg has {a} % of what the other leg had before the operation, on {b}; {c}", m.Number, m.On, confirmed)
		}
	}
}

// tenths are what is read off a torque.
func tenths(v float64) float64 { return math.Round(v*10) / 10 }

// flagReference says where the other leg got much stronger: nobody is called worse because of it.
func (p *planner) flagReference() {
	newest := map[string]float64{}
	for i := range p.found.Strength {
		t := &p.found.Strength[i]
		torque, ok := t.OfSide(p.event.Side.Opposite()).Torque.Value()
		if !ok {
			continue
		}
		key := t.Test + t.Conditions
		if before, known := newest[key]; known && float64(torque) > before*(1+float64(referenceRise)/100) {
			p.flag("reference-rising", t.Test+".lsi", "the other leg rose from {a} to {b} N·m on {c}: read the absolute values of both legs", tenths(before), tenths(float64(torque)), t.On)
		}
		newest[key] = float64(torque)
	}
}

// flagLooks says where the knee has not been looked at for long.
func (p *planner) flagLooks() {
	switch on := p.symptoms.On; {
	case on.IsZero():
		p.flag("knee-not-looked-at", "effusion", "neither swelling nor pain has been typed since the event")
	case p.block.Starts.Sub(on) > staleLook:
		p.flag("knee-looked-at-long-ago", "effusion", "swelling and pain were last typed on {a}", on)
	}
}

// flagLoads says where a load rests on an old lift or on one of other repetitions.
func (p *planner) flagLoads() {
	for _, r := range p.plan.Prescriptions {
		if !r.OneRM.OK() || r.LiftedOn.IsZero() {
			continue
		}
		about := r.Exercise.ID + "." + string(r.Side)
		if r.LiftedOn.AddWeeks(staleLift).Before(p.block.Starts) {
			p.flag("stale-lift", about, "the lift behind the load is of {a}", r.LiftedOn)
		}
		d := r.Weeks[0].Dose
		for i := range p.found.Lifts {
			l := &p.found.Lifts[i]
			leg := l.OfSide(r.Side)
			if l.Exercise != r.Exercise.ID || l.On != r.LiftedOn || d.Reps == nil || d.Reserve == nil || !leg.Reps.OK() {
				continue
			}
			tested := int(leg.Reps.Or(0) + leg.Reserve.Or(0))
			if planned := *d.Reps + *d.Reserve; planned-tested > farReps || tested-planned > farReps {
				p.flag("far-from-tested", about, "planned for {a} repetitions to failure, tested at {b}", planned, tested)
			}
		}
	}
}

// flagDays says where heavy days of one muscle lie closer than 48 hours (rules 26).
func (p *planner) flagDays() {
	heavy := map[string][]program.Muscle{}
	for _, r := range p.plan.Prescriptions {
		if r.Exercise.Heavy {
			for _, s := range r.Sessions {
				heavy[s] = append(heavy[s], r.Exercise.Trains...)
			}
		}
	}
	inTurn := slices.DeleteFunc(slices.Clone(p.plan.Sessions), func(s SessionDay) bool { return s.Daily })
	for i := 1; i < len(inTurn); i++ {
		a, b := inTurn[i-1], inTurn[i]
		if b.Day.Sub(a.Day) >= 2 {
			continue
		}
		for _, m := range heavy[a.Session] {
			for _, n := range heavy[b.Session] {
				if m == n {
					p.flag("heavy-days-too-close", string(m), "{a} is worked hard on {b} and on {c}: 48 hours should lie between", m, a.Day, b.Day)
					return
				}
			}
		}
	}
}

// Running (rules 26): every other day, at most four times a week. Source: Delaware running table, Ann Joint 2018;3:40.
const (
	runsApart   = 2 // days
	runsInAWeek = 4
)

// flagRuns says where running days lie closer than every other day, or where a week has too many.
func (p *planner) flagRuns() {
	var runs []SessionDay
	for _, s := range p.plan.Sessions {
		for _, r := range p.plan.Prescriptions {
			if r.Exercise.Names(unit.Running) && slices.Contains(r.Sessions, s.Session) &&
				slices.ContainsFunc(r.Weeks, func(w WeekDose) bool { return w.Week == s.Week }) {
				runs = append(runs, s)
				break
			}
		}
	}
	inWeek := map[int]int{}
	for i, s := range runs {
		inWeek[s.Week]++
		if i > 0 && s.Day.Sub(runs[i-1].Day) < runsApart && s.Day != runs[i-1].Day {
			p.flag("running-days-too-close", "running", "running on {a} and on {b}: every other day at most", runs[i-1].Day, s.Day)
			return
		}
		if inWeek[s.Week] > runsInAWeek {
			p.flag("too-many-runs", "running", "more than {a} running days in week {b}", runsInAWeek, s.Week)
			return
		}
	}
}
