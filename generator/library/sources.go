package library

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
)

// bibliography is every source, what was read of it, and which pages rest on it.
func (r *reader) bibliography() Page {
	w := r.w
	keys := slices.SortedFunc(maps.Keys(r.Catalog.Sources), func(a, b string) int {
		return strings.Compare(strings.ToLower(r.short(a))+" "+a, strings.ToLower(r.short(b))+" "+b)
	})
	byRead := map[string][]page.Node{}
	for _, key := range keys {
		s := r.Catalog.Sources[key]
		byRead[s.Read] = append(byRead[s.Read], r.entry(key, s))
	}
	parts := []page.Part{part("head", w.Say("library-desk.sources-title"), text("lead", w.Say("library-desk.sources-lead", "n", len(keys))))}
	for _, read := range []string{"source", "second-hand", "from memory", ""} {
		parts = append(parts, part("read-"+dashed(read), w.Say("library-desk.read-"+read1(read), "n", len(byRead[read])), byRead[read]...))
	}
	return r.made("sources.html", "", "sources-page", w.Say("library-desk.sources-title"), parts...)
}

func read1(read string) string {
	if read == "" {
		return "unknown"
	}
	return dashed(read)
}

func (r *reader) entry(key string, s program.Source) page.Node {
	year := ""
	if s.Year > 0 {
		year = strconv.Itoa(s.Year)
	}
	what := []page.Span{{Text: strings.Join(present(strings.Join(present(s.By, year), ", "), s.Title, s.In), ". ") + "."}}
	if s.DOI != "" {
		what = append(what, page.Span{Text: " "}, page.Span{Text: "doi " + s.DOI, Href: "https://doi.org/" + s.DOI})
	}
	nodes := []page.Node{{Kind: "text", Spans: what}, text("note", s.About), text("note", r.w.Say("library-desk.key", "key", key))}
	if used := r.cited[key]; len(used) > 0 {
		list := page.Node{Kind: "text", Class: "used", Spans: plain(r.w.Say("library-desk.used-in") + " ")}
		for i, l := range used {
			if i > 0 {
				list.Spans = append(list.Spans, page.Span{Text: " · "})
			}
			list.Spans = append(list.Spans, page.Span{Text: l.title, Href: l.path})
		}
		nodes = append(nodes, list)
	} else {
		nodes = append(nodes, text("note", r.w.Say("library-desk.used-nowhere")))
	}
	n := group("entry", r.short(key), nodes...)
	n.ID = key
	return n
}

// sourcesOf are the sources that a program rests on, in the order in which its page names them.
func sourcesOf(p *program.Program) (keys []string) {
	add := func(key string) {
		if key != "" && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	criteria := func(list []program.Criterion) {
		eachCriterion(list, func(c program.Criterion) { add(c.Source) })
	}
	for _, ph := range p.Phases {
		criteria(ph.Enter)
	}
	for _, a := range p.Activities {
		criteria(a.Needs)
	}
	for _, l := range p.Limits {
		add(l.Source)
	}
	for _, g := range p.Goals {
		add(g.Source)
	}
	for _, ph := range p.Phases {
		for _, s := range ph.Slots {
			add(s.Source)
		}
	}
	if p.End != nil {
		criteria(p.End.Needs)
		add(p.End.Source)
	}
	for _, s := range p.Stops {
		add(s.Source)
	}
	for _, key := range p.File.Sources {
		add(key)
	}
	return keys
}

// eachCriterion visits criteria and the choices in them.
func eachCriterion(list []program.Criterion, visit func(program.Criterion)) {
	for _, c := range list {
		visit(c)
		eachCriterion(c.Any, visit)
		eachCriterion(c.All, visit)
	}
}
