package generator_test

import (
	"encoding/csv"
	"fmt"
	"io/fs"
	"maps"
	"math"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/BurntSushi/toml"

	"paceleaf/generator"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// The proof language, qaa, is nobody's: BCP 47 keeps that tag for private use. It is made from the English word by word: each Latin letter
// becomes the one beside it in testdata/languages/qaa.csv, so that no Latin letter is left; each word grows by 35 %; it runs from right
// to left; numbers have a comma, and its plurals are those of Polish, which has three. What a page in it still says in Latin letters is
// hard-wired, or data.
const (
	pseudoLanguage = "qaa"
	pseudoGrowth   = 0.35
)

// pseudo writes English in the proof language.
type pseudo struct{ letters map[rune]rune }

func readPseudo(t testing.TB) pseudo {
	t.Helper()
	data, err := os.Open("../testdata/languages/" + pseudoLanguage + ".csv")
	if err != nil {
		t.Fatal(err)
	}
	defer data.Close()
	rows, err := csv.NewReader(data).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	p := pseudo{letters: map[rune]rune{}}
	for _, row := range rows[1:] {
		p.letters[[]rune(row[0])[0]] = []rune(row[1])[0]
	}
	return p
}

var placeOrWord = regexp.MustCompile(`\{[a-z]+\}|\[\[?[a-z0-9_-]+\]?\]|\]\([^)]*\)|[A-Za-zÀ-ž]+`)

// say writes a sentence; its places stay.
func (p pseudo) say(text string) string {
	return placeOrWord.ReplaceAllStringFunc(text, func(word string) string {
		if strings.ContainsAny(word, "{[(") { // a place, a key of a source, a link
			return word
		}
		return p.word(word)
	})
}

// word maps the letters and adds as many again as the growth asks, from the word's own beginning.
func (p pseudo) word(word string) string {
	var out []rune
	for _, r := range strings.ToLower(word) {
		if to, known := p.letters[r]; known {
			out = append(out, to)
		}
	}
	if len(out) == 0 {
		return word
	}
	for i := range int(math.Ceil(pseudoGrowth * float64(len(out)))) {
		out = append(out, out[i%len(out)])
	}
	return string(out)
}

// language is every file of the proof language, by its name in a clinic's folder.
func (p pseudo) language(t testing.TB) map[string]string {
	t.Helper()
	files := map[string]string{}
	for _, name := range []string{"client.toml", "desk.toml", "library.toml"} {
		if data, err := fs.ReadFile(templates.FS, "words/en-GB/"+name); err == nil {
			files["templates/words/"+pseudoLanguage+"/"+name] = p.sentences(t, string(data))
		}
	}
	files["templates/words/"+pseudoLanguage+"/reasons.toml"] = p.reasons(t)
	library := program.Library{Folder: source.Over(programs.FS)}
	texts := map[string][]string{}
	for _, id := range library.IDs() {
		read, _ := library.Program(id)
		maps.Copy(texts, read.Texts())
	}
	catalog, _ := library.Catalog()
	maps.Copy(texts, catalog.Texts())
	for file, list := range texts {
		if len(list) > 0 {
			files["programs/words/"+pseudoLanguage+"/"+strings.TrimPrefix(file, "programs/")] = p.pairs(list)
		}
	}
	return files
}

// sentences are those of one file, table by table; a sentence that counts gets the three plurals of Polish.
func (p pseudo) sentences(t testing.TB, english string) string {
	var tables map[string]map[string]any
	if err := toml.Unmarshal([]byte(english), &tables); err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	for _, table := range slices.Sorted(maps.Keys(tables)) {
		fmt.Fprintf(&b, "[%s]\n", table)
		for _, key := range slices.Sorted(maps.Keys(tables[table])) {
			fmt.Fprintf(&b, "%s = %s\n", key, p.value(table, key, tables[table][key]))
		}
	}
	return b.String()
}

func (p pseudo) value(table, key string, value any) string {
	grammar := map[string]string{"direction": "rtl", "decimal": ",", "plurals": "pl"}
	switch v := value.(type) {
	case map[string]any:
		one, other := fmt.Sprint(v["one"]), fmt.Sprint(v["other"])
		return fmt.Sprintf("{ one = %q, few = %q, many = %q, other = %q }", p.say(one), p.say(other), p.say(other), p.say(other))
	case string:
		if table == "language" {
			return fmt.Sprintf("%q", grammar[key])
		}
		return fmt.Sprintf("%q", p.say(v))
	}
	return ""
}

func (p pseudo) reasons(t testing.TB) string {
	var file struct {
		Text []struct{ En, Say string }
	}
	data, err := fs.ReadFile(templates.FS, "words/en-GB/reasons.toml")
	if err == nil {
		err = toml.Unmarshal(data, &file)
	}
	if err != nil {
		t.Fatal(err)
	}
	var english []string
	for _, pair := range file.Text {
		english = append(english, pair.En)
	}
	return p.pairs(english)
}

// pairs are texts with their words.
func (p pseudo) pairs(english []string) string {
	var b strings.Builder
	for _, text := range english {
		fmt.Fprintf(&b, "[[text]]\nen = %q\nsay = %q\n", text, p.say(text))
	}
	return b.String()
}

// pseudoClinic is the demo clinic in the proof language.
func pseudoClinic(t testing.TB) fstest.MapFS {
	t.Helper()
	demo, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	clinic := fstest.MapFS{}
	for name, data := range demo {
		clinic[name] = &fstest.MapFile{Data: data}
	}
	p := readPseudo(t)
	for name, data := range demo {
		if strings.HasSuffix(name, ".md") {
			clinic[name] = &fstest.MapFile{Data: []byte(p.say(string(data)))} // a person's note, typed in their language
		}
	}
	for name, text := range p.language(t) {
		clinic[name] = &fstest.MapFile{Data: []byte(text)}
	}
	clinic["clients/tern-04/holds/2026-04-15.toml"] = &fstest.MapFile{Data: []byte("by = \"imbali\"\nreason = \"swelling: after football\"\n")}
	own := regexp.MustCompile(`(?m)^language = .*\n`).ReplaceAllString(string(demo["clinic.toml"]), "")
	clinic["clinic.toml"] = &fstest.MapFile{Data: []byte("language = \"" + pseudoLanguage + "\"\n" + own)}
	return clinic
}
