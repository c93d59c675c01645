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
	One   string `key:"one" doc:"where the number n is 1"`
	Other string `key:"other,required" doc:"else"`
}

// FromShort reads a sentence that has no plural.
func (s *Sentence) FromShort(text string, at basis.Origin) error {
	if strings.TrimSpace(text) == "" {
		return fmt.Errorf("the sentence is empty; write the words, or leave the key out")
	}
	s.At, s.Other = at, text
	return nil
}

// form chooses the plural. The shipped languages have two forms; one with more adds its own rule here.
func (s Sentence) form(pairs []any) string {
	if s.One == "" {
		return s.Other
	}
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i] == "n" && fmt.Sprint(pairs[i+1]) == "1" {
			return s.One
		}
	}
	return s.Other
}

var place = regexp.MustCompile(`\{[a-z]+\}`)

// places are the {names} of all forms, sorted, each once.
func (s Sentence) places() []string {
	found := place.FindAllString(s.One+" "+s.Other, -1)
	slices.Sort(found)
	return slices.Compact(found)
}
