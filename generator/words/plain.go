package words

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// PlainFile has the words of a language that a client may not know. A language need not have it.
const PlainFile = "plain.toml"

// PlainWord is one of them, and what to say instead.
type PlainWord struct {
	At    basis.Origin
	Hard  string `key:"hard,required" doc:"a word, or several, that a client may not know" show:"flexion"`
	Plain string `key:"plain,required" doc:"what to say instead" show:"bending"`

	explained bool // by the glossary
}

// Instead is what a text should say, and whether the word is at least explained somewhere.
func (w PlainWord) Instead() string {
	if w.explained {
		return fmt.Sprintf("write %q; the library's page of words explains the other", w.Plain)
	}
	return fmt.Sprintf("write %q", w.Plain)
}

// PlainWords are the hard words of a language, the clinic's own over the shipped.
type PlainWords struct {
	Words []PlainWord `key:"word" doc:"a hard word and a plain one"`
}

// LoadPlain reads the hard words of a language from a folder of templates; of two for one word the clinic's counts.
func LoadPlain(folder source.Folder, lang string) (plain PlainWords, faults source.Faults) {
	for _, data := range folder.Layers("words/" + lang + "/" + PlainFile) {
		var layer PlainWords
		faults = append(faults, source.TOML("templates/words/"+lang+"/"+PlainFile, data, &layer)...)
		for _, w := range layer.Words {
			if !slices.ContainsFunc(plain.Words, func(have PlainWord) bool { return strings.EqualFold(have.Hard, w.Hard) }) {
				plain.Words = append(plain.Words, w)
			}
		}
	}
	glossary, _ := LoadGlossary(folder, lang) // its mistakes are told where it is judged
	for i := range plain.Words {
		plain.Words[i].explained = glossary.Explains(plain.Words[i].Hard) != nil
	}
	return plain, faults
}

// In are the hard words that a text uses, whole and in any case, in the order of the list.
func (p PlainWords) In(text string) (used []PlainWord) {
	spaced := " " + plainly(text) + " "
	for _, w := range p.Words {
		if strings.Contains(spaced, " "+plainly(w.Hard)+" ") {
			used = append(used, w)
		}
	}
	return used
}

// plainly is a text in small letters with one space between its words and no other mark but the hyphen inside a word.
func plainly(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' })
	return strings.Join(words, " ")
}

// CountBut counts as Count and leaves out words that the clinic's clients know, such as physiotherapist: no shorter word is to be had
// for them, and a text is no harder for naming them. A sentence that ends in one still ends there.
func CountBut(known []string, texts ...string) Counts {
	without := make([]string, len(texts))
	for i, text := range texts {
		words := strings.Fields(text)
		for j, word := range words {
			bare := strings.TrimFunc(word, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
			if slices.ContainsFunc(known, func(k string) bool { return strings.EqualFold(k, bare) }) {
				words[j] = strings.Replace(word, bare, "", 1)
			}
		}
		without[i] = strings.Join(words, " ")
	}
	return Count(without...)
}
