package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/program"
)

// smallPrint is what the page is not, whose word comes first, and where its rules come from.
func (h handout) smallPrint() Part {
	w := h.w
	return h.part("small-print", w.Say("small.title"),
		bullets("", w.Say("small.only-you"), w.Say("small.no-visit"), h.firstWord(), w.Say("small.no-send"), h.smallYoung()),
		h.sources(),
		paragraph("plan-id", w.Say("small.plan", "id", h.planID(), "version", h.Tool)))
}

// firstWord is whose word comes before the page.
func (h handout) firstWord() string {
	if h.unhurt() {
		return h.w.Say("small.first-doctor")
	}
	return h.w.Say("small.first")
}

// planID names the plan: code, block, and the day as of which it was computed.
func (h handout) planID() string {
	return strings.Join([]string{h.Client.Code, strconv.Itoa(h.Block.Number), h.AsOf.String()}, "/")
}

// sources are the works that this plan rests on.
func (h handout) sources() Node {
	if h.Program == nil {
		return Node{}
	}
	list := Node{Kind: "list"}
	for _, key := range h.SourcesUsed() {
		if s, known := h.Program.Sources[key]; known {
			list.Items = append(list.Items, plain(cited(s)))
		}
	}
	if len(list.Items) == 0 {
		return Node{}
	}
	return group("sources", h.w.Say("small.sources"), 3, list)
}

// cited writes a source as its bibliography entry says it.
func cited(s program.Source) string {
	parts := []string{s.By, s.Title, s.In}
	if s.Year > 0 {
		parts = slices.Insert(parts, 1, strconv.Itoa(s.Year))
	}
	parts = slices.DeleteFunc(parts, func(p string) bool { return p == "" })
	return strings.Join(parts, ". ")
}
