package page

import (
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/plan"
)

// whyGroup is what can be asked of one kind, one line each.
type whyGroup struct {
	title string
	ids   []string
}

// ofWeek is a load of a week of the block.
var ofWeek = regexp.MustCompile(`\.w\d+\.load$`)

// list is everything that why can be asked, in groups: what the client lifts, what is paused, the criteria, the newest
// findings; last the steps that these are made of and the earlier tests.
func (t *trail) list(p *plan.Plan, criteria map[string]plan.Criterion, asked []string) string {
	value := map[string]string{}
	for _, id := range t.named() {
		value[id] = worth(t.steps[id])
	}
	for id, c := range criteria {
		value[id] = criterionWorth(c)
	}
	var pauses []string
	for _, d := range p.Dropped {
		if id := pausedOf(d); d.Paused && value[id] == "" {
			value[id] = "— " + d.Because.String()
			pauses = append(pauses, id)
		}
	}
	missing, why := unfound(p)
	for _, id := range missing {
		if value[id] == "" {
			value[id] = toFind(why[id])
		}
	}
	for id, lb := range inPounds(p) {
		value[id] += ", " + lb
	}
	loads := slices.DeleteFunc(t.named(), func(id string) bool { return !ofWeek.MatchString(id) })
	var found []string
	if p.Found != nil {
		found = slices.DeleteFunc(slices.Clone(p.Found.Order), func(id string) bool { return value[id] == "" })
	}
	groups := []whyGroup{{"Loads of the block:", append(loads, missing...)}, {"Paused:", pauses}, {"Criteria of stages and activities:", asked}, {"Newest findings:", found},
		{"Steps of these, and earlier tests:", t.named()}}
	return inLines(groupLines(groups, value))
}

// groupLines writes each id once, in the first group that has it, with its value.
func groupLines(groups []whyGroup, value map[string]string) (lines []string) {
	widest := 0
	for id := range value {
		widest = max(widest, len([]rune(id)))
	}
	told := map[string]bool{}
	for _, g := range groups {
		ids := slices.DeleteFunc(slices.Clone(g.ids), func(id string) bool { return told[id] })
		if len(ids) == 0 {
			continue
		}
		slices.Sort(ids)
		if len(lines) > 0 {
			lines = append(lines, "")
		}
		lines = append(lines, g.title)
		for _, id := range slices.Compact(ids) {
			told[id] = true
			lines = append(lines, id+strings.Repeat(" ", widest-len([]rune(id))+2)+value[id])
		}
	}
	return lines
}
