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
