package program

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"paceleaf/generator/source"
)

// saidTag marks the texts of a struct that somebody reads: a string, a list of them, or what holds one. Its value is who: client or
// desk. Ids and the names of works are no texts.
const saidTag = "said"

// Texts are the texts of every file of the program, each once, in the order of reading, by file: what a translator has to say.
func (p *Program) Texts() map[string][]string {
	texts := map[string][]string{}
	p.eachFile(func(file string, holders ...any) {
		for _, h := range holders {
			eachText(reflect.ValueOf(h), func(text string) string {
				if !slices.Contains(texts[file], text) {
					texts[file] = append(texts[file], text)
				}
				return text
			})
		}
	})
	return texts
}

// Texts are the texts of the library besides its programs, as Program.Texts.
func (c *Catalog) Texts() map[string][]string {
	return (&Program{Exercises: c.Exercises, Notes: c.Notes, Sources: c.Sources}).Texts()
}

// eachText replaces every text below a value that is marked as one by what say makes of it.
func eachText(v reflect.Value, say func(string) string) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			eachText(v.Elem(), say)
		}
	case reflect.Slice:
		for i := range v.Len() {
			eachText(v.Index(i), say)
		}
	case reflect.Map:
		for _, key := range v.MapKeys() { // a copy, for what a map holds cannot be changed in its place
			held := reflect.New(v.Type().Elem()).Elem()
			held.Set(v.MapIndex(key))
			eachText(held, say)
			v.SetMapIndex(key, held)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Type().Field(i)
			switch _, said := f.Tag.Lookup(saidTag); {
			case !f.IsExported():
			case said:
				sayText(v.Field(i), say)
			case f.Type.Kind() != reflect.Map: // maps of a file hold ids
				eachText(v.Field(i), say)
			}
		}
	}
}

// blankLine parts the paragraphs of a text: each is a text by itself.
const blankLine = "\n\n"

// sayText replaces a text, or each of a list.
func sayText(v reflect.Value, say func(string) string) {
	switch {
	case v.Kind() == reflect.Slice:
		for i := range v.Len() {
			sayText(v.Index(i), say)
		}
	case v.Kind() == reflect.String && v.String() != "":
		blocks := strings.Split(v.String(), blankLine)
		for i, b := range blocks {
			blocks[i] = say(b)
		}
		v.SetString(strings.Join(blocks, blankLine))
	}
}

// TextPairs is a file of words for texts of one file, each with its English to write over.
func TextPairs(file string, texts []string) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "# The texts of %s: en is the English as it stands there, say is what your pages say.\n", file)
	for _, text := range texts {
		quoted := source.Quoted(text)
		fmt.Fprintf(&b, "\n[[text]]\nen = %s\nsay = %s\n", quoted, quoted)
	}
	return []byte(b.String())
}
