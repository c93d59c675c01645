package library

import (
	"regexp"
	"strings"

	"paceleaf/generator/page"
	"paceleaf/generator/program"
)

// colleagues ends the name of the page that a note has for colleagues.
const colleagues = "-colleagues"

// noteForClients is the note as a client reads it.
func (r *reader) noteForClients(n *program.Note) Page {
	w := r.w
	var exercises []link
	for _, id := range n.Exercises {
		if e := r.Catalog.Exercises[id]; e != nil {
			exercises = append(exercises, link{e.Title, "exercises/" + id + ".html"})
		}
	}
	head := part("head", n.Title, append([]page.Node{text("whose", r.whose("notes/"+n.ID+".toml", "notes/"+n.ID+".md"))}, page.FromMarkdown(n.ForYou)...)...)
	return r.made("notes/"+n.ID+".html", "../", "note-page", n.Title, head,
		r.explained(link{n.Title, "notes/" + n.ID + ".html"}, []page.Part{head}),
		part("about", w.Say("library.note-exercises"), linked("links", "../", exercises)),
		part("more", w.Say("library.note-more"), page.Node{Kind: "text", Class: "links", Spans: []page.Span{
			{Text: w.Say("library.note-for-colleagues"), Href: n.ID + colleagues + ".html"}}}))
}

// noteForColleagues is the note with its figures and sources: it prints as an enclosure to a letter.
func (r *reader) noteForColleagues(n *program.Note) Page {
	w := r.w
	body := page.FromMarkdown(n.ForColleagues)
	for i := range body {
		body[i].Spans = r.cites(body[i].Spans)
	}
	references := page.Node{Kind: "list"}
	for _, key := range n.Sources {
		references.Items = append(references.Items, r.reference(key))
	}
	var kinds []string
	for _, k := range n.Kinds {
		kinds = append(kinds, r.word("desk.kind-", string(k)))
	}
	title := w.Say("library-desk.note-title", "title", n.Title)
	return r.made("notes/"+n.ID+colleagues+".html", "../", "letter-page", title,
		part("head", title, append([]page.Node{text("whose", r.whose("notes/"+n.ID+".toml", "notes/"+n.ID+".md")),
			factual("plain", fact(w.Say("library-desk.note-kinds"), w.Join(kinds)))}, body...)...),
		part("references", w.Say("library-desk.sources"), page.Node{Kind: "group", Class: "references", Level: 3, Nodes: []page.Node{references}}),
		part("more", w.Say("library-desk.links-here"), page.Node{Kind: "text", Class: "links", Spans: []page.Span{
			{Text: w.Say("library-desk.note-for-clients"), Href: n.ID + ".html"}}}))
}

var citation = regexp.MustCompile(`\[([a-z][a-z0-9-]*)\]`)

// cites turns each [key] of a text into the source's short name, with a link to its entry.
func (r *reader) cites(spans []page.Span) (cited []page.Span) {
	for _, s := range joined(spans) {
		rest := s.Text
		for {
			at := citation.FindStringSubmatchIndex(rest)
			if at == nil {
				break
			}
			key := rest[at[2]:at[3]]
			before := s
			before.Text = rest[:at[0]] + "("
			cited = append(cited, before, page.Span{Text: r.short(key), Href: "../sources.html#" + key})
			rest = ")" + rest[at[1]:]
		}
		s.Text = rest
		cited = append(cited, s)
	}
	return cited
}

// joined are spans of which no two neighbours are of one style: a reader of Markdown takes brackets apart.
func joined(spans []page.Span) (whole []page.Span) {
	for _, s := range spans {
		if last := len(whole) - 1; last >= 0 && whole[last].Strong == s.Strong && whole[last].Em == s.Em && whole[last].Href == s.Href {
			whole[last].Text += s.Text
			continue
		}
		whole = append(whole, s)
	}
	return whole
}

// reference is a source in a list of sources: what it is, and how it was read.
func (r *reader) reference(key string) []page.Span {
	s, known := r.Catalog.Sources[key]
	if !known {
		return plain(key)
	}
	return []page.Span{{Text: r.short(key), Href: "../sources.html#" + key}, {Text: " " + strings.Join(present(s.Title, s.In, doi(s)), ". ") + r.w.Say("library-desk.how-read", "how", r.word("desk.read-", s.Read))}}
}

func doi(s program.Source) string {
	if s.DOI == "" {
		return ""
	}
	return "doi " + s.DOI
}

// present are the texts that say something.
func present(texts ...string) (kept []string) {
	for _, t := range texts {
		if t != "" {
			kept = append(kept, t)
		}
	}
	return kept
}
