package page

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// A criterion has an id as a number has: why says what was found, what was wanted, and where the found value came from.

// criteriaByID are the criteria of a plan under their ids, the choices of an any-of too; those that were short when a
// stage was recorded come last.
func criteriaByID(p *plan.Plan) (byID map[string]plan.Criterion, ids []string) {
	byID = map[string]plan.Criterion{}
	for _, c := range withChoices(allCriteria(p), p.Stage.Short) {
		if _, known := byID[c.ID]; !known {
			byID[c.ID] = c
			ids = append(ids, c.ID)
		}
	}
	return byID, ids
}

// whyCriterion are the lines of one criterion, without the chain of what was found.
func whyCriterion(c plan.Criterion) []string {
	lines := []string{c.ID + " — " + string(c.State)}
	add := func(label, value string) {
		if value != "" {
			lines = append(lines, "  "+label+" "+value)
		}
	}
	add("found", foundIn(c))
	add("wanted", wantedIn(c))
	part := "one of"
	if c.Together {
		part = "all of"
	}
	for _, choice := range c.Any {
		add(part, choice.ID+": "+criterionWorth(choice))
	}
	add("tested on", c.On.String())
	add("near", nearIn(c))
	add("because", basis.Listed(c.Reason, c.Doubt).String())
	if c.Waived != nil {
		add("waived by", c.Waived.By+": "+c.Waived.Reason)
	}
	if c.Rule != nil {
		add("rule", nonEmpty("; ", nonEmpty(", ", c.Rule.Source, string(c.Rule.Standing)), c.Rule.Note))
	}
	return lines
}

// foundIn is what was found; a floor in time is known by its day.
func foundIn(c plan.Criterion) string {
	switch {
	case c.Found == nil:
		return ""
	case c.Found.Refuse:
		return "— " + c.Found.Reason.String()
	}
	return outcome(c.Found)
}

func wantedIn(c plan.Criterion) string {
	floor := ""
	if !c.NotBefore.IsZero() {
		floor = "not before " + c.NotBefore.String()
	}
	switch {
	case c.Together:
		return "all of them"
	case len(c.Any) > 0:
		return "any one"
	case c.Sense == "":
		return floor
	case c.Wanted.Grade != "":
		return c.Sense + " " + string(c.Wanted.Grade)
	}
	return nonEmpty("; ", c.Sense+" "+withUnit(significant(c.Wanted.Number, inputDigits), c.Wanted.Unit), floor)
}

// nearIn says how the mark lies to the error band; nothing where the error is not known.
func nearIn(c plan.Criterion) string {
	if c.Near == nil {
		return ""
	}
	verdict := "no"
	if *c.Near {
		verdict = "yes"
	}
	if c.NearBy == nil {
		return verdict
	}
	return verdict + ", ± " + withUnit(resultNumber(c.Band), c.Wanted.Unit) + " (" + nonEmpty(", ", c.NearBy.Source, string(c.NearBy.Standing)) + ")"
}

// criterionWorth is a criterion in a list: state, found, wanted, and why the found value does not do although it reads as if it did.
func criterionWorth(c plan.Criterion) string {
	because := ""
	if c.Found != nil && !c.Found.Refuse {
		because = basis.Listed(c.Reason, c.Doubt).String()
	}
	if c.Waived != nil {
		because = "by " + c.Waived.By + ": " + c.Waived.Reason
	}
	return nonEmpty("; ", string(c.State), foundIn(c), wantedIn(c), because)
}

// chainOf is the chain behind a criterion; what any-of found stands with its choices.
func chainOf(c plan.Criterion, line func(basis.Origin) int) []string {
	chain := &chain{line: line}
	lines := chain.of(c.Found)
	for _, choice := range c.Any {
		lines = append(lines, chain.of(choice.Found)...)
	}
	return slices.DeleteFunc(lines, func(l string) bool { return l == "" })
}
