package generator_test

import (
	"cmp"
	"encoding/json"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"

	"paceleaf/programs"
)

// proofData is what a page may say in every language alike.
type proofData struct {
	phrases []string        // what a person typed and the works that are cited, the longest first
	words   map[string]bool // ids, units, and the writing of sums
}

var (
	latin = regexp.MustCompile(`[A-Za-z]{2,}`)
	// placeLike are ids of numbers and places in files: knee-extension.left.torque, clients/tern-04/client.toml:8, strength[0].
	placeLike = regexp.MustCompile(`[A-Za-z0-9@-]*[A-Za-z0-9](?:[./_\[][A-Za-z0-9\]@-]+|\]|:\d+)+`)
	idLike    = regexp.MustCompile(`[A-Za-zÀ-ž0-9]+(?:-[A-Za-zÀ-ž0-9]+)*`)
)

// foreign are the Latin words of a text that are no data.
func (d proofData) foreign(text string) []string {
	text = strings.NewReplacer("\u2066", "", "\u2069", "", "\u00a0", " ").Replace(text)
	for _, phrase := range d.phrases {
		text = strings.ReplaceAll(text, phrase, " ")
	}
	text = placeLike.ReplaceAllString(text, " ")
	text = idLike.ReplaceAllStringFunc(text, func(id string) string {
		if d.words[id] {
			return " "
		}
		return id
	})
	return latin.FindAllString(text, -1)
}

// codes are the ids that a plan gives its flags, and names of things that it lists.
func (d proofData) codes(t *testing.T, built map[string]string) {
	for name, body := range built {
		if path.Base(name) != "plan.json" {
			continue
		}
		var p struct {
			Flags []struct{ ID string }
		}
		if err := json.Unmarshal([]byte(body), &p); err != nil {
			t.Fatal(err)
		}
		for _, f := range p.Flags {
			d.words[f.ID] = true
		}
	}
}

// dataOf gathers it from the clinic's files and from the programs.
func dataOf(t *testing.T, clinic fs.FS) proofData {
	d := proofData{words: map[string]bool{}}
	for _, w := range strings.Fields("kg lb cm mm min Nm mmHg kgf lbf Paceleaf golden down sqrt pow exp ln sd cos max min sum mean slope intercept slopeln interceptln slopemedian interceptmedian hamstrings-to-quadriceps doi device seat back pad") {
		d.words[w] = true
	}
	for _, of := range []fs.FS{clinic, programs.FS} {
		fs.WalkDir(of, ".", func(name string, e fs.DirEntry, err error) error {
			if err != nil || e.IsDir() || strings.Contains(name, "words/") {
				return err
			}
			base, _, _ := strings.Cut(path.Base(name), ".")
			d.words[base], d.words[path.Base(path.Dir(name))] = true, true
			body, err := fs.ReadFile(of, name)
			if strings.HasSuffix(name, ".toml") || strings.HasSuffix(name, ".json") {
				d.gather(t, name, body)
			}
			return err
		})
	}
	slices.SortFunc(d.phrases, func(a, b string) int { return cmp.Or(len(b)-len(a), strings.Compare(a, b)) })
	return d
}

func (d *proofData) gather(t *testing.T, name string, body []byte) {
	var tree map[string]any
	read := toml.Unmarshal
	if strings.HasSuffix(name, ".json") {
		read = json.Unmarshal
	}
	if err := read(body, &tree); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	d.take(name, "", tree)
}

// idKeys are the keys of files whose values are ids.
var idKeys = strings.Fields("id code exercise program place device gauge by procedure also criterion test measure counts_from choose slots phases " +
	"limits sources source easier harder activity preset presets use do needs role guardian")

// take keeps ids as words and what was typed by a person as phrases. The texts of programs are translated, so they are no data; of
// the bibliography all is but what it says about a work.
func (d *proofData) take(file, key string, value any) {
	switch v := value.(type) {
	case map[string]any:
		for k, held := range v {
			d.words[k] = d.words[k] || file == "sources.toml" && key == ""
			d.take(file, k, held)
		}
	case []any:
		for _, held := range v {
			d.take(file, key, held)
		}
	case []map[string]any:
		for _, held := range v {
			d.take(file, key, held)
		}
	case string:
		written := strings.HasPrefix(file, "clients/") || file == "clinic.toml" || file == "sources.toml" && key != "about"
		switch several := strings.Contains(v, " "); {
		case key == "also" && !several: // a procedure, also where a page writes its id as words
			d.words[v] = true
			d.phrases = append(d.phrases, strings.ReplaceAll(v, "-", " "))
		case !several && (slices.Contains(idKeys, key) || written && v != strings.ToLower(v)):
			d.words[v] = true
		case several && written:
			if key == "in" { // a journal, of which a handout leaves volume and page out
				d.phrases = append(d.phrases, strings.TrimSpace(strings.TrimRight(v, "0123456789():- ")))
			}
			first, _, _ := strings.Cut(v, ",") // of the authors of a work
			surname, _, _ := strings.Cut(first, " ")
			d.phrases = append(d.phrases, v, first)
			d.words[surname] = d.words[surname] || file == "sources.toml" && key == "by"
		}
	}
}
