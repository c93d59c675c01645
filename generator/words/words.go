// Package words holds the sentences, plurals, dates and numbers of a language. It decides nothing and knows no plan:
// a page says a key and gives the values, and the sentence stands in a file that a clinic may lay its own over.
package words

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Words are the sentences of one language.
type Words struct {
	Lang      string
	Dir       string // ltr or rtl
	Glossary  bool   // the language explains the words that clients meet: the library has a page of them
	sentences map[string]Sentence
	grammar
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
	return w.filled(s.form(w.grammar, number(pairs)), pairs)
}

// filled fills the places of a text once: what a value says is never taken for a place.
func (w *Words) filled(text string, pairs []any) string {
	var b strings.Builder
	for {
		before, rest, opens := strings.Cut(text, "{")
		b.WriteString(before)
		if !opens {
			return b.String()
		}
		name, after, _ := strings.Cut(rest, "}")
		if value, given := w.given(name, pairs); given {
			b.WriteString(value)
			text = after
			continue
		}
		b.WriteByte('{')
		text = rest
	}
}

// given is the value of a name among the pairs.
func (w *Words) given(name string, pairs []any) (value string, ok bool) {
	for i := 0; i+1 < len(pairs); i += 2 {
		if pairs[i] == name {
			return w.value(pairs[i+1]), true
		}
	}
	return "", false
}

// value writes a value into a sentence: floats as numbers of at most two decimals, the rest as it prints.
func (w *Words) value(v any) string {
	switch v := v.(type) {
	case string:
		return v
	case float64:
		return w.Number(v, 2)
	}
	return fmt.Sprint(v)
}

// Join writes a list as a sentence does: a, b and c.
func (w *Words) Join(items []string) string { return w.join(items, "list.last") }

// Either writes a list of choices: a, b or c.
func (w *Words) Either(items []string) string { return w.join(items, "list.either") }

// Each writes a list as short sentences, without the last full stop: A. B. C. So none grows long with the list.
func (w *Words) Each(items []string) (text string) {
	for i, item := range items {
		first, size := utf8.DecodeRuneInString(item)
		item = string(unicode.ToUpper(first)) + item[size:]
		if i == 0 {
			text = item
			continue
		}
		text = w.Say("list.each", "before", text, "item", item)
	}
	return text
}

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
