package library

import (
	"slices"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/words"
)

// Term is a word that a client meets, and what it means.
type Term struct {
	ID, Word, Says string
	Also           []string // other ways to say it
}

// ways are all ways to say a term.
func (t Term) ways() []string { return append([]string{t.Word}, t.Also...) }

// glossaryPath is the page of all terms, below the library.
const glossaryPath = "glossary.html"

// mostNamed is how many pages are named below a term; of one that is on more pages, how many. Chosen: what a reader looks through.
const mostNamed = 12

// glossary is the page of words. It is made last: the other pages have told which words they use.
func (r *reader) glossary() Page {
	w := r.w
	entries := make([]page.Node, len(r.Glossary))
	for i, t := range r.Glossary {
		nodes := []page.Node{text("", t.Says)}
		if len(t.Also) > 0 {
			nodes = append(nodes, text("note", w.Say("library.glossary-also", "what", strings.Join(t.Also, ", "))))
		}
		entries[i] = group("entry", t.Word, append(nodes, r.usedIn(t))...)
		entries[i].ID = t.ID
	}
	title := w.Say("library.glossary-title")
	return r.made(glossaryPath, "", "glossary-page", title,
		part("head", title, text("lead", w.Say("library.glossary-lead"))),
		part("terms", w.Say("library.glossary-terms"), entries...))
}

// usedIn names the pages that use a term: what links there.
func (r *reader) usedIn(t Term) page.Node {
	pages := r.mentions[t.ID]
	switch n := len(pages); {
	case n == 0:
		return page.Node{}
	case n > mostNamed:
		return text("used", r.w.Say("library.glossary-many", "n", n))
	}
	used := page.Node{Kind: "text", Class: "used", Spans: plain(r.w.Say("library.glossary-used") + " ")}
	for i, l := range pages {
		if i > 0 {
			used.Spans = append(used.Spans, page.Span{Text: " · "})
		}
		used.Spans = append(used.Spans, page.Span{Text: l.title, Href: l.path})
	}
	return used
}

// explained is the part of a page that leads from the words on it to what they mean; the pages that use a word are noted.
func (r *reader) explained(l link, parts []page.Part) page.Part {
	said := saidIn(parts)
	var links []link
	for _, t := range r.Glossary {
		if slices.ContainsFunc(t.ways(), func(way string) bool { return words.Uses(said, way) }) {
			links = append(links, link{t.Word, glossaryPath + "#" + t.ID})
			r.mentions[t.ID] = append(r.mentions[t.ID], l)
		}
	}
	return part("words", r.w.Say("library.words-here"), linked("links words-here", "../", links))
}

// saidIn are all texts of the parts, apart from what follows them.
func saidIn(parts []page.Part) string {
	var b strings.Builder
	say := func(spans []page.Span) {
		for _, s := range spans {
			b.WriteString(s.Text)
		}
		b.WriteString(" ; ")
	}
	var walk func([]page.Node)
	walk = func(nodes []page.Node) {
		for _, n := range nodes {
			say(append(plain(n.Title+" "), n.Spans...))
			for _, item := range n.Items {
				say(item)
			}
			for _, f := range n.Facts {
				say(append(plain(f.Label+" "), f.Value...))
			}
			walk(n.Nodes)
		}
	}
	for _, p := range parts {
		walk(p.Nodes)
	}
	return b.String()
}
