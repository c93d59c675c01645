package generator_test

import (
	"slices"
	"strings"
	"testing"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	said "paceleaf/generator/words"
)

// TestEveryProgramReadsEasily: each stage's page, pooled, is of grade 6 or below by both formulas, and no sentence has more
// than 15 words; names in a list are not counted.
func TestEveryProgramReadsEasily(t *testing.T) {
	var own []string
	for _, id := range shippedPrograms(t) {
		p := shippedProgram(t, id)
		own = append(own, ownWords(p)...)
		for i := range p.Phases {
			house, made := at(p, i).plan(t)
			v := page.Handout(made, house.Words())
			var texts []string
			for _, part := range v.Parts {
				if part.ID != "small-print" { // the names of works and their authors
					texts = append(append(texts, part.Title), read(part.Nodes)...)
				}
			}
			lists := strings.NewReplacer(namesInLists(p, house)...)
			c := said.Count(texts...)
			if g := c.Grade(); g.ColemanLiau > 6 || g.ARI > 6 {
				t.Errorf("%s, %s: grade %.1f and %.1f", id, p.Phases[i].ID, g.ColemanLiau, g.ARI)
			}
			for _, text := range texts {
				for _, s := range said.Sentences(text) {
					if n := said.Count(lists.Replace(s)).Words; n > 15 {
						t.Errorf("%s, %s: %d words: %s", id, p.Phases[i].ID, n, s)
					}
				}
			}
		}
	}
	c := said.Count(own...)
	g := c.Grade()
	if g.ColemanLiau > 6 || g.ARI > 6 {
		t.Errorf("the programs' own words, pooled: grade %.1f and %.1f", g.ColemanLiau, g.ARI)
	}
	t.Logf("the programs' own words: %d, grade %.1f by Coleman and Liau, %.1f by ARI", c.Words, g.ColemanLiau, g.ARI)
}

// ownWords are what a program itself says to a client.
func ownWords(p *program.Program) (texts []string) {
	for _, ph := range p.Phases {
		texts = append(texts, ph.Title, ph.Aim)
		for _, s := range ph.Sessions {
			texts = append(texts, s.Title)
		}
	}
	for _, s := range p.Stops {
		texts = append(texts, s.Says)
	}
	if p.End != nil {
		texts = append(texts, p.End.Says)
	}
	return texts
}

// namesInLists are the names that pages put into lists, of exercises and of what is measured, each with nothing in its place: a list
// of names is read name by name.
func namesInLists(p *program.Program, house *generator.House) (pairs []string) {
	var names []string
	for _, e := range p.Exercises {
		names = append(names, e.Title)
	}
	for _, key := range house.Words().Keys() {
		if strings.HasPrefix(key, "measure.") || strings.HasPrefix(key, "kind.") {
			names = append(names, house.Words().Say(key))
		}
	}
	slices.SortFunc(names, func(a, b string) int { return len(b) - len(a) }) // "Squat" stands in "Squat with a bar"
	for _, name := range names {
		pairs = append(pairs, name, "")
	}
	return pairs
}

// read are the texts of nodes, one a line that a reader sees.
func read(nodes []page.Node) (texts []string) {
	join := func(spans []page.Span) (text string) {
		for _, s := range spans {
			text += s.Text
		}
		return text
	}
	for _, n := range nodes {
		texts = append(texts, n.Title, join(n.Spans))
		for _, i := range n.Items {
			texts = append(texts, join(i))
		}
		for _, f := range n.Facts {
			texts = append(texts, f.Label+":", join(f.Value))
		}
		texts = append(texts, read(n.Nodes)...)
	}
	return texts
}
