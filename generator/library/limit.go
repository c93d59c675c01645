package library

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// limits are the schedules of the program that are wanted.
func (s *sheet) limits(wanted func(program.Limit) bool) page.Node {
	w := s.w
	t := table("limits", "", w.Say("library-desk.column-limit"), w.Say("library-desk.column-whom"), w.Say("library-desk.column-weeks"), w.Say("library-desk.column-standing"))
	for _, l := range s.p.Limits {
		if wanted(l) {
			row(&t, s.limit(l)...)
		}
	}
	return t
}

// usual are the schedules that hold for whoever has nothing but the event itself: none for a procedure beside it, none that may
// be chosen in the place of another.
func (s *sheet) usual(l program.Limit) bool { return len(l.When.Also) == 0 && s.chosen(l) }

// chosen reports whether the schedule is one that the program uses: without a chosen preset the nameless ones, with one that,
// in the place of the nameless of its file.
func (s *sheet) chosen(l program.Limit) bool {
	name := s.p.Presets[string(l.Kind)]
	if l.Preset != "" {
		return l.Preset == name
	}
	return name == "" || len(l.On) > 0 || !slices.ContainsFunc(s.p.Limits, func(o program.Limit) bool {
		return o.Kind == l.Kind && o.Preset == name && o.At.File == l.At.File
	})
}

func (s *sheet) limit(l program.Limit) [][]page.Span {
	kind := s.word("desk.kind-", string(l.Kind))
	if len(l.On) > 0 {
		kind = s.w.Say("desk.kind-on", "kind", kind, "only", s.list("desk.kind-", textsOf(l.On)))
	}
	if l.Preset != "" {
		kind = s.w.Say("library-desk.preset", "kind", kind, "name", l.Preset)
	}
	return [][]page.Span{plain(kind), plain(cmp.Or(s.whom(l.When), s.w.Say("library-desk.whom-all"))), plain(s.weeks(l)), s.standings(l)}
}

// weeks are the rows of a schedule on one line: what is allowed from which week on, and when it is free.
func (s *sheet) weeks(l program.Limit) string {
	var all []string
	last := ""
	for _, step := range l.Steps {
		if step.Week == nil {
			continue
		}
		if allows := s.allows(step.Allowance); allows != last {
			all = append(all, s.w.Say("library-desk.week-row", "n", *step.Week, "allows", allows))
			last = allows
		}
	}
	if l.OpensWeek != nil {
		all = append(all, s.w.Say("library-desk.week-opens", "n", *l.OpensWeek))
	}
	if l.LiftsWeek != nil {
		all = append(all, s.w.Say("library-desk.week-lifts", "n", *l.LiftsWeek))
	} else {
		all = append(all, s.w.Say("desk.until-further-notice"))
	}
	return strings.Join(all, " · ")
}

// allows is what a row allows.
func (s *sheet) allows(a unit.Allowance) string {
	var all []string
	if a.Allowed != nil {
		all = append(all, s.word("desk.allows-", strconv.FormatBool(*a.Allowed)))
	}
	if a.Range != nil {
		all = append(all, s.reach(a.Range))
	}
	if a.Grade != "" {
		all = append(all, s.word("desk.work-", string(a.Grade)))
	}
	if a.Part != nil {
		all = append(all, s.w.Say("desk.allows-share", "share", s.w.Number(float64(*a.Part), 1)+"\u00a0%"))
	}
	if a.PartMass != nil {
		all = append(all, s.w.Say("desk.allows-weight", "weight", s.w.Number(float64(*a.PartMass), 1)+"\u00a0kg"))
	}
	if a.BothOnly {
		all = append(all, s.w.Say("desk.allows-both-only"))
	}
	if a.Locked != nil {
		all = append(all, s.w.Say("desk.allows-locked", "bend", s.angle(*a.Locked)))
	}
	if a.Night != nil {
		all = append(all, s.word("desk.night-", strconv.FormatBool(*a.Night)))
	}
	if len(all) == 0 {
		return s.w.Say("desk.allows-true")
	}
	return strings.Join(all, ", ")
}

// standingOf is the standing of a row: its own, the limit's, else what the limit's key says of one without: published where a
// preset names a source, else a tool default.
func standingOf(l program.Limit, step program.Step) unit.Standing {
	switch {
	case step.Standing != "":
		return step.Standing
	case l.Standing != "":
		return l.Standing
	case l.Preset != "" && l.Source != "":
		return unit.Published
	}
	return unit.ToolDefault
}

// standings are how far the rows may be trusted: one word where all are alike, else each row's with its week.
func (s *sheet) standings(l program.Limit) []page.Span {
	var all []unit.Standing
	for _, step := range l.Steps {
		if own := standingOf(l, step); !slices.Contains(all, own) {
			all = append(all, own)
		}
	}
	if len(all) == 1 {
		return s.stands(l.Source, all[0])
	}
	var says []string
	last := unit.Standing("")
	for _, step := range l.Steps {
		if own := standingOf(l, step); own != last && step.Week != nil {
			says = append(says, s.w.Say("library-desk.standing-from", "standing", s.word("desk.standing-", string(own)), "n", *step.Week))
			last = own
		}
	}
	spans := plain(strings.Join(says, ", ") + " ")
	if l.Source == "" {
		return spans
	}
	return append(spans, page.Span{Text: "[" + s.number(l.Source) + "]", Href: "../sources.html#" + l.Source})
}

// furtherNote says on the sheet that there are more schedules, and for whom.
func (s *sheet) furtherNote() string {
	n := 0
	var also []string
	for _, l := range s.p.Limits {
		if s.usual(l) {
			continue
		}
		n++
		for _, a := range l.When.Also {
			if name := s.term("also-", a); !slices.Contains(also, name) {
				also = append(also, name)
			}
		}
	}
	switch {
	case n == 0:
		return ""
	case len(also) == 0:
		return s.w.Say("library-desk.further-presets", "n", n)
	}
	return s.w.Say("library-desk.further", "n", n, "what", s.w.Join(also))
}
