// Package words holds the sentences, plurals, dates and numbers of a language. It decides nothing and knows no plan:
// a page says a key and gives the values, and the sentence stands in a file that a clinic may lay its own over.
package words

import (
	"fmt"
	"strings"
)

// Words are the sentences of one language.
type Words struct {
	Lang      string
	Dir       string // ltr or rtl
	sentences map[string]Sentence
}

// Has reports whether there is a sentence under the key. Pages ask it only for keys built from a program's open words.
func (w *Words) Has(key string) bool {
	_, ok := w.sentences[key]
	return ok
}

// Keys returns all keys, sorted.
func (w *Words) Keys() []string { return sortedKeys(w.sentences) }

// Say returns the sentence of the key with its places filled: name, value, name, value. The value of n chooses the plural.
// A key that does not exist is a mistake of ours, not of a clinic's; it shows as ‹key› and a test forbids it.
func (w *Words) Say(key string, pairs ...any) string {
	s, ok := w.sentences[key]
	if !ok {
		return "‹" + key + "›"
	}
	fill := make([]string, len(pairs)&^1)
	for i := range len(fill) / 2 {
		fill[2*i], fill[2*i+1] = "{"+fmt.Sprint(pairs[2*i])+"}", w.value(pairs[2*i+1])
	}
	return strings.NewReplacer(fill...).Replace(s.form(pairs))
}

// value writes a value into a sentence: floats as numbers of at most two decimals, the rest as it prints.
func (w *Words) value(v any) string {
	if f, ok := v.(float64); ok {
		return w.Number(f, 2)
	}
	return fmt.Sprint(v)
}

// Join writes a list as a sentence does: a, b and c.
func (w *Words) Join(items []string) string { return w.join(items, "list.last") }

// Either writes a list of choices: a, b or c.
func (w *Words) Either(items []string) string { return w.join(items, "list.either") }

func (w *Words) join(items []string, last string) string {
	if len(items) == 0 {
		return ""
	}
	text := items[0]
	for i, item := range items[1:] {
		key := "list.next"
		if i == len(items)-2 {
			key = last
		}
		text = w.Say(key, "before", text, "item", item)
	}
	return text
}
