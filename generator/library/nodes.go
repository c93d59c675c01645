package library

import "paceleaf/generator/page"

// How pages put their nodes together. What holds nothing is left out by whoever prints.

func plain(text string) []page.Span { return []page.Span{{Text: text}} }

func text(class, says string) page.Node {
	return page.Node{Kind: "text", Class: class, Spans: plain(says)}
}

func group(class, title string, nodes ...page.Node) page.Node {
	return page.Node{Kind: "group", Class: class, Title: title, Level: 3, Nodes: nodes}
}

func bullets(class string, items []string) page.Node { return listed(class, false, items) }
func steps(class string, items []string) page.Node   { return listed(class, true, items) }

func listed(class string, ordered bool, items []string) page.Node {
	n := page.Node{Kind: "list", Class: class, Ordered: ordered}
	for _, item := range items {
		n.Items = append(n.Items, plain(item))
	}
	return n
}

// linked is a list of links.
func linked(class string, root string, links []link) page.Node {
	n := page.Node{Kind: "list", Class: class}
	for _, l := range links {
		n.Items = append(n.Items, []page.Span{{Text: l.title, Href: root + l.path}})
	}
	return n
}

// factual is a list of labels with their values; what has no value is left out.
func factual(class string, facts ...page.Fact) page.Node {
	n := page.Node{Kind: "facts", Class: class}
	for _, f := range facts {
		if len(f.Value) > 0 && f.Value[0].Text != "" {
			n.Facts = append(n.Facts, f)
		}
	}
	return n
}

func fact(label, value string) page.Fact { return page.Fact{Label: label, Value: plain(value)} }

// table has a head and rows of texts; the first cell of a row heads it.
func table(class, caption string, head ...string) page.Node {
	return page.Node{Kind: "table", Class: class, Title: caption, Head: head}
}

func row(n *page.Node, cells ...[]page.Span) {
	made := make([]page.Cell, len(cells))
	for i, spans := range cells {
		made[i] = page.Cell{Spans: spans, Head: i == 0}
	}
	n.Rows = append(n.Rows, made)
}

func part(id, title string, nodes ...page.Node) page.Part {
	return page.Part{ID: id, Title: title, Nodes: nodes}
}

// filled drops the parts after the first that hold nothing.
func filled(parts ...page.Part) (kept []page.Part) {
	for i, p := range parts {
		if i == 0 || anything(p.Nodes) {
			kept = append(kept, p)
		}
	}
	return kept
}

func anything(nodes []page.Node) bool {
	for _, n := range nodes {
		if len(n.Spans)+len(n.Items)+len(n.Facts)+len(n.Rows) > 0 || n.File != "" || n.Drawing != nil || anything(n.Nodes) {
			return true
		}
	}
	return false
}
