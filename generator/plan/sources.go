package plan

import "slices"

// usedIn notes the sources of criteria and of all that they are made of.
func usedIn(criteria []Criterion, used map[string]bool) {
	for _, c := range criteria {
		if c.Rule != nil {
			used[c.Rule.Source] = true
		}
		usedIn(c.Any, used)
	}
}

// SourcesUsed are the keys of the bibliography that this plan rests on, in the order of the program's list: limits that
// touch the block, criteria of the next stage and of the activities, exercises, doses and goals.
func (p *Plan) SourcesUsed() (keys []string) {
	used := map[string]bool{}
	for _, w := range p.Limits {
		used[w.Source] = used[w.Source] || w.Touches && w.Wins
	}
	criteria := slices.Clone(p.Stage.Criteria)
	for _, a := range p.Activities {
		criteria = append(criteria, a.Criteria...)
	}
	usedIn(criteria, used)
	for _, r := range p.Prescriptions {
		used[r.Exercise.Source] = true
		if r.Slot != nil {
			used[r.Slot.Source] = true
		}
	}
	for _, g := range p.Goals {
		used[g.Goal.Source] = true
	}
	for _, key := range p.Program.File.Sources {
		if used[key] {
			keys = append(keys, key)
		}
	}
	return keys
}
