package words_test

import (
	"encoding/csv"
	"io/fs"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/words"
	"paceleaf/programs"
	"paceleaf/templates"
)

// TestGrade: both formulas on published counts and, where a text is printed with them, our counting of it.
func TestGrade(t *testing.T) {
	file, err := os.Open("../../testdata/published/words/readability.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) != 5 {
		t.Fatalf("%d rows, want a head and the cases A to D: %v", len(rows), err)
	}
	for _, row := range rows[1:] {
		n := func(i int) float64 {
			v, err := strconv.ParseFloat(row[i], 64)
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
		c := words.Counts{Letters: int(n(2)), Characters: int(n(3)), Words: int(n(4)), Sentences: int(n(5))}
		if g := c.Grade(); math.Abs(g.ColemanLiau-n(6)) > 0.005 || math.Abs(g.ARI-n(7)) > 0.005 {
			t.Errorf("case %s: %+v, want %s and %s", row[0], g, row[6], row[7])
		}
		if got := words.Count(row[1]); row[1] != "" && (got.Letters != c.Letters || got.Words != c.Words || got.Sentences != c.Sentences) {
			t.Errorf("case %s counts as %+v, want %+v", row[0], got, c)
		}
	}
}

// TestKnownWords: a word that the clinic's clients know makes a text no harder, and a sentence that ends in it is still one.
func TestKnownWords(t *testing.T) {
	text := "Ask your physiotherapist. Stop now."
	for _, row := range []struct {
		name  string
		known []string
		want  words.Counts
	}{
		{"none", nil, words.Counts{Letters: 29, Characters: 29, Words: 5, Sentences: 2}},
		{"one", []string{"Physiotherapist"}, words.Counts{Letters: 14, Characters: 14, Words: 4, Sentences: 2}},
		{"one that is not there", []string{"hamstring"}, words.Counts{Letters: 29, Characters: 29, Words: 5, Sentences: 2}},
		{"a part of a word", []string{"physio"}, words.Counts{Letters: 29, Characters: 29, Words: 5, Sentences: 2}},
	} {
		if got := words.CountBut(row.known, text); got != row.want {
			t.Errorf("%s: %+v, want %+v", row.name, got, row.want)
		}
	}
}

// plain are the shipped hard words.
func plain(t *testing.T) words.PlainWords {
	t.Helper()
	p, faults := words.LoadPlain(source.Over(templates.FS), words.Shipped)
	if len(faults) > 0 || len(p.Words) < 30 {
		t.Fatalf("%d hard words: %v", len(p.Words), faults)
	}
	return p
}

func TestHardWords(t *testing.T) {
	for _, row := range []struct{ text, want, why string }{
		{"More flexion, please.", "flexion", "a mark at its end"},
		{"Utilise a chair.", "utilise", "a capital"},
		{"Do it prior  to bed.", "prior to", "two words"},
		{"A collateral ligament.", "", "a part of another word"},
		{"Lie prone; weight-bearing later.", "prone weight-bearing", "two of them, one with a hyphen"},
		{"Bend and lift.", "", "plain"},
	} {
		var got []string
		for _, w := range plain(t).In(row.text) {
			got = append(got, w.Hard)
		}
		if strings.Join(got, " ") != row.want {
			t.Errorf("%q: %v, want %q (%s)", row.text, got, row.want, row.why)
		}
	}
}

// TestShippedTextsUseNoHardWord: neither the sentences of client's pages nor the exercises, programs and notes as a client reads them.
func TestShippedTextsUseNoHardWord(t *testing.T) {
	p := plain(t)
	use := func(where, text string) {
		for _, w := range p.In(text) {
			t.Errorf("%s says %q in %.120q; write %q", where, w.Hard, text, w.Plain)
		}
	}
	client, err := fs.ReadFile(templates.FS, "words/en-GB/client.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(client), "\n") {
		if _, said, is := strings.Cut(line, `= "`); is {
			use("client.toml", said)
		}
	}
	catalog, _ := program.Library{Folder: source.Over(programs.FS)}.Catalog()
	for id, e := range catalog.Exercises {
		texts := slices.Concat([]string{e.Describe, e.Words.Setup, e.Words.Normal, e.Words.EaseOff, e.Words.Stop}, e.Words.Steps, e.Words.Faults)
		use("exercise "+id, strings.Join(texts, " ; "))
	}
	for _, n := range catalog.Notes {
		use("note "+n.ID, n.ForYou+" ; "+n.Short)
	}
	if len(catalog.Exercises) < 60 {
		t.Errorf("only %d exercises were read", len(catalog.Exercises))
	}
}
