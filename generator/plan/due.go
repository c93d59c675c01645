package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Due is what to test on a day: with last time's values as they were typed.
type Due struct {
	Day            []DueValue
	Strength       []DueTest
	Lifts          []DueTest
	Hops           []DueTest
	Standing       []DueTest // Y-balance and single-leg rise
	Questionnaires []DueTest
	LastSwelling   unit.Grade             // of the newest look since the event; empty: nobody looked
	LastMissed     unit.Grade             // swelling that this look may have missed; empty: none
	LastPain       basis.Num[unit.Points] // the worst pain, when it was last asked since the event
}

// DueTest is one test with the keys to fill in.
type DueTest struct {
	ID     string
	Closed basis.Said // why limits do not allow it yet for the operated leg
	Easy   basis.Said // of a lift: why it does not go to failure yet
	LastOn unit.Day
	Values []DueValue
}

// DueValue is a key of the test file and last time's value, as TOML; empty where there is none. Like is a value that could be one.
type DueValue struct{ Key, Last, Like string }

// DueTests gathers the tests that the criteria of the program measure and those that were made before.
func DueTests(clinic *client.Clinic, p *program.Program, c *client.Client, on unit.Day) Due {
	event := c.Event(p.CountsFrom, on)
	if event == nil {
		return Due{}
	}
	d := duer{clinic: clinic, p: p, c: c, event: event, on: on, limits: gatherKnees(p, c, event, on).main()}
	for i := range c.Tests {
		if !c.Tests[i].On.After(on) {
			d.days = append(d.days, &c.Tests[i])
		}
	}
	due := Due{Day: d.day(), Strength: d.strength(), Lifts: d.lifts(), Hops: d.hops(), Standing: d.standing(), Questionnaires: d.questionnaires()}
	d.look(&due)
	return due
}

type duer struct {
	clinic *client.Clinic
	p      *program.Program
	c      *client.Client
	event  *client.Event
	on     unit.Day
	limits *limits
	days   []*client.TestDay // up to the day, oldest first
}

// tester asks whether a test may be made on the day.
func (d *duer) tester() tester {
	return tester{limits: d.limits, p: d.p, c: d.c, day: &client.TestDay{On: d.on}}
}

// day are the keys of the day itself, with the newest value of each.
func (d *duer) day() []DueValue {
	list := []DueValue{
		newest(d, "mass", func(t *client.TestDay) basis.Num[unit.Kilograms] { return t.Mass }),
		newest(d, "pain_worst", func(t *client.TestDay) basis.Num[unit.Points] { return t.PainWorst }),
		newest(d, "pain_next_morning", func(t *client.TestDay) basis.Num[unit.Points] { return t.PainNextMorning }),
		newestWord(d, "pain_kind", func(t *client.TestDay) string { return string(t.PainKind) }),
		newestWord(d, "effusion", func(t *client.TestDay) string { return string(t.Effusion) }),
		newest(d, "quads_lag", func(t *client.TestDay) basis.Num[unit.Degrees] { return t.QuadsLag }),
	}
	for _, side := range []struct {
		name string
		knee func(*client.TestDay) *client.KneeRange
	}{
		{"left", func(t *client.TestDay) *client.KneeRange { return &t.Left }},
		{"right", func(t *client.TestDay) *client.KneeRange { return &t.Right }},
	} {
		flexion := newest(d, side.name+".flexion", func(t *client.TestDay) basis.Num[unit.Degrees] { return side.knee(t).Flexion })
		list = append(list, d.straightEnd(side.name, side.knee), flexion)
	}
	return list
}

// straightEnd is the straight end of a knee, under the one of its two keys that was typed last.
func (d *duer) straightEnd(side string, knee func(*client.TestDay) *client.KneeRange) DueValue {
	key, of := side+".lacks_extension", func(t *client.TestDay) basis.Num[unit.Degrees] { return knee(t).LacksExtension }
	for _, t := range d.days {
		switch {
		case typed(knee(t).LacksExtension) != "":
			key, of = side+".lacks_extension", func(t *client.TestDay) basis.Num[unit.Degrees] { return knee(t).LacksExtension }
		case typed(knee(t).BeyondStraight) != "":
			key, of = side+".beyond_straight", func(t *client.TestDay) basis.Num[unit.Degrees] { return knee(t).BeyondStraight }
		}
	}
	return newest(d, key, of)
}
