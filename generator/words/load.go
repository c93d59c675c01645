package words

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"paceleaf/generator/source"
)

// Shipped is the language that every other is measured by: it has all keys and all places.
const Shipped = "en-GB"

// files of a language: what a client reads, what a therapist reads, what the library says to both, and the fragments that the core makes for the therapist.
var files = []string{"client.toml", "desk.toml", "library.toml", reasonsFile}

// Load reads the words of a language from a folder of templates, the clinic's own over the shipped, key by key.
func Load(folder source.Folder, lang string) (*Words, source.Faults) {
	w := &Words{Lang: lang, Dir: "ltr", sentences: map[string]Sentence{}, Glossary: folder.Exists("words/" + lang + "/" + GlossaryFile)}
	l := loader{words: w, shipped: map[string]Sentence{}, data: map[string][]byte{}}
	for _, file := range files {
		l.file(folder, lang, file)
	}
	l.missing()
	if l.found {
		l.faults = append(l.faults, w.learn()...)
		l.uncounted()
	}
	faults := l.faults.Locate(func(file string) []byte { return l.data[file] })
	faults.Sort()
	return w, faults
}

// loader gathers the layers and the mistakes in them.
type loader struct {
	words   *Words
	shipped map[string]Sentence
	data    map[string][]byte // of the layer read last, to find lines in
	found   bool
	faults  source.Faults
}

// file reads one file of the language: its shipped layer first, then what is laid over.
func (l *loader) file(folder source.Folder, lang, file string) {
	shipped := map[string]Sentence{}
	if all := folder.Layers("words/" + Shipped + "/" + file); len(all) > 0 {
		shipped = l.read("templates/words/"+Shipped+"/"+file, all[len(all)-1])
	}
	maps.Copy(l.shipped, shipped)
	layers := folder.Layers("words/" + lang + "/" + file)
	l.found = l.found || len(layers) > 0
	name := "templates/words/" + lang + "/" + file
	for i, data := range slices.Backward(layers) {
		own := shipped
		if lang != Shipped || i < len(layers)-1 {
			own = l.read(name, data)
			l.judge(own, shipped)
		}
		maps.Copy(l.words.sentences, own)
	}
}

// read flattens a file's tables into keys: [head] title is head.title.
func (l *loader) read(name string, data []byte) map[string]Sentence {
	if strings.HasSuffix(name, "/"+reasonsFile) {
		return l.reasons(name, data)
	}
	var tables map[string]map[string]Sentence
	l.faults = append(l.faults, source.TOML(name, data, &tables)...)
	l.data[name] = data
	flat := map[string]Sentence{}
	for table, sentences := range tables {
		for key, s := range sentences {
			flat[table+"."+key] = s
		}
	}
	return flat
}

// judge holds a layer against the shipped file: no key and no place that the pages do not know.
func (l *loader) judge(own, shipped map[string]Sentence) {
	for _, key := range sortedKeys(own) {
		s, known := shipped[key]
		if !known {
			l.wrong(own[key], fmt.Sprintf("no page uses the sentence %q", key), instead(key, shipped))
			continue
		}
		have := s.places()
		for _, p := range own[key].places() {
			if !slices.Contains(have, p) && !(p == "{n}" && s.counts()) { // what counts is given its number, said or not
				l.wrong(own[key], fmt.Sprintf("the page has nothing to put in the place %s of %q", p, key), placesOf(have))
			}
		}
	}
}

// missing names the sentences that a language does not have.
func (l *loader) missing() {
	switch {
	case !l.found:
		l.faults.Add(source.Fault{File: "clinic.toml", Key: "language", What: fmt.Sprintf("there are no words of the language %q", l.words.Lang),
			Instead: fmt.Sprintf("write %q, or add the folder templates/words/%s", Shipped, l.words.Lang)})
		return
	case l.words.Lang == Shipped:
		return
	}
	for _, key := range sortedKeys(l.shipped) {
		if !l.words.Has(key) {
			s := l.shipped[key]
			l.faults.Add(source.Fault{File: strings.Replace(s.At.File, Shipped, l.words.Lang, 1), What: fmt.Sprintf("the sentence %q is missing", key),
				Instead: fmt.Sprintf("translate %q", s.Other)})
		}
	}
}

// uncounted names the sentences that count and lack a plural which whole numbers of the language take.
func (l *loader) uncounted() {
	taken := l.words.counting()
	for _, key := range sortedKeys(l.words.sentences) {
		s := l.words.sentences[key]
		if !s.counts() {
			continue // said in a way that needs no plural
		}
		for _, form := range taken {
			if s.plurals()[form] == "" {
				l.wrong(s, fmt.Sprintf("%q counts, and has no form %q, which the language has", key, form), fmt.Sprintf(`write { %s = "…", other = "…" }`, strings.Join(taken, ` = "…", `)))
				break
			}
		}
	}
}

func (l *loader) wrong(s Sentence, what, instead string) {
	l.faults.Add(source.Fault{File: s.At.File, Line: s.At.Line, Key: s.At.Key, What: what, Instead: instead})
}

func placesOf(have []string) string {
	if len(have) == 0 {
		return "write the sentence without places"
	}
	return "it may use " + strings.Join(have, ", ")
}

func sortedKeys(m map[string]Sentence) []string { return slices.Sorted(maps.Keys(m)) }
