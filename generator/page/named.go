package page

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// named are the sources that a rule on this page names by their keys, each once: how far the rules made of it may be trusted, what it is,
// and what of it was read. Formulas name theirs in words of their own, beside their sums.
func (d *desk) named() Part {
	uses := d.usesOf()
	if len(uses) == 0 {
		return d.part("named", d.note("no-sources"))
	}
	list := Node{Kind: "list", Class: "works"}
	for _, key := range slices.Sorted(maps.Keys(uses)) {
		s, listed := d.p.Program.Sources[key]
		what, read := d.say("not-listed"), ""
		if listed {
			what, read = entryOf(s), nonEmpty("; ", d.word("read", s.Read), s.About)
		}
		list.Items = append(list.Items, []Span{strong(key), {Text: d.say("work", "standing", listOf(uses[key]), "what", what, "read", read)}})
	}
	return d.onScreen("named", d.say("named-line", "n", len(list.Items)), list)
}

// formulas are the rules of arithmetic behind the numbers, with what each rests on.
func (d *desk) formulas() Node {
	formulas := d.formulasOf()
	table := d.table("formulas", d.say("formulas-caption"), "rule-name", "source")
	for _, name := range slices.Sorted(maps.Keys(formulas)) {
		table.row("", name, listOf(formulas[name]))
	}
	return table
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

// usesOf are the sources of criteria, limits, goals, slots and exercises, each with how far the rules made of it may be trusted.
func (d *desk) usesOf() map[string]map[string]bool {
	uses := map[string]map[string]bool{}
	add := func(source string, standing unit.Standing) {
		if source == "" {
			return
		}
		if uses[source] == nil {
			uses[source] = map[string]bool{}
		}
		if standing != "" {
			uses[source][d.word("standing", string(standing))] = true
		}
	}
	for _, c := range d.shownCriteria() {
		if c.Rule != nil {
			add(c.Rule.Source, c.Rule.Standing)
		}
	}
	for _, g := range d.p.Goals {
		add(g.Goal.Source, g.Goal.Standing)
	}
	for _, l := range d.p.Limits {
		add(l.Source, l.Standing)
	}
	for _, pr := range d.p.Prescriptions {
		if pr.Slot != nil {
			add(pr.Slot.Source, pr.Slot.Standing)
		}
		add(pr.Exercise.Source, pr.Exercise.Standing)
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
	if d.p.End != nil {
		all = withChoices(all, d.p.End.Criteria)
	}
	return all
}
