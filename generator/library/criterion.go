package library

import (
	"slices"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
)

// criteria are what must be true, each with its standing.
func (s *sheet) criteria(list []program.Criterion) (spans []page.Span) {
	for i, c := range list {
		if i > 0 {
			spans = append(spans, page.Span{Text: "; "})
		}
		spans = append(spans, s.criterion(c)...)
	}
	return spans
}

func (s *sheet) criterion(c program.Criterion) []page.Span {
	choices, joined := c.Any, " "+s.w.Say("library-desk.or")+" "
	if len(c.All) > 0 {
		choices, joined = c.All, " "+s.w.Say("library-desk.and")+" "
	}
	var spans []page.Span
	for i, one := range choices {
		if i > 0 {
			spans = append(spans, page.Span{Text: joined})
		}
		spans = append(spans, s.criterion(one)...)
	}
	if len(choices) > 0 {
		return append(spans, s.condition(c)...)
	}
	spans = append([]page.Span{{Text: s.asked(c)}}, s.condition(c)...)
	spans = append(spans, page.Span{Text: " ("})
	spans = append(spans, s.stands(c.Source, c.Standing)...)
	return append(spans, page.Span{Text: ")"})
}

// condition is for whom a criterion is asked.
func (s *sheet) condition(c program.Criterion) []page.Span {
	var says []string
	if whom := s.whom(c.When); whom != "" {
		says = append(says, whom)
	}
	if c.OnlyIfTested {
		says = append(says, s.w.Say("library-desk.if-tested"))
	}
	if len(says) == 0 {
		return nil
	}
	return []page.Span{{Text: ", " + strings.Join(says, ", ")}}
}

// asked is a measure with its mark, or a floor in time.
func (s *sheet) asked(c program.Criterion) string {
	switch {
	case c.EarliestWeek != nil:
		return s.w.Say("library-desk.from-week", "n", *c.EarliestWeek)
	case c.EarliestMonth != nil:
		return s.w.Say("library-desk.from-month", "n", *c.EarliestMonth)
	}
	return strings.TrimSpace(s.measure(c.Measure) + " " + s.mark(c))
}

func (s *sheet) measure(name string) string {
	if key := "desk.measure-" + strings.ReplaceAll(name, ".", "-"); s.w.Has(key) {
		return s.w.Say(key)
	}
	return name
}

// mark is what a measure is held against.
func (s *sheet) mark(c program.Criterion) string {
	for _, m := range []struct {
		sense string
		mark  *program.Mark
	}{{"at-least", c.AtLeast}, {"above", c.Above}, {"at-most", c.AtMost}, {"below", c.Below}} {
		if m.mark != nil {
			return s.w.Say("desk.sense-"+m.sense, "mark", s.amount(*m.mark))
		}
	}
	return ""
}

func (s *sheet) amount(m program.Mark) string {
	switch {
	case m.Grade != "":
		return s.word("desk.grade-", string(m.Grade))
	case m.Unit == "°":
		return s.w.Number(m.Number, 2) + "°"
	case m.Unit == "":
		return s.w.Number(m.Number, 2)
	}
	return s.w.Number(m.Number, 2) + "\u00a0" + m.Unit
}

// whom is for whom a rule holds; nothing where it holds for everybody.
func (r *reader) whom(when program.When) string {
	var all []string
	add := func(key string, values []string, either func([]string) string) {
		if len(values) > 0 {
			names := make([]string, len(values))
			for i, v := range values {
				names[i] = r.term(key, v)
			}
			all = append(all, either(names))
		}
	}
	add("graft-", textsOf(when.Graft), r.w.Either)
	if when.GraftFrom != "" {
		all = append(all, r.term("graft-from-", string(when.GraftFrom)))
	}
	if when.Leg == program.DonorLeg {
		all = append(all, r.term("leg-", string(when.Leg)))
	}
	add("also-", when.Also, r.w.Either)
	add("sport-", textsOf(when.Sport), r.w.Either)
	if when.UnderAge > 0 {
		all = append(all, r.w.Say("library-desk.under-age", "n", when.UnderAge))
	}
	return strings.Join(all, ", ")
}

// term is an open word as a colleague says it: its sentence, else the word itself without its hyphens.
func (r *reader) term(key, value string) string {
	if k := "library-desk." + key + value; r.w.Has(k) {
		return r.w.Say(k)
	}
	return strings.ReplaceAll(value, "-", " ")
}

// activities is what the therapist opens, and on what: a row a measure, a column an activity, each mark with its standing.
func (s *sheet) activities() page.Node {
	if len(s.p.Activities) == 0 {
		return page.Node{}
	}
	head := []string{s.w.Say("library-desk.column-asked")}
	for _, a := range s.p.Activities {
		head = append(head, a.Title)
	}
	t := table("activities", s.w.Say("library-desk.activities-caption"), head...)
	for _, line := range s.lines() {
		row(&t, append([][]page.Span{plain(line.what)}, line.marks...)...)
	}
	return t
}

// line is one row of the table of activities: what is asked of the same people, by activity.
type line struct {
	what  string
	marks [][]page.Span
}

// lines gathers the criteria of all activities, in the order in which they are first asked; those of one measure stand together.
func (s *sheet) lines() (lines []line) {
	for i, a := range s.p.Activities {
		for _, c := range a.Needs {
			what, mark := s.asking(c)
			at := slices.IndexFunc(lines, func(l line) bool { return l.what == what })
			if at < 0 {
				at = s.after(lines, what)
				lines = slices.Insert(lines, at, line{what: what, marks: make([][]page.Span, len(s.p.Activities))})
			}
			cell := &lines[at].marks[i]
			if len(*cell) > 0 {
				*cell = append(*cell, page.Span{Text: "; "})
			}
			*cell = append(append(*cell, page.Span{Text: mark, Strong: true}, page.Span{Text: " "}), s.stands(c.Source, c.Standing)...)
		}
	}
	return lines
}

// after is the place of a new row: behind the last one of its measure, else at the end.
func (s *sheet) after(lines []line, what string) int {
	measure, _, _ := strings.Cut(what, ",")
	for i := len(lines) - 1; i >= 0; i-- {
		if lines[i].what == measure || strings.HasPrefix(lines[i].what, measure+",") {
			return i + 1
		}
	}
	return len(lines)
}

// asking splits a criterion into the head of its row and its mark.
func (s *sheet) asking(c program.Criterion) (what, mark string) {
	condition := ""
	for _, span := range s.condition(c) {
		condition += span.Text
	}
	switch {
	case c.EarliestWeek != nil:
		return s.w.Say("library-desk.time") + condition, s.w.Say("library-desk.week-n", "n", *c.EarliestWeek)
	case c.EarliestMonth != nil:
		return s.w.Say("library-desk.time") + condition, s.w.Say("library-desk.month-n", "n", *c.EarliestMonth)
	case len(c.Any)+len(c.All) > 0:
		text := ""
		for _, span := range s.criterion(c) {
			text += span.Text
		}
		return text, s.w.Say("library-desk.asked-yes")
	}
	return s.measure(c.Measure) + condition, s.mark(c)
}
