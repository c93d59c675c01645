package library

import (
	"slices"
	"strconv"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// sheet is the page of one program: what a surgeon reads in two minutes and prints on one sheet, then what only a screen shows.
type sheet struct {
	*reader
	p       *program.Program
	numbers map[string]int // of the sources, as the page counts them
	order   []string
}

func (r *reader) program(p *program.Program) Page {
	s := &sheet{reader: r, p: p, numbers: map[string]int{}}
	say := func(key string, pairs ...any) string { return r.w.Say("library-desk."+key, pairs...) }
	parts := []page.Part{ // in the order in which they are read, for so the sources are numbered
		part("head", p.Title, text("lead", p.About), text("whose", s.whose(p.ID+".toml")), s.facts()),
		part("phases", say("sheet-phases"), s.phases()),
		part("limits", say("sheet-limits"), s.limits(s.usual), text("note", s.furtherNote())),
		part("activities", say("sheet-activities"), s.activities()),
		part("goals", say("sheet-goals"), s.goals()),
		part("end", say("sheet-end"), s.end()),
	}
	parts = append(parts, part("sources", say("sources"), s.references(), text("note", say("sheet-note"))))
	return r.made("programs/"+p.ID+".html", "../", "sheet", p.Title, append(parts, s.screen()...)...)
}

// end is what it takes to finish the program.
func (s *sheet) end() page.Node {
	if s.p.End == nil {
		return page.Node{}
	}
	return page.Node{Kind: "text", Spans: s.criteria(s.p.End.Needs)}
}

// facts are what the weeks count from, and how many rules of which standing the program has.
func (s *sheet) facts() page.Node {
	counts := map[unit.Standing]int{}
	count := func(c unit.Standing) {
		if c != "" {
			counts[c]++
		}
	}
	criteria := func(list []program.Criterion) {
		eachCriterion(list, func(c program.Criterion) { count(c.Standing) })
	}
	for _, ph := range s.p.Phases {
		criteria(ph.Enter)
		for _, slot := range ph.Slots {
			count(slot.Standing)
		}
	}
	for _, a := range s.p.Activities {
		criteria(a.Needs)
	}
	for _, l := range s.p.Limits {
		for _, step := range l.Steps {
			count(standingOf(l, step))
		}
	}
	for _, g := range s.p.Goals {
		count(g.Standing)
	}
	var rules []string
	for _, word := range unit.Standing("").Words() {
		if n := counts[unit.Standing(word)]; n > 0 {
			rules = append(rules, s.w.Say("library-desk.rules-of", "n", n, "standing", s.word("desk.standing-", word)))
		}
	}
	return factual("plain",
		fact(s.w.Say("library-desk.counts-from"), s.event(s.p.CountsFrom)),
		fact(s.w.Say("library-desk.rules"), s.w.Join(rules)),
		fact(s.w.Say("library-desk.replaces"), s.w.Say("library-desk.surgeon-first")))
}

func (s *sheet) event(of string) string {
	if key := "desk.event-" + of; s.w.Has(key) {
		return s.w.Say(key)
	}
	return of
}

// phases is a row a phase: aim, and what earns it.
func (s *sheet) phases() page.Node {
	w := s.w
	t := table("phases", "", w.Say("library-desk.column-phase"), w.Say("library-desk.column-aim"), w.Say("library-desk.column-earned"))
	for _, ph := range s.p.Phases {
		earned := s.criteria(ph.Enter)
		if len(ph.Enter) == 0 {
			earned = plain(w.Say("library-desk.earned-first"))
		}
		row(&t, []page.Span{{Text: ph.Title, Href: "#phase-" + ph.ID}}, plain(ph.Aim), earned)
	}
	return t
}

// goals are what a knee should reach by when.
func (s *sheet) goals() page.Node {
	w := s.w
	t := table("goals", "", w.Say("library-desk.column-goal"), w.Say("library-desk.column-by"), w.Say("library-desk.column-whom"), w.Say("library-desk.column-standing"))
	for _, g := range s.p.Goals {
		if g.ByWeek == nil {
			continue
		}
		by := w.Say("library-desk.by-week", "n", *g.ByWeek)
		if g.Tell != "" {
			by = w.Say("library-desk.by-week-told", "week", *g.ByWeek, "who", s.word("desk.set-by-", string(g.Tell)))
		}
		row(&t, plain(s.asked(program.Criterion{Measure: g.Measure, AtLeast: g.AtLeast, AtMost: g.AtMost})), plain(by), plain(s.whom(g.When)), s.stands(g.Source, g.Standing))
	}
	return t
}

// stands is a standing in words with the number of its source.
func (s *sheet) stands(source string, standing unit.Standing) []page.Span {
	how := s.word("desk.standing-", string(standing))
	if source == "" {
		if how == "" {
			how = s.w.Say("library-desk.no-standing")
		}
		return plain(how)
	}
	n, href := s.number(source), "../sources.html#"+source
	if how == "" {
		return []page.Span{{Text: "[" + n + "]", Href: href}}
	}
	return []page.Span{{Text: how + " "}, {Text: "[" + n + "]", Href: href}}
}

// number is the place of a source in the list below.
func (s *sheet) number(source string) string {
	if s.numbers[source] == 0 {
		s.order = append(s.order, source)
		s.numbers[source] = len(s.order)
	}
	return strconv.Itoa(s.numbers[source])
}

// references are the sources that the printed sheet has named, by their numbers.
func (s *sheet) references() page.Node {
	list := page.Node{Kind: "list"}
	for _, key := range s.order {
		list.Items = append(list.Items, s.numbered(key))
	}
	return page.Node{Kind: "group", Class: "references", Level: 3, Nodes: []page.Node{list}}
}

// others are the sources that only the screen's parts name, and those that the program names for the whole of it.
func (s *sheet) others(printed int) page.Node {
	for _, key := range sourcesOf(s.p) {
		s.number(key)
	}
	list := page.Node{Kind: "list"}
	for _, key := range s.order[printed:] {
		list.Items = append(list.Items, s.numbered(key))
	}
	return list
}

// numbered is one line of the list of sources.
func (s *sheet) numbered(key string) []page.Span {
	source := s.Catalog.Sources[key]
	what := present(source.In, s.word("desk.read-", source.Read))
	if source.In == "" && source.Title != "" {
		what = present(source.Title, s.word("desk.read-", source.Read))
	}
	spans := []page.Span{{Text: "[" + s.number(key) + "] "}, {Text: s.short(key), Href: "../sources.html#" + key}}
	for _, w := range what {
		spans = append(spans, page.Span{Text: ", " + w})
	}
	return spans
}

// screen is what a screen shows below the sheet: schedules beside the usual ones, the sessions of each phase, the sources of
// both. Paper leaves these parts out, by their ids.
func (s *sheet) screen() []page.Part {
	printed := len(s.order)
	var nodes []page.Node
	for _, ph := range s.p.Phases {
		nodes = append(nodes, s.sessions(ph))
	}
	further := s.limits(func(l program.Limit) bool { return !s.usual(l) })
	others := s.others(printed)
	return []page.Part{
		part("screen-further", s.w.Say("library-desk.sheet-further"), further),
		part("screen-sessions", s.w.Say("library-desk.sheet-sessions"), nodes...),
		part("screen-sources", s.w.Say("library-desk.sheet-sources"), others),
		part("screen-notes", s.w.Say("library-desk.sheet-notes"), linked("links", "../", s.notes())),
	}
}

func (s *sheet) notes() (links []link) {
	for _, n := range s.p.Notes {
		links = append(links, link{n.Title, "notes/" + n.ID + colleagues + ".html"})
	}
	return links
}

// sessions are the slots of a phase: choices, dose, standing.
func (s *sheet) sessions(ph *program.Phase) page.Node {
	w := s.w
	t := table("slots", "", w.Say("library-desk.column-slot"), w.Say("library-desk.column-choices"), w.Say("library-desk.column-dose"), w.Say("library-desk.column-standing"))
	for i := range ph.Slots {
		slot := &ph.Slots[i]
		row(&t, plain(s.inSessions(ph, slot.ID)), s.choices(slot), plain(s.doses(slot)), s.stands(slot.Source, slot.Standing))
	}
	n := group("phase", ph.Title, t)
	n.ID = "phase-" + ph.ID
	return n
}

// inSessions is a slot with the sessions that hold it.
func (s *sheet) inSessions(ph *program.Phase, slot string) string {
	var titles []string
	for _, session := range ph.Sessions {
		if slices.Contains(session.Slots, slot) && session.Title != "" {
			titles = append(titles, session.Title)
		}
	}
	if len(titles) == 0 {
		return slot
	}
	return s.w.Say("library-desk.slot-in", "slot", slot, "sessions", s.w.Join(titles))
}

func (s *sheet) choices(slot *program.Slot) (spans []page.Span) {
	for i, id := range slot.Choose {
		if i > 0 {
			spans = append(spans, page.Span{Text: "; "})
		}
		title := id
		if e := s.Catalog.Exercises[id]; e != nil {
			title = e.Title
		}
		spans = append(spans, page.Span{Text: title, Href: "../exercises/" + id + ".html"})
	}
	return spans
}
