package page

import (
	"fmt"
	"regexp"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/words"
)

// What a therapist should look at before a page is handed out: how it reads, how much it asks for, what it lacks. The items
// are those of PEMAT-P that a machine can judge (AHRQ, PEMAT user's guide, 14-0002-EF; the limits of 8, 19 and 22 are ours),
// the reading grade and the length of sentences. They are questions, never mistakes.

// Remark is one such thing.
type Remark struct {
	ID      string // grade, sentence, exercises, words, hard-word, long-list, long-paragraph, steps, picture, order …
	Item    int    // of PEMAT-P; 0: none
	What    string
	Instead string
}

const (
	gradeAimed     = 6  // AMA; Source: PMC9769358
	wordsASentence = 15 // Source: 10.1016/j.asmr.2022.10.004
	exercisesAimed = 4  // Source: evidence of adherence, PEMAT 22; above it fewer are done
	exercisesMost  = 5
	itemsAList     = 7 // tool default, as the next three
	sentencesAText = 3
	stepsLeast     = 3
	stepsMost      = 6
	enoughWords    = 100 // below this a grade says nothing
	columnsATable  = 4
)

// Remarks are those about the handout of a plan.
func Remarks(p *plan.Plan, w *words.Words, plain words.PlainWords) []Remark {
	r := remarker{view: Handout(p, w), h: handout{p, w}, plain: plain}
	for _, look := range []func(){r.grade, r.sentences, r.exercises, r.phrases, r.chunks, r.stepCounts, r.pictures, r.order, r.gates} {
		look()
	}
	return r.found
}

type remarker struct {
	view  View
	h     handout
	plain words.PlainWords // words that a client may not know, with what to say instead
	found []Remark
}

func (r *remarker) add(id string, item int, what, instead string) {
	r.found = append(r.found, Remark{id, item, what, instead})
}

// each walks over all nodes of the page, with the part that each stands in.
func (r *remarker) each(see func(Part, Node)) {
	var walk func(Part, []Node)
	walk = func(p Part, nodes []Node) {
		for _, n := range nodes {
			see(p, n)
			walk(p, n.Nodes)
		}
	}
	for _, p := range r.view.Parts {
		walk(p, p.Nodes)
	}
}

// texts are the texts of the page, one a line that a reader sees; sources are for colleagues and are left out.
func (r *remarker) texts() (all []string) {
	for _, p := range r.view.Parts {
		all = append(all, p.Title)
	}
	r.each(func(p Part, n Node) {
		if n.Class == "sources" || p.ID == "small-print" {
			return
		}
		all = append(all, n.Title, textOf(n.Spans))
		for _, i := range n.Items {
			all = append(all, textOf(i))
		}
		for _, f := range n.Facts {
			all = append(all, textOf(f.Value))
		}
	})
	return all
}

func (r *remarker) grade() {
	if !strings.HasPrefix(r.view.Lang, "en") {
		return // the formulas hold for English
	}
	c := words.Count(r.texts()...)
	if g := c.Grade(); c.Words >= enoughWords && (g.ColemanLiau > gradeAimed || g.ARI > gradeAimed) {
		r.add("grade", 3, fmt.Sprintf("the handout reads at grade %.1f (Coleman-Liau) and %.1f (ARI)", g.ColemanLiau, g.ARI), "aim at 6 or below: shorter words and sentences")
	}
}

func (r *remarker) sentences() {
	for _, text := range r.texts() {
		r.found = append(r.found, longSentences(text)...)
	}
}

// exercises asks about sessions that ask for many: now and later are better told apart.
func (r *remarker) exercises() {
	seen := map[string]bool{}
	for _, s := range r.h.Sessions {
		if seen[s.Session] {
			continue
		}
		seen[s.Session] = true
		n := 0
		for _, m := range r.h.moves() {
			if m.in(s.Session) {
				n++
			}
		}
		switch {
		case n > exercisesMost:
			r.add("exercises", 0, fmt.Sprintf("session %s asks for %d exercises; of more than %d hardly anybody does all", s.Session, n, exercisesMost), "leave out what can wait, by [[override]] leave_out = true")
		case n > exercisesAimed:
			r.add("exercises", 0, fmt.Sprintf("session %s asks for %d exercises; %d are more likely to be done", s.Session, n, exercisesAimed), "see whether one can wait")
		}
	}
}

// notForClients is what a client's page does not say, and what it says instead.
var notForClients = []struct {
	item    int
	find    *regexp.Regexp
	instead string
}{
	{7, regexp.MustCompile(`[0-9]+(\.[0-9]+)? ?%`), "write the weight, the length or the count itself: a client computes nothing"},
	{7, regexp.MustCompile(`(?i)\b(1RM|half your|double your|divide|multiply|per ?cent)\b`), "write the number itself: a client computes nothing"},
	{6, regexp.MustCompile(`[½⅓¼¾]|\b[1-9]/[2-9]\b`), "write a whole number or a decimal"},
	{21, regexp.MustCompile(`(?i)\bthe (patient|client)\b`), `say "you"`},
	{0, regexp.MustCompile(`(?i)\b(cleared|guaranteed?|risk-free|completely safe)\b`), "no number makes a knee that; say what was found"},
}

func (r *remarker) phrases() {
	seen := map[string]bool{}
	for _, text := range r.texts() {
		for _, remark := range unfit(text, "the handout", r.plain) {
			if !seen[remark.What] {
				seen[remark.What] = true
				r.found = append(r.found, remark)
			}
		}
	}
}

// unfit are the phrases and hard words of a text that a client's page does not say.
func unfit(text, where string, plain words.PlainWords) (found []Remark) {
	for _, not := range notForClients {
		if phrase := not.find.FindString(text); phrase != "" {
			found = append(found, Remark{"words", not.item, fmt.Sprintf("%s says %q, in %q", where, phrase, text), not.instead})
		}
	}
	for _, word := range plain.In(text) {
		found = append(found, Remark{"hard-word", 4, fmt.Sprintf("%s says %q, which a client may not know", where, word.Hard), word.Instead()})
	}
	return found
}

// NoteRemark is a remark about a line of the therapist's note, from 1.
type NoteRemark struct {
	Line int
	Remark
}

// NoteRemarks are those about what the therapist wrote to the client: phrases, hard words, long sentences.
func NoteRemarks(note string, plain words.PlainWords) (found []NoteRemark) {
	for i, line := range strings.Split(note, "\n") {
		for _, remark := range unfit(strings.TrimSpace(line), "the note", plain) {
			found = append(found, NoteRemark{i + 1, remark})
		}
		for _, remark := range longSentences(line) {
			found = append(found, NoteRemark{i + 1, remark})
		}
	}
	return found
}

func longSentences(text string) (found []Remark) {
	for _, s := range words.Sentences(text) {
		if n := words.Count(s).Words; n > wordsASentence {
			found = append(found, Remark{"sentence", 3, fmt.Sprintf("a sentence of %d words: %q", n, s), fmt.Sprintf("make two of it; %d words are enough", wordsASentence)})
		}
	}
	return found
}

// chunks asks about long lists and paragraphs, and tables too wide to take in. Red flags stand whole: none may be dropped.
func (r *remarker) chunks() {
	r.each(func(p Part, n Node) {
		switch {
		case p.ID == "stop" || p.ID == "small-print" || p.ID == "tick":
		case n.Kind == "list" && n.Class != "levels" && len(n.Items) > itemsAList: // a ladder has as many rungs as it has
			r.add("long-list", 8, fmt.Sprintf("a list of %d items under %q", len(n.Items), p.Title), fmt.Sprintf("%d can be taken in", itemsAList))
		case n.Kind == "text" && len(words.Sentences(textOf(n.Spans))) > sentencesAText:
			if p.ID == "note" {
				r.add("long-paragraph", 8, fmt.Sprintf("a paragraph of %d sentences in note.md", len(words.Sentences(textOf(n.Spans)))), fmt.Sprintf("%d a paragraph", sentencesAText))
			}
		case n.Kind == "table" && len(n.Head) > columnsATable:
			r.add("wide-table", 19, fmt.Sprintf("a table of %d columns under %q", len(n.Head), p.Title), fmt.Sprintf("%d can be taken in", columnsATable))
		}
	})
}

// stepCounts asks about exercises whose steps are too few to follow or too many to keep in mind.
func (r *remarker) stepCounts() {
	for _, m := range r.h.moves() {
		if n := len(m.Exercise.Words.Steps); n < stepsLeast || n > stepsMost {
			r.add("steps", 22, fmt.Sprintf("%s has %d steps", m.Exercise.ID, n), fmt.Sprintf("write %d to %d, one movement each", stepsLeast, stepsMost))
		}
	}
}

func (r *remarker) pictures() {
	for _, m := range r.h.moves() {
		if !m.Exercise.Figure.Drawn() {
			r.add("picture", 15, m.Exercise.ID+" has no picture", "draw it by a [figure] table")
		}
	}
}

// order asks about a page that lacks a part or has it in another place, as a clinic's own templates cannot bring about but
// a mistake of ours could.
func (r *remarker) order() {
	at := -1
	for _, id := range []string{"head", "brief", "stop", "exercises", "knee", "tick"} {
		found := -1
		for i, p := range r.view.Parts {
			if p.ID == id {
				found = i
			}
		}
		if found < 0 && id != "exercises" && id != "tick" || found >= 0 && found < at {
			r.add("order", 10, fmt.Sprintf("the part %s is missing or out of its place", id), "tell whoever maintains the pages")
		}
		at = max(at, found)
	}
}
