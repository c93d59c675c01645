package generator

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"paceleaf/generator/source"
)

// print writes one kind of file.
func (k FileKind) print(b *strings.Builder) {
	fmt.Fprintf(b, "## %s: %s\n\n%s\n\n", k.Name, k.Path, k.About)
	for _, t := range k.Tables {
		k.printTable(b, t)
	}
}

func (k FileKind) printTable(b *strings.Builder, t source.KeyTable) {
	if t.Header != "" {
		fmt.Fprintf(b, "### %s\n\n", k.header(t.Header))
	}
	if t.About != "" {
		fmt.Fprintf(b, "%s.\n\n", upper(t.About))
	}
	if t.Same != "" {
		fmt.Fprintf(b, "The keys of %s.\n\n", k.header(t.Same))
		return
	}
	rows := [][]string{{"key", "must", "example", "write", "what it is"}}
	for _, key := range t.Keys {
		must := ""
		if key.Must {
			must = "must"
		}
		rows = append(rows, []string{code(key.Names...), must, code(k.example(key)), key.Write, key.About})
	}
	if len(t.Keys) > 0 {
		b.WriteString(table(rows))
	}
	for _, a := range t.Alike {
		fmt.Fprintf(b, "\nWhat stands here with %s may stand with %s too.\n", code(a.Listed), strings.ReplaceAll(code(a.Others...), " ", " and "))
	}
	b.WriteString("\n")
}

// header is a table's header as its file writes it.
func (k FileKind) header(toml string) string {
	if !k.inJSON() {
		return toml
	}
	return fmt.Sprintf(`"%s": [ { … } ]`, strings.Trim(toml, "[]"))
}

func (k FileKind) inJSON() bool { return strings.HasSuffix(k.Path, ".json") }

var dayAlone = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}$`)

// example is a key with its value, as its file writes it.
func (k FileKind) example(key source.Key) string {
	if !k.inJSON() {
		return key.Shown + " = " + key.Value
	}
	value := key.Value
	if dayAlone.MatchString(value) {
		value = `"` + value + `"`
	}
	parts := strings.Split(key.Shown, ".")
	slices.Reverse(parts)
	for i, part := range parts {
		value = fmt.Sprintf(`"%s": %s`, part, value)
		if i < len(parts)-1 {
			value = "{ " + value + " }"
		}
	}
	return value
}

// widest is the number of runes to which a column is filled up with blanks, chosen so that the first columns of a table can be
// read down on a screen.
const widest = 40

// table writes rows as a table of Markdown, the first row its head. All but the last column are filled up with blanks.
func table(rows [][]string) string {
	last := len(rows[0]) - 1
	width := make([]int, last)
	rule := make([]string, last+1)
	for _, row := range rows {
		for i := range width {
			width[i] = max(width[i], min(widest, utf8.RuneCountInString(row[i])))
		}
	}
	for i := range width {
		rule[i] = strings.Repeat("-", max(3, width[i]))
	}
	rule[last] = "---"
	var b strings.Builder
	for _, row := range slices.Insert(slices.Clone(rows), 1, rule) {
		for i, cell := range row {
			if cell = strings.ReplaceAll(cell, "|", `\|`); i < last {
				cell += strings.Repeat(" ", max(0, width[i]-utf8.RuneCountInString(cell)))
			}
			b.WriteString("| " + cell + " ")
		}
		b.WriteString("|\n")
	}
	return b.String()
}

// code puts words into the type of a typewriter.
func code(words ...string) string {
	quoted := make([]string, len(words))
	for i, w := range words {
		quoted[i] = "`" + w + "`"
	}
	return strings.Join(quoted, " ")
}

func upper(sentence string) string { return strings.ToUpper(sentence[:1]) + sentence[1:] }
