package generator

import (
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"paceleaf/generator/program"
	"paceleaf/generator/words"
)

// StartLanguage are the files of another language that the clinic does not have yet, each with the English to write over: the
// sentences of pages, and the texts of every program, exercise and note. The clinic's pages stay as they are until
// clinic.toml names the language. The error says what is wrong with the tag, or that nothing is left to begin.
func (h *House) StartLanguage(tag string) (files []Started, err error) {
	if err := words.CheckTag(tag); err != nil {
		return nil, err
	}
	sentences, err := fs.ReadDir(h.Templates, path.Join("words", words.Shipped))
	if err != nil {
		return nil, err
	}
	for _, e := range sentences {
		if e.Name() == words.PlainFile {
			continue // hard words are each language's own
		}
		data, err := fs.ReadFile(h.Templates, path.Join("words", words.Shipped, e.Name()))
		if err != nil {
			return nil, err
		}
		name := path.Join("templates/words", tag, e.Name())
		if e.Name() == words.GlossaryFile {
			data = append([]byte(schemaLine(name, "glossary")), data...)
		}
		files = append(files, Started{Name: name, Data: data})
	}
	texts := h.libraryTexts()
	for _, file := range slices.Sorted(maps.Keys(texts)) {
		name := path.Join("programs/words", tag, strings.TrimPrefix(file, "programs/"))
		files = append(files, Started{Name: name, Data: append([]byte(schemaLine(name, "translation")), program.TextPairs(file, texts[file])...)})
	}
	files = slices.DeleteFunc(files, func(f Started) bool { return h.folder.Exists(f.Name) })
	if len(files) == 0 {
		return nil, fmt.Errorf("every file of the language %s is there; write language = %q in clinic.toml, and paceleaf check names what is missing in them", tag, tag)
	}
	return files, nil
}

// schemaLine is the first line of a file that tells an editor by which schema to complete and check it.
func schemaLine(file, kind string) string {
	return fmt.Sprintf("#:schema %s%s/%s.json\n", strings.Repeat("../", strings.Count(file, "/")), SchemaFolder, kind)
}

// libraryTexts are the texts of all programs, exercises and notes in English, by file; a file with mistakes is left out.
func (h *House) libraryTexts() map[string][]string {
	english := program.Library{Folder: h.library.Folder}
	catalog, _ := english.Catalog()
	texts := catalog.Texts()
	for _, id := range english.IDs() {
		if p, _ := english.Program(id); p != nil {
			maps.Copy(texts, p.Texts())
		}
	}
	return texts
}
