package generator_test

import (
	"cmp"
	"encoding/json"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"golang.org/x/net/html"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

// TestNothingIsHardWired builds the demo clinic in the proof language and looks for Latin words in everything that a page says: in its
// text, its labels, its pictures and charts. What is left may only be data: ids, names, units, citations, what a person typed.
//
// LOOK=DIR keeps the pages, to look at them.
func TestNothingIsHardWired(t *testing.T) {
	clinic := pseudoClinic(t)
	data, built := dataOf(t, clinic), builtPseudo(t, clinic)
	for _, page := range []string{"hand/tern-04/handout.html", "hand/tern-04/hold.html", "desk/tern-04/worksheet.html", "desk/tern-04/letter.html", "desk/tern-04/retest.html", "desk/overview.html",
		"desk/floor.html", "library/index.html", "library/exercises/leg-press-single.html", "library/notes/waiting-nine-months.html", "library/programs/acl-reconstruction.html"} {
		if built[page] == "" {
			t.Errorf("%s was not built", page)
		}
	}
	data.codes(t, built)
	for name, page := range built {
		if !strings.HasSuffix(name, ".html") {
			continue
		}
		found := map[string]string{}
		for _, text := range spokenIn(t, page) {
			for _, word := range data.foreign(text) {
				found[word] = text
			}
		}
		for _, word := range slices.Sorted(maps.Keys(found)) {
			t.Errorf("%s says %q in %.160q", name, word, found[word])
		}
	}
}

// builtPseudo is every page of a clinic in the proof language, by name.
func builtPseudo(t *testing.T, clinic fstest.MapFS) map[string]string {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "golden"})
	if house == nil || len(faults) > 0 {
		t.Fatalf("the demo clinic in the proof language has faults:\n%.4000v", faults)
	}
	dir := cmp.Or(os.Getenv("LOOK"), t.TempDir())
	out, err := site.Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	report, err := house.Build(out, 0, nil)
	if err != nil || len(report.Faults) > 0 {
		t.Fatalf("build: %v %.4000v", err, report.Faults)
	}
	if err := out.Close(); err != nil {
		t.Fatal(err)
	}
	floor, err := house.Floor(unit.Day{Year: 2026, Month: 4, Date: 6}, "")
	if err != nil || floor.Here == 0 {
		t.Fatalf("the floor sheet holds %d clients: %v", floor.Here, err)
	}
	built := map[string]string{floor.File.Path: string(floor.File.Data)}
	walk(t, dir, func(name string, data []byte) { built[name] = string(data) })
	return built
}

// spokenIn are the texts of a page that somebody reads or hears.
func spokenIn(t *testing.T, page string) (texts []string) {
	t.Helper()
	root, err := html.Parse(strings.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	for n := range root.Descendants() {
		if n.Type == html.TextNode && n.Parent.Data != "style" && n.Parent.Data != "script" && strings.TrimSpace(n.Data) != "" {
			texts = append(texts, n.Data)
		}
		if n.Type == html.TextNode && n.Parent.Data == "script" && slices.Contains(n.Parent.Attr, html.Attribute{Key: "type", Val: "application/json"}) {
			var data any
			if err := json.Unmarshal([]byte(n.Data), &data); err != nil {
				t.Fatal(err)
			}
			texts = append(texts, saidIn("", data)...)
		}
		for _, a := range n.Attr {
			if slices.Contains([]string{"aria-label", "alt", "title", "placeholder"}, a.Key) {
				texts = append(texts, a.Val)
			}
		}
	}
	return texts
}

// saidIn are the texts that a script shows: all that stands under says, and the names of its lists.
func saidIn(key string, data any) (texts []string) {
	switch v := data.(type) {
	case map[string]any:
		for k, held := range v {
			if key == "says" {
				k = key
			}
			texts = append(texts, saidIn(k, held)...)
		}
	case []any:
		for _, held := range v {
			texts = append(texts, saidIn(key, held)...)
		}
	case string:
		if slices.Contains([]string{"says", "weeks", "name", "title", "leg"}, key) {
			texts = append(texts, v)
		}
	}
	return texts
}

// TestHardWiredIsSeen holds the test itself: English between data is found, and data is not taken for English.
func TestHardWiredIsSeen(t *testing.T) {
	d := dataOf(t, pseudoClinic(t))
	p := readPseudo(t)
	for _, row := range []struct{ name, text, want string }{
		{"a sentence", "Stop now", "Stop now"},
		{"a word between data", "tern-04 · block 3", "block"},
		{"a unit that is a word", "25.2 weeks", "weeks"},
		{"a word of a closed set", "trace", "trace"},
		{"a sum", "knee-extension.left.torque = 331 N × 0.31 m = 102.61 N·m — clients/tern-04/tests/2026-04-06.toml, strength[0].left.peak_n[1]", ""},
		{"a client and the clinic", "Jo (tern-04), Saltmarsh Knee Clinic", ""},
		{"a sentence of the language", p.say("Stop now") + " 3 × 10 · 20 kg", ""},
	} {
		if got := strings.Join(d.foreign(row.text), " "); got != row.want {
			t.Errorf("%s: %q has %q, want %q", row.name, row.text, got, row.want)
		}
	}
}

// TestProofLanguageIsLonger: the words of the proof language are at least 35 % longer, which is what a translation may be.
func TestProofLanguageIsLonger(t *testing.T) {
	p := readPseudo(t)
	for _, word := range []string{"stop", "physiotherapist", "a"} {
		if had, has := float64(len(word)), float64(len([]rune(p.word(word)))); has < had*(1+pseudoGrowth) {
			t.Errorf("%s: %g letters became %g", word, had, has)
		}
	}
}
