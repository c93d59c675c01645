package plan

import (
	"fmt"
	"slices"
	"strings"

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
	Questionnaires []DueTest
}

// DueTest is one test with the keys to fill in.
type DueTest struct {
	ID     string
	Closed string // why limits do not allow it yet for the operated leg
	LastOn unit.Day
	Values []DueValue
}

// DueValue is a key of the test file and last time's value, as TOML; empty where there is none.
type DueValue struct{ Key, Last string }

// DueTests gathers the tests that the criteria of the program measure and those that were made before.
func DueTests(p *program.Program, c *client.Client, on unit.Day) Due {
	event := c.Event(p.CountsFrom, on)
	if event == nil {
		return Due{}
	}
	d := duer{p: p, c: c, event: event, on: on, limits: gatherKnees(p, c, event, on).main()}
	for i := range c.Tests {
		if !c.Tests[i].On.After(on) {
			d.days = append(d.days, &c.Tests[i])
		}
	}
	return Due{Day: d.day(), Strength: d.strength(), Lifts: d.lifts(), Hops: d.hops(), Questionnaires: d.questionnaires()}
}

type duer struct {
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

// typed is a value as it was written, without its unit: the key carries that. A value typed in another unit than the
// key's first is left out rather than passed off as it.
func typed[Q unit.Quantity](n basis.Num[Q]) string {
	s := n.Step()
	if s == nil || s.Typed == "" {
		return ""
	}
	number, symbol, _ := strings.Cut(s.Typed, " ")
	if endings := n.Endings(); symbol != "" && len(endings) > 0 && endings[0].Symbol != symbol {
		return ""
	}
	return strings.TrimSuffix(number, "°")
}

func quoted(s string) string {
	if s == "" {
		return ""
	}
	return fmt.Sprintf("%q", s)
}

func listed[Q unit.Quantity](trials []basis.Num[Q]) string {
	values := make([]string, 0, len(trials))
	for _, t := range trials {
		if v := typed(t); v != "" {
			values = append(values, v)
		}
	}
	if len(values) == 0 {
		return ""
	}
	return "[" + strings.Join(values, ", ") + "]"
}

// measured are the tests that criteria of phases and activities ask for, by the beginning of the measure's name.
func (d *duer) measured(is func(test, quantity string) bool) (tests []string) {
	var look func(rules []program.Criterion)
	look = func(rules []program.Criterion) {
		for _, r := range rules {
			test, quantity, _ := strings.Cut(r.Measure, ".")
			if r.Measure != "" && is(test, quantity) && !slices.Contains(tests, test) {
				tests = append(tests, test)
			}
			look(r.Any)
		}
	}
	for _, ph := range d.p.Phases {
		look(ph.Enter)
	}
	for _, a := range d.p.Activities {
		look(a.Needs)
	}
	return tests
}

func (d *duer) strength() (list []DueTest) {
	tests := d.measured(func(test, quantity string) bool {
		return quantity != "" && test != "flexion" && !strings.HasPrefix(test, "hop-") && d.p.Exercises[test] == nil &&
			test != client.YBalanceTest && test != client.RiseTest && !strings.HasPrefix(test, "hamstrings-to-quadriceps")
	})
	for _, t := range d.days {
		for _, s := range t.Strength {
			if !slices.Contains(tests, s.Test) {
				tests = append(tests, s.Test)
			}
		}
	}
	for _, test := range tests {
		due := DueTest{ID: test, Values: []DueValue{{Key: "left.peak_n"}, {Key: "right.peak_n"}}}
		for _, t := range d.days {
			for _, s := range t.Strength {
				if s.Test == test {
					due.LastOn = t.On
					due.Values[0].Last, due.Values[1].Last = listed(s.Left.Peak), listed(s.Right.Peak)
				}
			}
		}
		have := d.c.Conditions(&client.Strength{Test: test})
		reach := unit.Reach{Straightest: 0, MostBent: 90}
		var at *unit.Degrees
		if angle, ok := have.Angle.Value(); ok {
			at, reach = &angle, unit.Reach{Straightest: angle, MostBent: angle}
		}
		tester := d.tester()
		due.Closed = tester.closed(strengthKinds(test), unit.Resisted, &reach, at)
		list = append(list, due)
	}
	return list
}

// lifts are those made before, and the exercises of the recorded phase whose load comes from a lift.
func (d *duer) lifts() (list []DueTest) {
	var ids []string
	add := func(id string) {
		if !slices.Contains(ids, id) {
			ids = append(ids, id)
		}
	}
	phase := judge{p: d.p, c: d.c, event: d.event, asOf: d.on}.recordedPhase()
	for _, s := range phase.Slots {
		for _, id := range s.Choose {
			if e := d.p.Exercises[id]; e.ResistedBy == program.External && d.limits.permits(e, []unit.Day{d.on}).allowed {
				add(id)
				break
			}
		}
	}
	for _, t := range d.days {
		for _, l := range t.Lifts {
			add(l.Exercise)
		}
	}
	for _, id := range ids {
		list = append(list, d.lift(id))
	}
	return list
}

func (d *duer) lift(id string) DueTest {
	due := DueTest{ID: id}
	var last client.Lift
	for _, t := range d.days {
		for _, l := range t.Lifts {
			if l.Exercise == id {
				due.LastOn, last = t.On, l
			}
		}
	}
	e := d.p.Exercises[id]
	if e != nil && e.Side == program.BothLegs {
		due.Values = []DueValue{{"both", set(last.Both)}}
	} else {
		due.Values = []DueValue{{"left", set(last.Left)}, {"right", set(last.Right)}}
	}
	if e != nil {
		if left := d.limits.permits(e, []unit.Day{d.on}); !left.allowed {
			due.Closed = left.because
		}
	}
	return due
}

// set writes a set short.
func set(s client.Set) string {
	if !s.Done() || !s.Plates.OK() || !s.Reserve.OK() {
		return ""
	}
	return fmt.Sprintf("%q", fmt.Sprintf("%s x %s+%s", s.Plates.Step().Typed, s.Reps.Step().Typed, s.Reserve.Step().Typed))
}

func (d *duer) hops() (list []DueTest) {
	tests := d.measured(func(test, _ string) bool { return strings.HasPrefix(test, "hop-") })
	tester := d.tester()
	closed := tester.closed(hopKinds, "", nil, nil)
	for _, test := range tests {
		name := strings.TrimPrefix(test, "hop-")
		key := "distance_cm"
		switch {
		case strings.HasPrefix(name, "timed"):
			key = "time_s"
		case name == "side":
			key = "count"
		}
		due := DueTest{ID: name, Closed: closed, Values: []DueValue{{Key: "left." + key}, {Key: "right." + key}}}
		for _, t := range d.days {
			for _, h := range t.Hops {
				if h.Test == name && len(h.Left.Distance)+len(h.Left.Time)+len(h.Left.Count)+len(h.Right.Distance)+len(h.Right.Time)+len(h.Right.Count) > 0 {
					due.LastOn = t.On
					due.Values[0].Last, due.Values[1].Last = listed(h.Left.Distance)+listed(h.Left.Time)+listed(h.Left.Count), listed(h.Right.Distance)+listed(h.Right.Time)+listed(h.Right.Count)
				}
			}
		}
		list = append(list, due)
	}
	return list
}

func (d *duer) questionnaires() (list []DueTest) {
	tests := d.measured(func(test, quantity string) bool { return quantity == "" && scored(test) })
	for _, id := range tests {
		due := DueTest{ID: id, Values: []DueValue{{Key: "score"}}}
		for _, t := range d.days {
			for _, q := range t.Questionnaires {
				if q.ID == id {
					due.LastOn, due.Values[0].Last = t.On, typed(q.Score)
				}
			}
		}
		list = append(list, due)
	}
	return list
}

// scored reports whether a bare measure is a questionnaire's score.
func scored(measure string) bool {
	switch measure {
	case "pain", "pain-next-morning", "effusion", "extension", "flexion", "quads-lag", "time":
		return false
	}
	return true
}

// recordedPhase is the phase that is recorded as of the day; the first where none is.
func (j judge) recordedPhase() *program.Phase {
	phase := j.p.Phases[0]
	for _, rec := range j.recorded() {
		if ph, _ := j.p.Phase(rec.ID); ph != nil {
			phase = ph
		}
	}
	return phase
}
