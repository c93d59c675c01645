package generator

import (
	"fmt"
	"path"
	"strings"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/words"
)

// What a client reads of the clinic's own exercises, phases, programs and notes: in short sentences and plain words. The
// formulas hold for English; a clinic in another language is not asked.

const (
	highestGrade    = 6.0 // of both readings; source: rules of the page (style)
	longestSentence = 15  // words
	enoughWords     = 100 // a grade of fewer says nothing; source: Coleman and Liau 1975 count by 100 words
)

// readText is a text of one file, as a client reads it.
type readText struct {
	file  string
	texts []string
}

// reading asks about the clinic's own texts that are hard to read.
func (h *House) reading() (faults source.Faults) {
	if !strings.HasPrefix(language(h.Clinic), "en") {
		return nil
	}
	plain, faults := words.LoadPlain(source.Over(sub(h.Files.Clinic, "templates"), h.Templates), language(h.Clinic))
	glossary, unread := h.ownGlossary()
	faults = append(faults, unread...)
	for _, t := range append(h.ownTexts(), glossary) {
		faults = append(faults, h.hardToRead(t)...)
		faults = append(faults, h.hardWords(t, plain)...)
	}
	return faults
}

func (h *House) hardToRead(t readText) (faults source.Faults) {
	for _, text := range t.texts {
		for _, s := range words.Sentences(text) {
			if n := words.Count(s).Words; n > longestSentence {
				faults.Add(source.Fault{File: t.file, Line: h.lineOf(t.file, s), Ask: true, What: fmt.Sprintf("a sentence of %d words: %s", n, beginning(s)), Instead: fmt.Sprintf("make it two, of at most %d words each", longestSentence)})
			}
		}
	}
	return append(faults, h.graded(t)...)
}

// graded asks about a text whose grade is too high, its known words left out. It says both grades where they differ.
func (h *House) graded(t readText) (faults source.Faults) {
	all, but := words.Count(t.texts...), words.CountBut(h.Clinic.KnownWords, t.texts...)
	if all.Words < enoughWords {
		return nil
	}
	whole, g := all.Grade(), but.Grade()
	if g.ColemanLiau <= highestGrade && g.ARI <= highestGrade {
		return nil
	}
	says := fmt.Sprintf("the reading grade is %.1f (Coleman-Liau) and %.1f (ARI)", whole.ColemanLiau, whole.ARI)
	if all != but {
		says += fmt.Sprintf("; without known_words %.1f and %.1f", g.ColemanLiau, g.ARI)
	}
	faults.Add(source.Fault{File: t.file, Ask: true, What: says, Instead: fmt.Sprintf("write shorter words and sentences, for a grade of %.0f or less", highestGrade)})
	return faults
}

// hardWords asks about words that a client may not know; one of them is asked about once a file.
func (h *House) hardWords(t readText, plain words.PlainWords) (faults source.Faults) {
	for _, w := range plain.In(strings.Join(t.texts, " ; ")) {
		faults.Add(source.Fault{File: t.file, Line: h.lineOf(t.file, w.Hard), Ask: true, What: fmt.Sprintf("a client may not know %q", w.Hard), Instead: w.Instead()})
	}
	return faults
}

// lineOf is the line of a file on which a sentence begins; 0 where it stands in the file beside it.
func (h *House) lineOf(file, sentence string) int {
	words := strings.Fields(sentence)
	begins := strings.Join(words[:min(beginningShown, len(words))], " ")
	for i, line := range strings.Split(string(h.read(file)), "\n") {
		if strings.Contains(line, begins) {
			return i + 1
		}
	}
	return 0
}

// beginningShown is how many words of a long sentence a message repeats.
const beginningShown = 6

func beginning(sentence string) string {
	all := strings.Fields(sentence)
	return strings.Join(all[:min(beginningShown, len(all))], " ") + " …"
}

// ownGlossary is what the clinic's own glossary says, and the mistakes in it.
func (h *House) ownGlossary() (t readText, faults source.Faults) {
	own, faults := words.LoadGlossary(source.Over(sub(h.Files.Clinic, "templates")), language(h.Clinic))
	t.file = path.Join("templates/words", language(h.Clinic), words.GlossaryFile)
	for _, term := range own.Terms {
		t.texts = append(t.texts, term.Says)
	}
	return t, faults
}

// ownTexts are the clinic's own texts for clients, file by file: of an exercise the words beside it count to it.
func (h *House) ownTexts() (all []readText) {
	catalog, _ := h.library.Catalog()
	for _, k := range LibraryKinds {
		for _, id := range h.ownFiles(k) {
			t := readText{file: k.file(id, ".toml")}
			switch k.Name {
			case "exercise":
				t.texts = textsOf(catalog.Exercises[id])
			case "note":
				t.file, t.texts = k.file(id, ".md"), noteTexts(catalog.Notes, id)
			default:
				t.texts = h.ownLines(k, id)
			}
			all = append(all, t)
		}
	}
	return all
}

func textsOf(e *program.Exercise) []string {
	if e == nil {
		return nil
	}
	w := e.Words
	texts := append([]string{e.Describe, w.Setup, w.Normal, w.EaseOff, w.Stop}, w.Steps...)
	for _, c := range w.Cues {
		texts = append(texts, c.Text)
	}
	return append(texts, w.Faults...)
}

func noteTexts(notes []*program.Note, id string) []string {
	for _, n := range notes {
		if n.ID == id {
			return append(strings.Split(n.ForYou, "\n"), n.Short)
		}
	}
	return nil
}

// ownLines are what a client reads of a program or a phase that is read whole somewhere.
func (h *House) ownLines(k LibraryKind, id string) (texts []string) {
	for _, p := range h.library.IDs() {
		r := h.program(p)
		if r.program == nil {
			continue
		}
		if k.Name == "program" && p == id {
			for _, s := range r.program.Stops {
				texts = append(texts, s.Says)
			}
			if r.program.End != nil {
				texts = append(texts, r.program.End.Says)
			}
		}
		if ph, _ := r.program.Phase(id); k.Name == "phase" && ph != nil {
			return []string{ph.Aim}
		}
	}
	return texts
}
