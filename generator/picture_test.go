package generator_test

import (
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// notDrawn finds in a picture what our own hand does not draw: another element, another attribute, a picture that is no
// child of a figure.
func notDrawn(svg *html.Node) string {
	if svg.Parent == nil || svg.Parent.Data != "figure" {
		return "no figure around it"
	}
	for n := range svg.Descendants() {
		if n.Type == html.ElementNode && !slices.Contains([]string{"g", "title", "desc", "path", "circle", "text"}, n.Data) {
			return "a <" + n.Data + ">"
		}
		for _, a := range n.Attr {
			if !slices.Contains([]string{"id", "class", "d", "cx", "cy", "r", "x", "y", "data-by", "data-moves"}, a.Key) {
				return "an attribute " + a.Key
			}
		}
	}
	return ""
}

// TestNotDrawnIsSeen holds the test above: a stranger's picture is found, ours is not taken for one.
func TestNotDrawnIsSeen(t *testing.T) {
	for text, want := range map[string]string{
		`<figure><svg><title>a</title><path d="M0 0"/></svg></figure>`: "",
		`<p><svg></svg></p>`: "no figure around it",
		`<figure><svg><title><b>x</b></title></svg></figure>`:                     "a <b>",
		`<figure><svg><animate/></svg></figure>`:                                  "a <animate>",
		`<figure><svg><path style="fill:url(https://x.example)"/></svg></figure>`: "an attribute style",
	} {
		root, err := html.Parse(strings.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		for n := range root.Descendants() {
			if n.Data == "svg" {
				if got := notDrawn(n); got != want {
					t.Errorf("%s: %q, want %q", text, got, want)
				}
			}
		}
	}
}
