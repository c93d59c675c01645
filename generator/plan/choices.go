package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/program"
)

// Criteria that are made of others: any of several, or all of them together.

// anyOf is met where one of several is; else it stands as the least bad of them. One that is asked only where it was tested
// opens nothing for the others.
func (j judge) anyOf(c *Criterion) {
	c.Any = j.weigh(c.Of, c.Rule.Any)
	c.State = NotTested
	for _, a := range c.Any {
		if a.State == Met || a.State == Waived {
			c.State = Met
			return
		}
		if a.State != NotTested {
			c.State = a.State
		}
	}
}

// allOf is met where all of several are, and one of them at least was looked at; else it stands as the worst of them.
func (j judge) allOf(c *Criterion) {
	c.Any = j.weigh(c.Of, c.Rule.All)
	c.State = NotTested
	for _, a := range c.Any {
		switch {
		case !a.Passed():
			c.State = a.State
			return
		case a.State != NotTested:
			c.State = Met
		}
	}
}

// notWaivable are the ids of any-ofs and all-ofs that hold swelling, pain or extension: none of these may be waived around.
func notWaivable(p *program.Program) map[string]bool {
	ids := map[string]bool{}
	for _, ph := range p.Phases {
		holdFast(ph.ID, ph.Enter, ids)
	}
	for _, a := range p.Activities {
		holdFast(a.ID, a.Needs, ids)
	}
	if p.End != nil {
		holdFast("end", p.End.Needs, ids)
	}
	return ids
}

func holdFast(of string, rules []program.Criterion, ids map[string]bool) {
	for i := range rules {
		r := &rules[i]
		kind := "any"
		if len(r.All) > 0 {
			kind = "all"
		}
		if fast(r.Choices()) {
			ids[fmt.Sprintf("%s.%s-%d", of, kind, i+1)] = true
		}
		holdFast(of, r.Choices(), ids)
	}
}

func fast(choices []program.Criterion) bool {
	return slices.ContainsFunc(choices, func(c program.Criterion) bool { return !waivable(c.Measure) || fast(c.Choices()) })
}
