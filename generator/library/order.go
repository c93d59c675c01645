package library

import (
	"cmp"
	"slices"

	"paceleaf/generator/program"
)

// gentleFirst orders exercises as a knee comes to them: what needs no therapist's opening before what does (running,
// jumping, turning), the bottom of a chain of easier and harder before its top, and then by title.
func (r *reader) gentleFirst(ids []string) []string {
	all := r.Catalog.Exercises
	return slices.SortedStableFunc(slices.Values(ids), func(a, b string) int {
		return cmp.Or(
			cmp.Compare(waits(all[a]), waits(all[b])),
			cmp.Compare(r.rung(a), r.rung(b)),
			r.before(a, b))
	})
}

// waits is 1 for an exercise that belongs to an activity, which a therapist opens; else 0.
func waits(e *program.Exercise) int {
	if e.Activity != "" {
		return 1
	}
	return 0
}

// rung counts the exercises below one in its chain of easier ones. A circle, of which the check of programs tells, ends it.
func (r *reader) rung(id string) int {
	seen := map[string]bool{}
	for e := r.Catalog.Exercises[id]; e != nil && e.Easier != "" && !seen[e.ID]; e = r.Catalog.Exercises[e.Easier] {
		seen[e.ID] = true
	}
	return len(seen)
}
