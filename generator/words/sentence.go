package words

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/basis"
)

// Sentence is one value of a words file: a text, or its plurals. {name} is a place that the page fills.
type Sentence struct {
	At    basis.Origin
	Zero  string `key:"zero" doc:"where the language has a form of its own for the number n, as CLDR tells its plurals apart"`
	One   string `key:"one" doc:"the same: in English where n is 1"`
	Two   string `key:"two" doc:"the same"`
	Few   string `key:"few" doc:"the same"`
	Many  string `key:"many" doc:"the same"`
	Other string `key:"other,required" doc:"for every other number, and for a sentence that does not count"`
}

// FromShort reads a sentence that has no plural.
func (s *Sentence) FromShort(text string, at basis.Origin) error {
	if strings.TrimSpace(text) == "" {
		return fmt.Errorf("the sentence is empty; write the words, or leave the key out")
	}
	s.At, s.Other = at, text
	return nil
}

// plurals are the forms besides other, by their names.
func (s Sentence) plurals() map[string]string {
	return map[string]string{"zero": s.Zero, "one": s.One, "two": s.Two, "few": s.Few, "many": s.Many}
}

// counts reports whether the sentence has plurals at all.
func (s Sentence) counts() bool { return s.Zero+s.One+s.Two+s.Few+s.Many != "" }

// form is the sentence for a number, as it is written; a plural that it does not have is read as other.
func (s Sentence) form(g grammar, number string) string {
	if s.counts() {
		if text := s.plurals()[g.formOf(number)]; text != "" {
			return text
		}
	}
	return s.Other
}

// number is the value of n among the pairs: it chooses the plural.
func number(pairs []any) string {
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i] == "n" {
			return fmt.Sprint(pairs[i+1])
		}
	}
	return ""
}

var place = regexp.MustCompile(`\{[a-z]+\}`)

// places are the {names} of all forms, sorted, each once.
func (s Sentence) places() []string {
	found := place.FindAllString(strings.Join([]string{s.Zero, s.One, s.Two, s.Few, s.Many, s.Other}, " "), -1)
	slices.Sort(found)
	return slices.Compact(found)
}
