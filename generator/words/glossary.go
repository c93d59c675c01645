package words

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// GlossaryFile explains the words of a language that clients meet. A language need not have it.
const GlossaryFile = "glossary.toml"

// Term is one such word. A clinic's own term takes the place of the shipped one of its id.
type Term struct {
	At   basis.Origin
	ID   string   `key:"id,required" doc:"the word as it stands in an address: small letters and hyphens" show:"effusion"`
	Word string   `key:"word,required" doc:"the word as it heads its lines" show:"Effusion"`
	Also []string `key:"also" doc:"other ways to say it, by which pages that use it are found" show:"[\"sweep test\"]"`
	Says string   `key:"says,required" doc:"what it means, in short sentences" show:"Fluid inside the knee."`
}

// Glossary is the terms of a language, the clinic's own over the shipped.
type Glossary struct {
	Terms []Term `key:"term" doc:"a word, and what it means"`
}

// LoadGlossary reads the glossary of a language from a folder of templates, in the order of its words.
func LoadGlossary(folder source.Folder, lang string) (all Glossary, faults source.Faults) {
	for _, data := range folder.Layers("words/" + lang + "/" + GlossaryFile) {
		var layer Glossary
		faults = append(faults, source.TOML("templates/words/"+lang+"/"+GlossaryFile, data, &layer)...)
		faults = append(faults, layer.twice()...)
		for _, t := range layer.Terms {
			if all.Term(t.ID) == nil {
				all.Terms = append(all.Terms, t)
			}
		}
	}
	slices.SortFunc(all.Terms, func(a, b Term) int { return strings.Compare(plainly(a.Word), plainly(b.Word)) })
	return all, faults
}

// twice are the ids that one file has more than once.
func (g Glossary) twice() (faults source.Faults) {
	for i, t := range g.Terms {
		if t.ID != "" && slices.ContainsFunc(g.Terms[:i], func(have Term) bool { return have.ID == t.ID }) {
			faults.Add(source.Fault{File: t.At.File, Key: t.At.At("id").Key, What: "there are two terms " + t.ID, Instead: "take one of them out"})
		}
	}
	return faults
}

// Term is the term of an id; nil where there is none.
func (g Glossary) Term(id string) *Term {
	for i := range g.Terms {
		if g.Terms[i].ID == id {
			return &g.Terms[i]
		}
	}
	return nil
}

// Explains is the term whose word, or another way to say it, is the given one; nil where there is none.
func (g Glossary) Explains(word string) *Term {
	for i := range g.Terms {
		if t := &g.Terms[i]; slices.ContainsFunc(append([]string{t.Word}, t.Also...), func(w string) bool { return plainly(w) == plainly(word) }) {
			return t
		}
	}
	return nil
}

// Uses reports whether a text uses a word or group of words, whole and in any case.
func Uses(text, word string) bool {
	return word != "" && strings.Contains(" "+plainly(text)+" ", " "+plainly(word)+" ")
}
