package page

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
)

// named are the sources that a rule on this page names: what it is, how far the rule made of it may be trusted, and what
// of it was read. Formulas name theirs in words of their own: they stand in a second table.
func (d *desk) named() Part {
	uses, formulas := d.usesOf(), d.formulasOf()
	if len(uses)+len(formulas) == 0 {
		return d.part("named", d.note("no-sources"))
	}
	table := d.table("sources", d.say("sources-caption"), "source", "what", "standing", "read", "used-for")
	for _, key := range slices.Sorted(maps.Keys(uses)) {
		use := uses[key]
		s, listed := d.p.Program.Sources[key]
		what, read := d.say("not-listed"), ""
		if listed {
			what, read = entryOf(s), d.word("read", s.Read)
		}
		table.row("", key, what, listOf(use.standings), nonEmpty("; ", read, s.About), listOf(use.rules))
	}
	sums := d.table("formulas", d.say("formulas-caption"), "rule-name", "source")
	for _, name := range slices.Sorted(maps.Keys(formulas)) {
		sums.row("", name, listOf(formulas[name]))
	}
	return d.part("named", table, sums)
}

// listOf writes a set in order.
func listOf(set map[string]bool) string { return strings.Join(slices.Sorted(maps.Keys(set)), ", ") }

// formulasOf are the rules of arithmetic behind the numbers, with what each names as its source.
func (d *desk) formulasOf() map[string]map[string]bool {
	formulas := map[string]map[string]bool{}
	for _, root := range rootsOf(d.p) {
		basis.Walk(root, func(s *basis.Step) {
			if s.By.Source == "" {
				return
			}
			name := d.reason(s.By.Name)
			if formulas[name] == nil {
				formulas[name] = map[string]bool{}
			}
			formulas[name][d.reason(s.By.Source)] = true
		})
	}
	return formulas
}

// entryOf writes an entry of the bibliography.
func entryOf(s program.Source) string {
	year := ""
	if s.Year > 0 {
		year = strconv.Itoa(s.Year)
	}
	return nonEmpty(". ", nonEmpty(", ", s.By, year), s.Title, s.In, s.DOI)
}

// use is what a source is named for.
type use struct{ standings, rules map[string]bool }

// usesOf gathers the sources of criteria, limits, slots and exercises.
func (d *desk) usesOf() map[string]use {
	uses := map[string]use{}
	add := func(source, standing, rule string) {
		if source == "" {
			return
		}
		if _, known := uses[source]; !known {
			uses[source] = use{map[string]bool{}, map[string]bool{}}
		}
		if standing != "" {
			uses[source].standings[d.word("standing", standing)] = true
		}
		if rule != "" {
			uses[source].rules[rule] = true
		}
	}
	for _, c := range d.shownCriteria() {
		if c.Rule != nil {
			add(c.Rule.Source, string(c.Rule.Standing), c.ID)
		}
	}
	for _, l := range d.p.Limits {
		add(l.Source, string(l.Standing), d.word("kind", string(l.Kind)))
	}
	for _, pr := range d.p.Prescriptions {
		if pr.Slot != nil {
			add(pr.Slot.Source, string(pr.Slot.Standing), pr.Slot.ID)
		}
		add(pr.Exercise.Source, string(pr.Exercise.Standing), pr.Exercise.Title)
	}
	return uses
}

// shownCriteria are the criteria that stand on this page: those of the next stage and of activities, and earlier ones that are open.
func (d *desk) shownCriteria() []plan.Criterion {
	shown := earlierOpen(d.p.Stage)
	if next := d.p.Stage.Next; next != nil {
		shown = append(shown, criteriaOf(d.p.Stage, next.ID)...)
	}
	all := withChoices(nil, shown)
	for _, a := range d.p.Activities {
		all = withChoices(all, a.Criteria)
	}
	return all
}
