package plan

import (
	"slices"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// The tests that the criteria of a program measure, and those that were made before.

// measured are the tests that criteria of phases and activities ask for, by the beginning of the measure's name.
func (d *duer) measured(is func(test, quantity string) bool) (tests []string) {
	var look func(rules []program.Criterion)
	look = func(rules []program.Criterion) {
		for _, r := range rules {
			test, quantity, _ := strings.Cut(r.Measure, ".")
			if r.Measure != "" && is(test, quantity) && !slices.Contains(tests, test) {
				tests = append(tests, test)
			}
			look(r.Choices())
		}
	}
	for _, ph := range d.p.Phases {
		look(ph.Enter)
	}
	for _, a := range d.p.Activities {
		look(a.Needs)
	}
	if d.p.End != nil {
		look(d.p.End.Needs)
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
		due := d.pulled(test)
		have := d.c.Conditions(&client.Strength{Test: test})
		reach := unit.Reach{Straightest: 0, MostBent: 90}
		var at *unit.Degrees
		if angle, ok := have.Angle.Value(); ok && have.Mode != client.IsokineticMode {
			at, reach = &angle, unit.Reach{Straightest: angle, MostBent: angle}
		}
		tester := d.tester()
		due.Closed = tester.closed(strengthKinds(test), unit.Resisted, &reach, at)
		list = append(list, due)
	}
	return list
}

// pulled is a test of force with last time's trials, as torques where the device gave those.
func (d *duer) pulled(test string) DueTest {
	due, last := DueTest{ID: test}, client.Strength{}
	for _, t := range d.days {
		for _, s := range t.Strength {
			if s.Test == test {
				due.LastOn, last = t.On, s
			}
		}
	}
	if len(last.Left.Torque)+len(last.Right.Torque) > 0 {
		due.Values = ofLegs(d, "torque", last.Left.Torque, last.Right.Torque)
	} else {
		due.Values = ofLegs(d, "peak", last.Left.Peak, last.Right.Peak)
	}
	return due
}

func (d *duer) hops() (list []DueTest) {
	tests := d.measured(func(test, _ string) bool { return strings.HasPrefix(test, "hop-") })
	for _, t := range d.days {
		for _, h := range t.Hops {
			if id := "hop-" + h.Test; !slices.Contains(tests, id) {
				tests = append(tests, id)
			}
		}
	}
	tester := d.tester()
	closed := tester.closed(hopKinds, "", nil, nil)
	for _, test := range tests {
		due := d.hopped(strings.TrimPrefix(test, "hop-"))
		due.Closed = closed
		list = append(list, due)
	}
	return list
}

// hopped is a hop with last time's trials: distances, times or counts.
func (d *duer) hopped(name string) DueTest {
	due, last := DueTest{ID: name}, client.Hop{}
	for _, t := range d.days {
		for _, h := range t.Hops {
			if h.Test == name && len(h.Left.Distance)+len(h.Left.Time)+len(h.Left.Count)+len(h.Right.Distance)+len(h.Right.Time)+len(h.Right.Count) > 0 {
				due.LastOn, last = t.On, h
			}
		}
	}
	switch {
	case strings.HasPrefix(name, "timed"):
		due.Values = ofLegs(d, "time", last.Left.Time, last.Right.Time)
	case name == "side":
		due.Values = ofLegs(d, "count", last.Left.Count, last.Right.Count)
	default:
		due.Values = ofLegs(d, "distance", last.Left.Distance, last.Right.Distance)
	}
	return due
}

func (d *duer) questionnaires() (list []DueTest) {
	tests := d.measured(func(test, quantity string) bool { return quantity == "" && scored(test) })
	for _, t := range d.days {
		for _, q := range t.Questionnaires {
			if !slices.Contains(tests, q.ID) {
				tests = append(tests, q.ID)
			}
		}
	}
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
