package generator

import (
	"fmt"
	"io/fs"
	"regexp"
	"strings"

	"paceleaf/generator/words"
)

// sentenceFiles are the files of words that hold one sentence under each key: what clients read, then what therapists read.
var sentenceFiles = []string{"client.toml", "library.toml", "desk.toml"}

// WordReference prints every sentence of the pages, each with its whole key on one line. Such a line may be put into the file of
// that name in a clinic's own templates, and changed there.
func WordReference(templates fs.FS) (string, error) {
	var b strings.Builder
	b.WriteString("# Every sentence of the pages. To say one your way, put its line into the file of your clinic under which it stands here,\n" +
		"# and change the text behind the = sign. What stands in {braces} is filled in by Paceleaf: keep it.\n")
	for _, name := range sentenceFiles {
		file := "words/" + words.Shipped + "/" + name
		data, err := fs.ReadFile(templates, file)
		if err != nil {
			return "", err
		}
		fmt.Fprintf(&b, "\n# === templates/%s ===\n", file)
		b.WriteString(wholeKeys(string(data)))
	}
	return b.String(), nil
}

var (
	ofTable = regexp.MustCompile(`^\[([a-z0-9.-]+)\]`)
	keyed   = regexp.MustCompile(`^[a-z0-9-]+ *= `)
)

// wholeKeys puts the name of its table before each key, and leaves remarks as they are.
func wholeKeys(toml string) string {
	var b strings.Builder
	table := ""
	for line := range strings.Lines(toml) {
		switch m := ofTable.FindStringSubmatch(line); {
		case m != nil:
			table = m[1] + "."
		case keyed.MatchString(line):
			b.WriteString(table + line)
		default:
			b.WriteString(line)
		}
	}
	return b.String()
}
