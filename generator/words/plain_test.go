package words_test

import (
	"regexp"
	"strings"
	"testing"

	"paceleaf/templates"
)

// longest is the most words that a sentence for a client may have (Source: sports-knee leaflets rewritten
// to it, Arthrosc Sports Med Rehabil 2023, doi 10.1016/j.asmr.2022.10.004).
const longest = 15

var banned = regexp.MustCompile(`(?i)%|1RM|\bsafe|\bcleared|\bcompliance|\badherence|\bthe patient|\bguarantee|\bcure\b`)

// TestClientWordsArePlain reads the file itself: every sentence is short and none says what we do not say.
func TestClientWordsArePlain(t *testing.T) {
	file, err := templates.FS.ReadFile("words/en-GB/client.toml")
	if err != nil {
		t.Fatal(err)
	}
	text := regexp.MustCompile(`"([^"]*)"`)
	end := regexp.MustCompile(`[.?!:](\s|$)`)
	for i, line := range strings.Split(string(file), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		for _, said := range text.FindAllStringSubmatch(line, -1) {
			if bad := banned.FindString(said[1]); bad != "" {
				t.Errorf("client.toml:%d: says %q", i+1, bad)
			}
			for _, sentence := range end.Split(said[1], -1) {
				if n := len(strings.Fields(sentence)); n > longest {
					t.Errorf("client.toml:%d: %d words in %q", i+1, n, sentence)
				}
			}
		}
	}
}
