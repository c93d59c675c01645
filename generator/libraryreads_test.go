package generator_test

import (
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	prose "paceleaf/generator/words"
)

// TestLibraryReads: what a client reads of every shipped page of the library, an exercise above its desk part, a note for
// clients and the page of words, has no sentence of more than 15 words and pooled at most grade 6 by both formulas; the log tells the hardest page
// with and without the words that cannot be said another way.
func TestLibraryReads(t *testing.T) {
	files := shippedLibrary(t)
	read, worst, plainer := 0, 0.0, 0.0
	for _, name := range slices.Sorted(maps.Keys(files)) {
		isNote := strings.HasPrefix(name, "notes/") && !strings.HasSuffix(name, "-colleagues.html")
		if !isNote && !strings.HasPrefix(name, "exercises/") && name != "glossary.html" {
			continue
		}
		read++
		texts := clientTexts(files[name])
		for _, says := range hardSentences(texts) {
			t.Errorf("%s: %s", name, says)
		}
		g, without := prose.Count(texts...).Grade(), prose.Count(withoutTerms(texts)...).Grade()
		worst, plainer = max(worst, g.ColemanLiau, g.ARI), max(plainer, without.ColemanLiau, without.ARI)
		if g.ColemanLiau > 6 || g.ARI > 6 {
			t.Errorf("%s: grade %.1f (Coleman-Liau), %.1f (ARI)", name, g.ColemanLiau, g.ARI)
		}
	}
	if read < 90 {
		t.Errorf("only %d pages were read", read)
	}
	if _, there := files["glossary.html"]; !there {
		t.Error("the page of words is missing")
	}
	t.Logf("%d pages; hardest grade %.1f, without unavoidable words %.1f", read, worst, plainer)
}

// hardSentences are the sentences that are too long.
func hardSentences(texts []string) (says []string) {
	for _, text := range texts {
		for _, s := range prose.Sentences(text) {
			if n := len(strings.Fields(s)); n > 15 {
				says = append(says, "too long: "+s)
			}
		}
	}
	return says
}

// TestHardLibraryIsSeen holds the test above.
func TestHardLibraryIsSeen(t *testing.T) {
	texts := clientTexts(`<main><section class="part head"><p>Contemplate neuromuscular rehabilitation notwithstanding considerable perioperative complications and additionally anticipate rather unfortunate disappointments, everywhere and always.</p></section><section class="part desk" id="desk"><p>Isokinetic.</p></section></main>`)
	if len(texts) != 1 || prose.Count(texts...).Grade().ARI < 6 || len(hardSentences(texts)) != 1 {
		t.Errorf("%q", texts)
	}
}

// unavoidable are words that a clinic has no other for.
var unavoidable = regexp.MustCompile(`(?i)\b(exercises?|physiotherapists?|paceleaf|clinic)\b`)

func withoutTerms(texts []string) (rest []string) {
	for _, text := range texts {
		rest = append(rest, unavoidable.ReplaceAllString(text, ""))
	}
	return rest
}

// notForClients are the parts of a page that only colleagues read.
var notForClients = []string{"desk", "links-here", "more"}

// clientTexts are the texts of a page that a client reads, one for each element that holds text: no title of another page, for
// those are names.
func clientTexts(page string) (texts []string) {
	root, _ := html.Parse(strings.NewReader(page))
	var visit func(n *html.Node)
	visit = func(n *html.Node) {
		if n.Type == html.ElementNode {
			switch n.Data {
			case "svg", "script", "style", "nav", "a", "footer", "head", "button", "figcaption":
				return
			case "p", "li", "h1", "h2", "h3", "dt", "dd":
				if text := strings.TrimSpace(textBelow(n)); text != "" {
					texts = append(texts, text)
				}
				return
			}
			for _, a := range n.Attr {
				if a.Key == "id" && slices.Contains(notForClients, a.Val) {
					return
				}
			}
		}
		for c := n.FirstChild; c != nil; c = c.NextSibling {
			visit(c)
		}
	}
	visit(root)
	return texts
}

func textBelow(n *html.Node) (text string) {
	if n.Type == html.ElementNode && n.Data == "a" {
		return ""
	}
	if n.Type == html.TextNode {
		return n.Data
	}
	for c := n.FirstChild; c != nil; c = c.NextSibling {
		text += textBelow(c)
	}
	return text
}
