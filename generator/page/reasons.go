package page

import (
	"slices"
	"strings"

	"paceleaf/generator/program"
)

// reasons name the notes of reasons that are about an exercise of this page. They lead to the library where the clinic says
// where it is served; the page itself needs none of them.
func (h handout) reasons() Node {
	if h.Program == nil {
		return Node{}
	}
	list, told := Node{Kind: "list"}, h.Program.ToldIn(h.Stage.Set) // what is told above needs no second line, if it leads nowhere
	for _, n := range h.Program.Notes {
		if h.aboutPrescribed(n) && (h.Clinic.Library != "" || !slices.Contains(told, n)) {
			list.Items = append(list.Items, []Span{{Text: n.Title, Href: h.ofLibrary("notes/" + n.ID + ".html")}})
		}
	}
	if len(list.Items) == 0 {
		return Node{}
	}
	return group("reasons", h.w.Say("small.reasons"), 3, list)
}

// glossary leads to the library's page of words, where the clinic says where it is served and the language has one.
func (h handout) glossary() Node {
	address := h.ofLibrary("glossary.html")
	if address == "" || !h.w.Glossary {
		return Node{}
	}
	return Node{Kind: "text", Spans: []Span{{Text: h.w.Say("small.words") + " "}, {Text: h.w.Say("small.words-page"), Href: address}}}
}

func (h handout) aboutPrescribed(n *program.Note) bool {
	return slices.ContainsFunc(h.moves(), func(m move) bool { return n.About(m.Exercise.ID) })
}

// ofLibrary is the address of a page of the public library; empty where the clinic does not serve one.
func (h handout) ofLibrary(path string) string {
	if h.Clinic.Library == "" {
		return ""
	}
	return strings.TrimSuffix(h.Clinic.Library, "/") + "/" + path
}
