package page

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
)

// sheet builds the parts of the desk pages. All its words stand under "desk." in desk.toml.
type sheet struct{ w *words.Words }

func (s sheet) say(key string, pairs ...any) string { return s.w.Say("desk."+key, pairs...) }

// word is the word of a closed set: state and "not met" are the key state-not-met. An empty value stays empty, and an
// open word that desk.toml does not know is printed as it was written.
func (s sheet) word(set, value string, pairs ...any) string {
	if value == "" {
		return ""
	}
	if key := set + "-" + dashes.Replace(value); s.w.Has("desk." + key) {
		return s.say(key, pairs...)
	}
	return value
}

// reason is what the core says, in the words of the page; several stand one after another.
func (s sheet) reason(all ...basis.Said) string { return s.w.Reasons(all...) }

// outcome is a result in the words of the page.
func (s sheet) outcome(step *basis.Step) string { return outcome(s.newSums().inWords(step)) }

// newSums is an empty chain in the words of the page.
func (s sheet) newSums() *chain { return &chain{say: s.w.Reason} }

var dashes = strings.NewReplacer(" ", "-", "+", "")

func (s sheet) part(id string, nodes ...Node) Part {
	return Part{ID: id, Title: s.say("part-" + id), Nodes: nodes}
}

// note is a sentence of desk.toml by itself.
func (s sheet) note(key string, pairs ...any) Node { return paragraph("note", s.say(key, pairs...)) }

// labelled is a fact whose label is the key fact-….
func (s sheet) labelled(key, value string) Fact { return fact(s.say("fact-"+key), value) }

// table has a head for each column, named by its key; rows are added with row.
func (s sheet) table(class, title string, columns ...string) Node {
	n := Node{Kind: "table", Class: class, Title: title}
	for _, c := range columns {
		n.Head = append(n.Head, s.say("column-"+c))
	}
	return n
}

// row adds a row; its first cell heads it. A cell without a value says so, for an empty one could be an oversight.
func (n *Node) row(class string, cells ...string) {
	row := make([]Cell, len(cells))
	for i, text := range cells {
		if text == "" {
			text = "–"
		}
		row[i] = Cell{Spans: plain(text), Head: i == 0, Class: class}
	}
	n.Rows = append(n.Rows, row)
}

// sums prints the chain of some steps that have not been printed on this sheet; deeper steps are marked, not indented,
// for a phone and a screen reader swallow spaces.
func sums(c *chain, steps ...*basis.Step) (lines []string) {
	for _, step := range steps {
		for _, line := range c.of(step) {
			text := strings.TrimLeft(line, " ")
			lines = append(lines, strings.Repeat("› ", (len(line)-len(text))/2)+text)
		}
	}
	return lines
}

// reach writes a range of bend.
func (s sheet) reach(r *unit.Reach) string {
	if r == nil {
		return ""
	}
	if r.Straightest == r.MostBent {
		return s.say("reach-at", "bend", degreesText(r.MostBent))
	}
	return s.say("reach", "straightest", degreesText(r.Straightest), "bent", degreesText(r.MostBent))
}

// nonEmpty puts together what is not empty.
func nonEmpty(separator string, all ...string) string {
	var kept []string
	for _, a := range all {
		if a != "" {
			kept = append(kept, a)
		}
	}
	return strings.Join(kept, separator)
}
