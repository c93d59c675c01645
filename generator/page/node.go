package page

// How parts put their nodes together. Every text that comes in has been said by words, or was typed by a person.

func plain(text string) []Span { return []Span{{Text: text}} }

func strong(text string) Span { return Span{Text: text, Strong: true} }

// paragraph is a text without emphasis.
func paragraph(class, text string) Node { return spoken(class, Span{Text: text}) }

// spoken is a text of several spans.
func spoken(class string, spans ...Span) Node { return Node{Kind: "text", Class: class, Spans: spans} }

// bullets is a list in no order; steps is a numbered one. An empty list is a node that tidy drops.
func bullets(class string, items ...string) Node { return listed(class, false, items) }
func steps(class string, items ...string) Node   { return listed(class, true, items) }

func listed(class string, ordered bool, items []string) Node {
	n := Node{Kind: "list", Class: class, Ordered: ordered}
	for _, item := range items {
		if item != "" {
			n.Items = append(n.Items, plain(item))
		}
	}
	return n
}

// group is nodes under a heading of level 3 or 4. Nodes that hold nothing are left out.
func group(class, title string, level int, nodes ...Node) Node {
	return Node{Kind: "group", Class: class, Title: title, Level: level, Nodes: kept(nodes)}
}

// fold is nodes that a screen shows when its line is touched, and paper always.
func fold(class, title string, nodes ...Node) Node {
	return Node{Kind: "fold", Class: class, Title: title, Nodes: kept(nodes)}
}

func fact(label, value string) Fact { return Fact{Label: label, Value: plain(value)} }

// factual is a list of labels with their values; facts without a value are left out.
func factual(class string, facts ...Fact) Node {
	n := Node{Kind: "facts", Class: class}
	for _, f := range facts {
		if len(f.Value) > 0 && f.Value[0].Text != "" {
			n.Facts = append(n.Facts, f)
		}
	}
	return n
}

// kept drops the nodes that hold nothing.
func kept(nodes []Node) (rest []Node) {
	for _, n := range nodes {
		if !n.empty() {
			rest = append(rest, n)
		}
	}
	return rest
}

func (n Node) empty() bool {
	switch n.Kind {
	case "text":
		return textOf(n.Spans) == ""
	case "list":
		return len(n.Items) == 0
	case "facts":
		return len(n.Facts) == 0
	case "table", "grid":
		return len(n.Rows) == 0
	case "figure":
		return n.Title+n.Says == ""
	case "thumb":
		return n.File == ""
	case "group", "fold", "cards":
		return len(kept(n.Nodes)) == 0
	}
	return true
}

func textOf(spans []Span) (text string) {
	for _, s := range spans {
		text += s.Text
	}
	return text
}
