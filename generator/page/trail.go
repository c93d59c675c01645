package page

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// trail is every step behind a plan's numbers, each under one name: its id, or the place where it was typed.
// The steps of now come first, so that an id that a test of last month shares belongs to the one of today.
type trail struct {
	names map[*basis.Step]string
	steps map[string]*basis.Step
	order []string
	clash []string
}

func trailOf(p *plan.Plan) *trail {
	t := &trail{names: map[*basis.Step]string{}, steps: map[string]*basis.Step{}}
	for i, s := range rootsOf(p) {
		t.add(s, fmt.Sprintf("unnamed-%d", i+1))
	}
	return t
}

// SharedIDs lists ids under which a plan keeps different steps. An id must mean one number: each of them is a mistake
// in the room that made the step.
func SharedIDs(p *plan.Plan) []string { return trailOf(p).clash }

// id is the name of a step in the trail; empty for none.
func (t *trail) id(s *basis.Step) string { return t.names[s] }

func (t *trail) add(s *basis.Step, spare string) {
	if s == nil || t.names[s] != "" {
		return
	}
	name := t.free(s, spare)
	t.names[s] = name
	if _, known := t.steps[name]; !known {
		t.steps[name] = s
		t.order = append(t.order, name)
	}
	for i, from := range s.From {
		t.add(from, fmt.Sprintf("%s/%d", name, i+1))
	}
}

// free finds the name of a step: one that is free, or under which the same step stands already.
func (t *trail) free(s *basis.Step, spare string) string {
	name := spare
	switch {
	case s.ID != "":
		name = s.ID
	case s.At.File != "":
		name = s.At.File + "#" + s.At.Key
	}
	if t.fits(name, s) {
		return name
	}
	if s.ID != "" && !slices.Contains(t.clash, s.ID) {
		t.clash = append(t.clash, s.ID)
	}
	if day := name + "@" + s.On.String(); !s.On.IsZero() && t.fits(day, s) {
		return day
	}
	for n := 2; ; n++ {
		if next := fmt.Sprintf("%s/%d", name, n); t.fits(next, s) {
			return next
		}
	}
}

func (t *trail) fits(name string, s *basis.Step) bool {
	have, taken := t.steps[name]
	return !taken || sameStep(have, s)
}

// sameStep reports whether two steps say the same: a copy may carry another day or reason beside it.
func sameStep(a, b *basis.Step) bool {
	return a.By.Name == b.By.Name && (a.Refuse || a.Value == b.Value) && a.Unit == b.Unit && a.Text == b.Text && a.Refuse == b.Refuse &&
		a.Cut == b.Cut && a.Before == b.Before && a.At == b.At && a.Typed == b.Typed && len(a.From) == len(b.From)
}

// rootsOf are the numbers that a plan states, the ones of now before those of earlier tests.
func rootsOf(p *plan.Plan) (roots []*basis.Step) {
	for _, c := range allCriteria(p) {
		roots = append(roots, c.Found)
	}
	if p.Found != nil {
		for _, name := range p.Found.Order {
			roots = append(roots, p.Found.Measures[name].Value)
		}
	}
	for _, pr := range p.Prescriptions {
		for _, w := range pr.Weeks {
			roots = append(roots, doseSteps(w)...)
		}
		if loaded(pr) {
			roots = append(roots, liftedSteps(pr)...)
		}
	}
	for _, l := range p.Limits {
		roots = append(roots, l.PartLoad.Step())
	}
	for _, c := range p.Changes {
		roots = append(roots, changeSteps(c)...)
	}
	for _, t := range p.Trends {
		roots = append(roots, trendSteps(t)...)
	}
	roots = append(roots, groupSteps(p.Groups)...)
	roots = append(append(roots, backSteps(p)...), reportSteps(p)...)
	return append(roots, testSteps(p.Found)...)
}

// loaded reports whether an exercise is done with a load, or with one that is still to be found.
func loaded(pr plan.Prescription) bool {
	return slices.ContainsFunc(pr.Weeks, func(w plan.WeekDose) bool { return w.FindYourWeight || w.Plates.OK() || w.Moved.OK() })
}

// doseSteps are the numbers of one week of a prescription.
func doseSteps(w plan.WeekDose) []*basis.Step {
	steps := []*basis.Step{w.Plates.Step(), w.Moved.Step(), w.Share.Step(), w.Implied.Step(), w.CutError.Step(), w.Reps.Step(), w.Stretch.Step(), w.HoldAt.Step(), w.Pressure.Step(), w.Time.Step()}
	for _, e := range w.Each {
		steps = append(steps, e.Plates.Step(), e.Moved.Step())
	}
	for _, f := range w.Fourth {
		steps = append(steps, f.Plates.Step())
	}
	return steps
}

// allCriteria are the criteria of stages and activities, each any-of before its choices.
func allCriteria(p *plan.Plan) (all []plan.Criterion) {
	all = withChoices(all, p.Stage.Criteria)
	for _, a := range p.Activities {
		all = withChoices(all, a.Criteria)
	}
	if p.End != nil {
		all = withChoices(all, p.End.Criteria)
	}
	return all
}

func withChoices(all, criteria []plan.Criterion) []plan.Criterion {
	for _, c := range criteria {
		all = withChoices(append(all, c), c.Any)
	}
	return all
}

// typed are the steps that a person typed, by file and key; what one text holds, such as a set, in the order of its sum.
func (t *trail) typed() (all []*basis.Step) {
	type value struct {
		at             basis.Origin
		typed, measure string
	}
	seen := map[value]bool{}
	for _, name := range t.order {
		s := t.steps[name]
		v := value{s.At, s.Typed, s.ID[strings.LastIndexByte(s.ID, '.')+1:]} // one lever serves many days: it is typed once
		if s.By.Name == basis.ByTyped.Name && s.At.File != "" && !seen[v] {
			seen[v] = true
			all = append(all, s)
		}
	}
	slices.SortStableFunc(all, func(a, b *basis.Step) int {
		return cmp.Or(cmp.Compare(a.At.File, b.At.File), cmp.Compare(a.At.Line, b.At.Line), cmp.Compare(a.At.Key, b.At.Key))
	})
	return all
}
