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
}

// DueTest is one test with the keys to fill in.
type DueTest struct {
	ID     string
	Closed basis.Said // why limits do not allow it yet for the operated leg
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
	return Due{Day: d.day(), Strength: d.strength(), Lifts: d.lifts(), Hops: d.hops(), Standing: d.standing(), Questionnaires: d.questionnaires()}
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
func (d *duer) day() (list []DueValue) {
	for _, k := range []struct {
		key string
		of  func(*client.TestDay) string
	}{
		{"mass_kg", func(t *client.TestDay) string { return typed(t.Mass) }},
		{"pain_worst", func(t *client.TestDay) string { return typed(t.PainWorst) }},
		{"pain_next_morning", func(t *client.TestDay) string { return typed(t.PainNextMorning) }},
		{"pain_kind", func(t *client.TestDay) string { return quoted(string(t.PainKind)) }},
		{"effusion", func(t *client.TestDay) string { return quoted(string(t.Effusion)) }},
		{"quads_lag_deg", func(t *client.TestDay) string { return typed(t.QuadsLag) }},
		{"left.lacks_extension_deg", func(t *client.TestDay) string { return typed(t.Left.LacksExtension) }},
		{"left.flexion_deg", func(t *client.TestDay) string { return typed(t.Left.Flexion) }},
		{"right.lacks_extension_deg", func(t *client.TestDay) string { return typed(t.Right.LacksExtension) }},
		{"right.flexion_deg", func(t *client.TestDay) string { return typed(t.Right.Flexion) }},
	} {
		v := DueValue{Key: k.key}
		for _, t := range d.days {
			if last := k.of(t); last != "" {
				v.Last = last
			}
		}
		list = append(list, v)
	}
	return list
}
