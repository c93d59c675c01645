package words_test

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"paceleaf/templates"
)

// TestLibraryWordsArePlain reads what clients read of library.toml, the table [library]: short sentences, and nothing that we do
// not say. [library-desk] is for colleagues.
func TestLibraryWordsArePlain(t *testing.T) {
	file, err := templates.FS.ReadFile("words/en-GB/library.toml")
	if err != nil {
		t.Fatal(err)
	}
	table, _, found := strings.Cut(string(file), "\n[library-desk]\n")
	if !found {
		t.Fatal("library.toml has lost its table [library-desk]")
	}
	for _, says := range hardWords(table) {
		t.Errorf("library.toml:%s", says)
	}
	for _, bad := range []string{`a = "You are safe now."`, `a = "It is 5 % more."`, `a = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen."`} {
		if len(hardWords(bad)) == 0 {
			t.Errorf("the test does not see %s", bad)
		}
	}
}

// hardWords lists what is wrong with the sentences of a words file.
func hardWords(file string) (wrong []string) {
	text, end := regexp.MustCompile(`"([^"]*)"`), regexp.MustCompile(`[.?!:](\s|$)`)
	for i, line := range strings.Split(file, "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		for _, said := range text.FindAllStringSubmatch(line, -1) {
			if bad := banned.FindString(said[1]); bad != "" {
				wrong = append(wrong, fmt.Sprintf("%d: says %q", i+1, bad))
			}
			for _, sentence := range end.Split(said[1], -1) {
				if n := len(strings.Fields(sentence)); n > longest {
					wrong = append(wrong, fmt.Sprintf("%d: %d words in %q", i+1, n, sentence))
				}
			}
		}
	}
	return wrong
}
