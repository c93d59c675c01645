package page

import (
	"cmp"
	"regexp"
	"strconv"
	"strings"

	"paceleaf/generator/program"
)

// smallPrint is what the page is not, whose word comes first, and where its rules come from.
func (h handout) smallPrint() Part {
	w := h.w
	return h.part("small-print", w.Say("small.title"),
		bullets("", w.Say("small.only-you"), w.Say("small.no-visit"), h.firstWord(), w.Say("small.no-send"), h.smallYoung()),
		h.reasons(),
		h.glossary(),
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

// sources are the works that this plan rests on, in one line: who and when. The worksheet has them whole, for whoever looks
// them up; a client who reads all of them reads less of what to do.
func (h handout) sources() Node {
	if h.Program == nil {
		return Node{}
	}
	var works []string
	for _, key := range h.SourcesUsed() {
		if s, known := h.Program.Sources[key]; known {
			works = append(works, h.shortly(s))
		}
	}
	if len(works) == 0 {
		return Node{}
	}
	return group("sources", h.w.Say("small.sources"), 3, paragraph("works", strings.Join(works, "; ")+"."), paragraph("works", h.w.Say("small.in-full")))
}

// initials end the name of an author: Adams D.
var initials = regexp.MustCompile(` \p{Lu}{1,3}$`)

// described is what stands in place of a title that nobody noted: a sentence, with that said in parentheses.
var described = regexp.MustCompile(` \([^)]*\)$`)

// volume begins the number of a journal, which its name does not need.
var volume = regexp.MustCompile(` \d.*$`)

// shortly names a work by its first author, by its journal where its title was not noted, or by its title; and by its year.
func (h handout) shortly(s program.Source) string {
	name := cmp.Or(s.By, s.Title)
	if s.By == "" && described.MatchString(s.Title) {
		name = cmp.Or(volume.ReplaceAllString(s.In, ""), described.ReplaceAllString(s.Title, ""))
	}
	name, _, _ = strings.Cut(name, ",")
	name = initials.ReplaceAllString(name, "")
	if s.Year > 0 {
		name += " " + strconv.Itoa(s.Year)
	}
	return name
}
