package page

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// flagsShown is how many flags of a client stand open; the rest are folded. Chosen: a glance.
const flagsShown = 3

// client is a client's row: who it is, what calls for the therapist, the block, the flags.
func (s sheet) client(r OverviewRow, today unit.Day) Node {
	calls := s.calls(r, today)
	class := "client"
	if need(calls) >= callsPause {
		class += " pressing"
	}
	row := group(class, r.Code, 3,
		group("pages", "", 4, paragraph("about", s.about(r, today)), spoken("links", s.pageLinks(r)...)),
		group("calls", "", 4, s.callList(calls)...),
		group("course", "", 4, factual("course",
			s.labelled("stage", nonEmpty(" · ", r.Stage, r.Program)),
			s.labelled("block", s.block(r, today)),
			s.labelled("next-visit", s.visit(r)),
			s.labelled("last-test", s.dayOr(r.LastTest, "never")),
			s.labelled("missing", s.missingMarks(r.Missing)))),
		group("flags", "", 4, s.flags(r)...))
	row.ID = clientAnchor(r.Code)
	return row
}

// about is the event in one line: what, which knee, which week.
func (s sheet) about(r OverviewRow, today unit.Day) string {
	if r.Since.IsZero() {
		return ""
	}
	on := today
	if on.IsZero() {
		on = r.Starts
	}
	return s.say("about", "what", s.word("event", r.What), "side", s.word("side", string(r.Side)), "n", on.WeeksSince(r.Since))
}

// pageLinks lead to the client's pages, from where the overview stands.
func (s sheet) pageLinks(r OverviewRow) []Span {
	hand := "../hand/" + r.Code + "/"
	links := []Span{{Text: s.say("link-handout"), Href: hand + "handout.html"}, {Text: s.say("link-text"), Href: hand + "handout.md"},
		{Text: s.say("link-worksheet"), Href: r.Code + "/worksheet.html"},
		{Text: s.say("link-retest"), Href: r.Code + "/retest.html"}, {Text: s.say("link-letter"), Href: r.Code + "/letter.html"}}
	if r.Held {
		links = append(links, Span{Text: s.say("link-hold"), Href: hand + "hold.html"})
	}
	spans := []Span{links[0]}
	for _, l := range links[1:] {
		spans = append(spans, Span{Text: dot}, l)
	}
	return spans
}

// callList is what calls for the therapist, the pressing ones strong; where nothing does, it says so.
func (s sheet) callList(calls []call) []Node {
	if len(calls) == 0 {
		return []Node{paragraph("note", s.say("call-none"))}
	}
	list := Node{Kind: "list", Class: "calls"}
	for _, c := range calls {
		list.Items = append(list.Items, []Span{{Text: c.says, Strong: c.rank >= callsPause}})
	}
	return []Node{list}
}

// block is the block with its days: a draft until somebody signs it.
func (s sheet) block(r OverviewRow, today unit.Day) string {
	key := "block-draft"
	switch {
	case today.IsZero():
	case r.over(today):
		key = "block-over"
	case today.Before(r.Starts):
		key = "block-ahead"
	default:
		key = "block-now"
	}
	return s.say(key, "number", r.Block, "from", s.w.DayMonth(r.Starts), "until", s.w.Day(r.Ends), "week", today.WeeksSince(r.Starts)+1, "weeks", r.Weeks)
}

func (s sheet) visit(r OverviewRow) string { return s.dayOr(r.NextVisit, "not-booked") }

// dayOr is a day, or what to say where there is none.
func (s sheet) dayOr(d unit.Day, none string) string {
	if d.IsZero() {
		return s.say(none)
	}
	return s.w.Day(d)
}

// missingMarks names what the next stage still asks.
func (s sheet) missingMarks(marks []OverviewMark) string {
	var ids, either []string
	floor := ""
	for _, m := range marks {
		switch {
		case m.Measure == "time" && !m.NotBefore.IsZero():
			floor = s.say("not-before", "day", s.w.Day(m.NotBefore))
		case len(m.AnyOf) > 0:
			either = append(either, s.w.Either(s.measures(m.AnyOf)))
		default:
			ids = append(ids, m.Measure)
		}
	}
	return nonEmpty("; ", append([]string{floor, strings.Join(s.measures(ids), ", ")}, either...)...)
}

// flags are written out; those beyond a glance are folded, none is dropped: what has no room stands on the worksheet.
func (s sheet) flags(r OverviewRow) (nodes []Node) {
	open, folded := r.Flags, []plan.Flag(nil)
	if len(open) > flagsShown {
		open, folded = open[:flagsShown], open[flagsShown:]
	}
	nodes = append(nodes, bullets("flags", s.flagLines(open)...))
	if len(folded) > 0 {
		nodes = append(nodes, fold("more", s.say("more-flags", "n", len(folded)+r.MoreFlags), bullets("flags", s.flagLines(folded)...),
			paragraph("note", s.counted("flags-on-worksheet", r.MoreFlags))))
	}
	return append(nodes, paragraph("note", s.counted("warnings-count", r.Warnings)))
}

func (s sheet) flagLines(flags []plan.Flag) (lines []string) {
	for _, f := range flags {
		line := shortened(s.reason(f.Says))
		if f.About != "" && !strings.Contains(line, f.About) {
			line = s.reason(basis.Said(f.About)) + ": " + line
		}
		lines = append(lines, line)
	}
	return lines
}
