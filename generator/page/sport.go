package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Sport comes back in steps. The next step is printed in full, the later ones by name, so that the list stays short.

// withoutSport is the plan of a client whose sport is none, without the steps of training and match: nobody waits for what nobody
// wants. Running, jumping and every limit stay; the worksheet has the steps.
func withoutSport(p *plan.Plan) *plan.Plan {
	if p.Client.Sport != unit.NoSport {
		return p
	}
	own, steps := *p, map[string]bool{}
	own.Activities = slices.DeleteFunc(slices.Clone(p.Activities), func(a plan.ActivityState) bool {
		if a.Activity != nil && a.Activity.Sport {
			steps[a.Activity.ID] = true
			return true
		}
		return false
	})
	own.Dates = slices.DeleteFunc(slices.Clone(p.Dates), func(d plan.DateLine) bool { return d.Kind == "not-before" && steps[d.What] })
	return &own
}

// sportSteps are the steps of sport that are not open, in the program's order; none where there is only one.
func (h handout) sportSteps() (steps []plan.ActivityState) {
	for _, a := range h.Activities {
		if a.Activity != nil && a.Activity.Sport && a.State != "open" {
			steps = append(steps, a)
		}
	}
	if len(steps) < 2 {
		return nil
	}
	return steps
}

// laterStep reports whether an activity is a step of sport that comes after the next one.
func (h handout) laterStep(id string) bool {
	steps := h.sportSteps()
	return slices.IndexFunc(steps, func(a plan.ActivityState) bool { return a.Activity.ID == id }) > 0
}

// laterSteps names the steps after the next in one sentence.
func (h handout) laterSteps() string {
	steps := h.sportSteps()
	if len(steps) == 0 {
		return ""
	}
	return h.w.Say("activity.steps", "steps", h.w.Each(titles(steps[1:])))
}

// titles are the names of activities.
func titles(all []plan.ActivityState) (names []string) {
	for _, a := range all {
		names = append(names, a.Activity.Title)
	}
	return names
}

// oneByOne says of a day that several steps of sport share that they do not all come on it: a floor in time is the first day
// of a step, and each is opened for itself.
func (h handout) oneByOne(d plan.DateLine) string {
	shares := 0
	for _, a := range h.sportSteps() {
		if a.NotBefore == d.On {
			shares++
		}
	}
	if shares < 2 || !h.laterStep(d.What) {
		return ""
	}
	return h.w.Say("dates.one-by-one")
}
