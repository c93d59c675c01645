package program_test

import (
	"fmt"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"

	"paceleaf/generator/program"
	"paceleaf/generator/source"
)

// The notes of reasons, programs/notes: why the tool does what it does, in short, once for a client and once for a colleague.

// note is a note of programs/notes.
type note = program.Note

func TestNotes(t *testing.T) {
	books, exercises := bibliography(t), library(t)
	heads, _ := fs.Glob(shelf, "notes/*.toml")
	if len(heads) < 6 {
		t.Errorf("%d notes, at least 6 are promised", len(heads))
	}
	for _, name := range heads {
		var n note
		head, _ := fs.ReadFile(shelf, name)
		for _, f := range source.TOML("programs/"+name, head, &n) {
			t.Errorf("%s", f)
		}
		for _, id := range n.Exercises {
			if exercises[id] == nil {
				t.Errorf("programs/%s: there is no exercise %q", name, id)
			}
		}
		if n.Short == "" {
			t.Errorf("programs/%s: the client's page has nothing to say of it in short", name)
		}
		text, err := fs.ReadFile(shelf, strings.TrimSuffix(name, ".toml")+".md")
		if err != nil {
			t.Error(err)
			continue
		}
		for _, wrong := range ofNote(n, string(text), books) {
			t.Errorf("programs/%s: %s", strings.TrimSuffix(name, ".toml"), wrong)
		}
	}
}

// bibliography reads the shipped sources.
func bibliography(t *testing.T) program.Bibliography {
	t.Helper()
	data, err := fs.ReadFile(shelf, "sources.toml")
	if err != nil {
		t.Fatal(err)
	}
	books := program.Bibliography{}
	for _, f := range source.TOML("programs/sources.toml", data, &books) {
		t.Errorf("%s", f)
	}
	if len(books) < 40 {
		t.Errorf("%d sources, at least 40 are promised", len(books))
	}
	for _, key := range slices.Sorted(maps.Keys(books)) {
		if read := books[key].Read; !slices.Contains([]string{"source", "second-hand", "from memory"}, read) {
			t.Errorf("programs/sources.toml [%s]: read = %q says not what was read", key, read)
		}
	}
	return books
}

var (
	cites    = regexp.MustCompile(`\[([a-z][a-z0-9-]*)\]`)
	headings = []string{"For you", "For colleagues"}
	parts    = []string{"What is known", "What we do", "Who disagrees", "What is not known"}
)

// Two ways to measure the strain of a ligament, which must not be ranked together (measurement.md 9).
var (
	bySensor  = []string{"heijne-2004", "beynnon-1997", "fleming-1998"}
	byImaging = []string{"taylor-2013"}
)

// ofNote lists what is wrong with the two texts of a note.
func ofNote(n note, text string, books program.Bibliography) (wrong []string) {
	sections, faults := source.Sections("note.md", []byte(text))
	var titles []string
	body := map[string]string{}
	for _, s := range sections {
		titles = append(titles, s.Title)
		body[s.Title] = s.Body
	}
	if len(faults) > 0 || !slices.Equal(titles, headings) {
		return []string{fmt.Sprintf("headings %q, want %q", titles, headings)}
	}
	return slices.Concat(ofClientText(body[headings[0]]), ofColleagueText(n, body[headings[1]], books))
}

// ofClientText holds the client's half: as easy as an exercise, at most 250 words, no source to look up.
func ofClientText(text string) []string {
	var lines []string
	for _, line := range strings.Split(text, "\n") {
		if line = strings.TrimPrefix(line, "- "); strings.TrimSpace(line) != "" {
			lines = append(lines, line)
		}
	}
	wrong := hard(lines...)
	if n := len(strings.Fields(text)); n > 250 {
		wrong = append(wrong, fmt.Sprintf("%d words for the client, above 250", n))
	}
	if cites.MatchString(text) {
		wrong = append(wrong, "a source in the client's text")
	}
	return wrong
}

// ofColleagueText holds the other half: each part, each source known and listed, what was read second-hand said to be so.
func ofColleagueText(n note, text string, books program.Bibliography) (wrong []string) {
	for _, part := range parts {
		if !strings.Contains(text, "**"+part+".**") {
			wrong = append(wrong, fmt.Sprintf("the part %q is missing", part))
		}
	}
	cited := map[string]bool{}
	for _, paragraph := range strings.Split(text, "\n\n") {
		var here []string
		for _, m := range cites.FindAllStringSubmatch(paragraph, -1) {
			here = append(here, m[1])
			cited[m[1]] = true
		}
		wrong = append(wrong, ofParagraph(paragraph, here, books)...)
	}
	if have, listed := slices.Sorted(maps.Keys(cited)), slices.Sorted(slices.Values(n.Sources)); !slices.Equal(have, listed) {
		wrong = append(wrong, fmt.Sprintf("cites %q, lists %q", have, listed))
	}
	return wrong
}

func ofParagraph(paragraph string, cited []string, books program.Bibliography) (wrong []string) {
	for _, key := range cited {
		switch book, known := books[key]; {
		case !known:
			wrong = append(wrong, fmt.Sprintf("source %q is not in programs/sources.toml", key))
		case book.Read == "from memory":
			wrong = append(wrong, fmt.Sprintf("%s was not read: nothing of it may stand as known", key))
		case book.Read == "second-hand" && !strings.Contains(strings.ToLower(paragraph), "second-hand"):
			wrong = append(wrong, fmt.Sprintf("%s was read second-hand, and its paragraph does not say so", key))
		}
	}
	of := func(keys []string) bool {
		return slices.ContainsFunc(cited, func(k string) bool { return slices.Contains(keys, k) })
	}
	if of(bySensor) && of(byImaging) {
		wrong = append(wrong, "strain by sensor and by imaging in one paragraph")
	}
	return wrong
}

// Every check of a note finds what it is for.
func TestNoteChecksCanFail(t *testing.T) {
	books := bibliography(t)
	easy := "## For you\n\n" + strings.Repeat("We test your knee and tell you what we see. ", 12)
	rest := "\n\n## For colleagues\n\n**What is known.** It rises [heijne-2004].\n\n**What we do.** Wait.\n\n**Who disagrees.** None.\n\n**What is not known.** Much.\n"
	n := note{Sources: []string{"heijne-2004"}}
	for _, row := range []struct {
		from, to string
		want     string
	}{
		{"", "", ""},
		{"## For colleagues", "## For others", "headings"},
		{"We test", "Nevertheless physiotherapeutically", "above 6"},
		{"We test", strings.Repeat("we do it ", 9), "above 250"},
		{"We test", "We test [heijne-2004]", "a source in the client's text"},
		{"**Who disagrees.** None.", "", `the part "Who disagrees" is missing`},
		{"None.", "Others [nobody-1999].", `source "nobody-1999" is not in`},
		{"None.", "Others [thomee-1997].", "thomee-1997 was not read"},
		{"None.", "Others [wellsandt-2017].", "does not say so"},
		{"It rises", "It rises [taylor-2013]", "by sensor and by imaging"},
		{"[heijne-2004]", "", "cites"},
	} {
		text := easy + rest
		if row.from != "" {
			text = strings.ReplaceAll(text, row.from, row.to)
		}
		found := strings.Join(ofNote(n, text, books), "; ")
		if row.want == "" && found != "" || !strings.Contains(found, row.want) {
			t.Errorf("%q for %q: found %q, want %q", row.to, row.from, found, row.want)
		}
	}
}
