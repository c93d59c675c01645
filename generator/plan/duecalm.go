package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What the newest look says of tests that land or go all out (rules 9, 28): a knee that was swollen or sore is looked at first.

// look is the newest answer of each kind since the event, up to the day of the tests.
func (d *duer) look(due *Due) {
	for _, k := range waysOf(d.p).Of(d.clinic, d.c, d.event, d.on).Knees {
		if k.On.Before(d.event.Date) {
			continue
		}
		if k.Effusion != "" {
			due.LastSwelling, due.LastMissed = k.Effusion, k.EffusionHidden
		}
		if k.Pain.OK() {
			due.LastPain = k.Pain
		}
	}
}

// Restless says why no hop and no maximal test is made unless today's look is calmer: never looked at or asked, a look that may
// have missed more than a trace of swelling or saw more (rules 28), or pain above 2 (rules 29). Empty where the newest look was calm.
func (d Due) Restless() basis.Said {
	pain, asked := d.LastPain.Value()
	switch {
	case d.LastSwelling == "":
		return "swelling was not looked at since the event"
	case d.LastSwelling.Rank() > unit.GradeTrace.Rank():
		return basis.Say("effusion was {a} at the last look", d.LastSwelling)
	case d.LastMissed.Rank() > unit.GradeTrace.Rank():
		return basis.Say("effusion was {a} at the last look, which may have missed up to {b}", d.LastSwelling, d.LastMissed)
	case !asked:
		return "pain was not asked since the event"
	case pain > painGoOn:
		return basis.Say("pain was {a} at the last look", float64(pain))
	}
	return ""
}

// toFailure says why a lift that may be made may not go to failure yet; empty where it may.
func (d *duer) toFailure(e *program.Exercise) basis.Said {
	tester := d.tester()
	return tester.closed([]unit.Kind{unit.MaximalEffort}, e.Work, nil, nil)
}
