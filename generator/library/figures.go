package library

import "paceleaf/generator/page"

// figures is the contact sheet: every picture beside its like, so that a colleague can look them all over.
func (r *reader) figures() Page {
	w := r.w
	var cards []page.Node
	for _, id := range r.ids {
		e := r.Catalog.Exercises[id]
		var nodes []page.Node
		for _, p := range r.Pictures(e) {
			nodes = append(nodes, page.Node{Kind: "thumb", Class: "thumb", File: p.Path, Says: p.Named})
		}
		if len(nodes) == 0 {
			nodes = append(nodes, text("note", w.Say("library-desk.no-figure")))
		}
		nodes = append(nodes, page.Node{Kind: "text", Class: "name", Spans: []page.Span{{Text: e.Title, Href: "exercises/" + id + ".html"}}})
		cards = append(cards, page.Node{Kind: "group", Nodes: nodes})
	}
	return r.made("figures.html", "", "contact", w.Say("library-desk.figures-title"),
		part("head", w.Say("library-desk.figures-title"), text("lead", w.Say("library-desk.figures-lead"))),
		part("sheet", w.Say("library-desk.figures-all", "n", len(r.ids)), page.Node{Kind: "cards", Class: "cards", Nodes: cards}))
}
