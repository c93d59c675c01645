package words_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator/source"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

// TestGlossaryIsPlain: every term is said in short sentences, at most grade 6 by both formulas together, and without a word that
// plain.toml calls hard, but the terms themselves.
func TestGlossaryIsPlain(t *testing.T) {
	folder := source.Over(templates.FS)
	glossary, faults := words.LoadGlossary(folder, words.Shipped)
	plain, more := words.LoadPlain(folder, words.Shipped)
	if len(faults)+len(more) > 0 {
		t.Fatal(faults, more)
	}
	if len(glossary.Terms) < 30 {
		t.Errorf("only %d terms", len(glossary.Terms))
	}
	var said []string
	for _, term := range glossary.Terms {
		said = append(said, term.Says)
		for _, s := range words.Sentences(term.Says) {
			if n := words.Count(s).Words; n > longest {
				t.Errorf("%s: %d words: %s", term.ID, n, s)
			}
		}
		for _, w := range plain.In(term.Says) {
			t.Errorf("%s says %q: %s", term.ID, w.Hard, w.Instead())
		}
	}
	if g := words.Count(said...).Grade(); g.ColemanLiau > 6 || g.ARI > 6 {
		t.Errorf("grade %.1f by Coleman and Liau, %.1f by ARI", g.ColemanLiau, g.ARI)
	}
	for _, w := range plain.Words {
		if strings.EqualFold(w.Hard, "effusion") && !strings.Contains(w.Instead(), "explains") {
			t.Errorf("the remedy for %s does not lead to the glossary: %s", w.Hard, w.Instead())
		}
	}
}

// TestGlossaryIsLaidOver: a clinic's term takes the place of the shipped one of its id, a new one joins in the order of words, and two of
// one id in one file are a mistake.
func TestGlossaryIsLaidOver(t *testing.T) {
	own := fstest.MapFS{"words/en-GB/glossary.toml": &fstest.MapFile{Data: []byte(
		"[[term]]\nid = \"brace\"\nword = \"Brace\"\nsays = \"Ours.\"\n[[term]]\nid = \"aqua\"\nword = \"Aqua day\"\nsays = \"In the pool.\"\n[[term]]\nid = \"aqua\"\nword = \"Aqua\"\nsays = \"Twice.\"\n")}}
	glossary, faults := words.LoadGlossary(source.Over(own, templates.FS), words.Shipped)
	if got := glossary.Term("brace"); got == nil || got.Says != "Ours." {
		t.Errorf("brace is %+v", got)
	}
	if glossary.Terms[1].ID != "aqua" || glossary.Terms[0].ID != "acl" {
		t.Errorf("the order is %s, %s", glossary.Terms[0].ID, glossary.Terms[1].ID)
	}
	if !strings.Contains(fmt.Sprint(faults), "two terms aqua") {
		t.Errorf("a term that stands twice is not told: %v", faults)
	}
	if glossary.Explains("Sweep test") == nil || glossary.Explains("sweep") != nil {
		t.Error("a term is found by its whole word alone")
	}
}
