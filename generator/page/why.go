package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// nearestShown is how many ids are offered for one that is not known; chosen: a glance.
const nearestShown = 5

// WhyText says where a number of a plan came from, or why a criterion stands as it does. Without an id it lists what can be
// asked, in groups, one line each; with one it prints the chain. The load of an exercise that is paused or passed over has
// no number, and it says why. For an id that is not known it lists the nearest, and ok is false.
// line looks up the line of a typed value; it may be nil.
func WhyText(p *plan.Plan, id string, line func(basis.Origin) int) (text string, ok bool) {
	t := trailOf(p)
	criteria, ids := criteriaByID(p)
	if id == "" {
		return t.list(p, criteria, ids), true
	}
	if c, known := criteria[id]; known {
		return inLines(append(whyCriterion(c), chainOf(c, line)...)), true
	}
	s, known := t.steps[id]
	if asked := passedOver(p, id); !known && len(asked) > 0 {
		return inLines(whyPassed(p, id, asked)), true
	}
	if _, why := unfound(p); !known && why[id] != "" {
		return inLines([]string{id + " " + toFind(why[id])}), true
	}
	if !known {
		return inLines(nearestOf(id, t.named(), ids)), false
	}
	chain := Chain(s, line)
	if lb := inPounds(p)[id]; lb != "" {
		chain = append([]string{id + ": " + lb + " on the device"}, chain...)
	}
	return inLines(chain), true
}

// WhyJSON is WhyText for machines: the whole plan without an id, the steps below it with one.
func WhyJSON(p *plan.Plan, id string, line func(basis.Origin) int) (data []byte, ok bool) {
	if id == "" {
		return PlanJSON(p), true
	}
	t := trailOf(p)
	criteria, ids := criteriaByID(p)
	s, known := t.steps[id]
	c, asked := criteria[id]
	if over := passedOver(p, id); !known && !asked && len(over) > 0 {
		return indentedJSON(struct {
			Format  int           `json:"format"`
			ID      string        `json:"id"`
			Dropped []droppedJSON `json:"dropped"`
		}{1, id, droppedIn(over)}), true
	}
	if _, why := unfound(p); !known && !asked && why[id] != "" {
		return indentedJSON(struct {
			Format  int    `json:"format"`
			ID      string `json:"id"`
			Missing string `json:"find_your_weight"`
		}{1, id, why[id]}), true
	}
	if !known && !asked {
		return indentedJSON(struct {
			Format  int      `json:"format"`
			ID      string   `json:"id"`
			Nearest []string `json:"nearest"`
		}{1, id, nearestOf(id, t.named(), ids)}), false
	}
	var below []string
	var criterion *criterionJSON
	from := []*basis.Step{s}
	if asked {
		one := criterionIn(c, t)
		criterion, from = &one, []*basis.Step{c.Found}
		for _, choice := range c.Any {
			from = append(from, choice.Found)
		}
	}
	for _, s := range from {
		basis.Walk(s, func(s *basis.Step) {
			if name := t.id(s); name != "" { // a step of the day on which a stage was recorded has none
				below = append(below, name)
			}
		})
	}
	return indentedJSON(struct {
		Format    int                 `json:"format"`
		ID        string              `json:"id"`
		Criterion *criterionJSON      `json:"criterion,omitempty"`
		Basis     map[string]stepJSON `json:"basis"`
	}{1, id, criterion, basisIn(t, below, line)}), true
}

// named are the ids that a step was given; a typed value without one is reached through what was made of it.
func (t *trail) named() (ids []string) {
	for _, id := range t.order {
		if t.steps[id].ID != "" {
			ids = append(ids, id)
		}
	}
	slices.Sort(ids)
	return ids
}

// worth is the value of a step in a list, or why there is none.
func worth(s *basis.Step) string {
	if s.Refuse {
		return "— " + s.Reason.String()
	}
	return outcome(s)
}

// allIDs are the ids of numbers and of criteria, each once, sorted.
func allIDs(numbers, criteria []string) []string {
	ids := slices.Concat(numbers, criteria)
	slices.Sort(ids)
	return slices.Compact(ids)
}

// nearestOf are the ids that look most like a mistyped one.
func nearestOf(id string, numbers, criteria []string) []string {
	ids := allIDs(numbers, criteria)
	slices.SortStableFunc(ids, func(a, b string) int { return apart(id, a) - apart(id, b) })
	return ids[:min(nearestShown, len(ids))]
}

// apart counts how many letters must be changed to make one id of another; a part of an id is close to it.
func apart(typed, id string) int {
	n := edits([]rune(typed), []rune(id))
	if strings.Contains(id, typed) {
		n /= 4
	}
	return n
}

// edits is the distance of Levenshtein.
func edits(a, b []rune) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i, ra := range a {
		corner := row[0]
		row[0] = i + 1
		for j, rb := range b {
			change := corner
			if ra != rb {
				change++
			}
			corner = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}

func inLines(lines []string) string {
	if len(lines) == 0 {
		return ""
	}
	return strings.Join(lines, "\n") + "\n"
}
