package source

import (
	"bytes"
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"
)

// notTOML says in plain words what the library could not read. The line itself is looked at first: the usual slips are
// known better from it than from the library's words.
func notTOML(file string, data []byte, err error) Fault {
	var pe toml.ParseError
	if !errors.As(err, &pe) {
		return Fault{File: file, Line: 1, What: "the file cannot be read", Instead: "write key = value lines and [table] headers"}
	}
	lines := bytes.Split(bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")), []byte("\n"))
	if n := len(lines); n > 1 && len(lines[n-1]) == 0 {
		lines = lines[:n-1]
	}
	at := pe.Position.Line
	if strings.Contains(pe.Message, `'\n'`) && strings.Contains(pe.Message, "table") {
		at-- // an open header ends on its own line; the library has gone on to the next
	}
	if strings.Contains(pe.Message, `'"""'`) || strings.Contains(pe.Message, `"'''"`) {
		at = Lines(data).last // a long text that never ends has swallowed the rest of the file
	}
	line := min(max(at, 1), len(lines))
	f := Fault{File: file, Line: line}
	f.What, f.Instead = plainly(strings.TrimSpace(string(lines[line-1])), pe)
	return f
}

// slip is a usual mistake: how the line looks and what is said of it; $1, $2 stand for what was found.
type slip struct {
	looks         *regexp.Regexp
	what, instead string
}

const aKey = `^([A-Za-z0-9_."-]+)\s*`

var slipsOfLine = []slip{
	{regexp.MustCompile(`[“”„‘’«»]`), "curly quotation marks", `write straight ones: "…"`},
	{regexp.MustCompile(aKey + `=\s*([+-]?[0-9]+),([0-9]+)\s*(#.*)?$`), "$1 has a decimal comma", "write $1 = $2.$3"},
	{regexp.MustCompile(aKey + `=\s*([+-]?)\.([0-9]+)\s*(#.*)?$`), "$1 begins with a point", "write $1 = ${2}0.$3"},
	{regexp.MustCompile(aKey + `=\s*([+-]?[0-9]+)\.\s*(#.*)?$`), "$1 ends with a point", "write $1 = $2"},
	{regexp.MustCompile(aKey + `=\s*0+([1-9][0-9]*)\s*(#.*)?$`), "$1 begins with a zero", `write $1 = "0$2" if it is a telephone number or a name, else $1 = $2`},
	{regexp.MustCompile(aKey + `=\s*([0-9]+\+)\s*(#.*)?$`), "$1 is a word and stands without quotes", `write $1 = "$2"`},
	{regexp.MustCompile(aKey + `=\s*([+-]?[0-9]+(?:\.[0-9]+)?)\s*([A-Za-z°%]+)\s*(#.*)?$`), "$1 has a unit behind its number", "write the number alone, with digits only, and the unit in the key"},
	{regexp.MustCompile(aKey + `=\s*(True|TRUE|Yes|yes)\s*(#.*)?$`), "$1 = $2", "write $1 = true"},
	{regexp.MustCompile(aKey + `=\s*(False|FALSE|No|no)\s*(#.*)?$`), "$1 = $2", "write $1 = false"},
	{regexp.MustCompile(aKey + `=\s*([0-9]{4}-[0-9]{2}-[0-9]{2})\s*(#.*)?$`), "$2 is not in the calendar", "check the day"},
	{regexp.MustCompile(aKey + `=\s*([0-9]{1,3})\s*[-–]\s*([0-9]{1,3})\s*(#.*)?$`), "$1 has two numbers", "write one, or $1 = [$2, $3] where a range is asked for"},
	{regexp.MustCompile(aKey + `=\s*([0-9]{1,4}[-./][0-9]{1,2}(?:[-./][0-9]{1,4})?)\s*(#.*)?$`), "$2 is no day", "write year-month-day, as in 2026-04-06, or put it in quotes if it is a text"},
	{regexp.MustCompile(aKey + `=\s*([A-Za-z][^"'#=\[\]{},]*?)\s*(#.*)?$`), "$1 has no quotes", `write $1 = "$2"`},
	{regexp.MustCompile(aKey + `=\s*(#.*)?$`), "$1 has no value", "write a value, or take the line out"},
	{regexp.MustCompile(aKey + `:\s*([A-Za-z][^"'#=\[\]{},]*?)\s*(#.*)?$`), "$1 is followed by a colon", `write $1 = "$2"`},
	{regexp.MustCompile(aKey + `:\s*(.+)$`), "$1 is followed by a colon", "write $1 = $2"},
	{regexp.MustCompile(`^([A-Za-z0-9_-]+(?: +[A-Za-z0-9_-]+)+)\s*=`), "key with spaces: $1", "write it with underscores or hyphens"},
	{regexp.MustCompile(`^(//|;|--)`), "$1 is no comment", "begin a comment with #"},
	{regexp.MustCompile(`^[A-Za-z0-9_.-]+$`), "a word alone", "write key = value"},
}

// said is what the library says, in part, and what we say.
var said = []struct{ part, what, instead string }{
	{"has already been defined", "%s stands twice", "keep one"},
	{"cannot be used as an array", "%s is written in two ways", "write [[%s]] before each one, and nothing else"},
	{"was already created as a hash", "%s has a value and cannot be a table too", "keep one"},
	{"is not a table", "%s has a value and cannot be a table too", "keep one"},
	{"control characters", "a control character that cannot be seen", "take it out"},
	{"NULL bytes", "the file is not UTF-8 text", "save the file as UTF-8"},
	{"escape", `a backslash \ that means nothing here`, `write \\, or put the text in single quotes`},
	{"hexadecimal digits", `a backslash \ that means nothing here`, `write \\, or put the text in single quotes`},
	{"strings cannot contain newlines", "a text that does not end on its line", "close it with a quotation mark"},
	{`expected '"'`, "a text that does not end", "close it with a quotation mark"},
	{`expected "'"`, "a text that does not end", "close it with a quotation mark"},
	{`expected '"""'`, "the text of %s does not end", `close it with """`},
	{`expected "'''"`, "the text of %s does not end", "close it with '''"},
	{"array terminator", "the list %s is not closed, or a comma is missing in it", "put a comma between the values and ] after the last"},
	{"inline table terminator", "the table in braces of %s is not closed, or a comma is missing in it", "put a comma between the keys and } after the last"},
	{"unexpected comma", "a comma with no value before it", "take one comma out"},
	{"table names cannot be empty", "a header without a name", "write [name]"},
	{"to end table name", "a header that is not closed, or a name with a space", "write [name]"},
	{"table array name delimiter", "a header that is not closed", "write [[name]]"},
	{"key name appears blank", "a value without a key", "write key = value"},
	{"keys cannot start with", "a key that begins with a point", "take the point out"},
	{"expected '.' or '='", "a key without = behind it", "write key = value"},
	{"to end with a newline", "something behind the value", "write one key = value on each line"},
	{"out of range", "a number that is too large", "check the number"},
	{"datetime", "a date that the calendar does not have", "write year-month-day, as in 2026-04-06"},
	{"expected value", "a value that is neither number nor text", `put a text in quotes: "…"`},
	{"nvalid", "a number that cannot be read", "write digits, and a point before decimals"},
	{"digit", "a number that cannot be read", "write digits, and a point before decimals"},
}

// wholeFile are messages about more than one line: how the line looks says nothing then.
var wholeFile = []string{"already", "is not a table", "control char", "terminator", "unexpected comma", `'"""'`, `"'''"`}

func plainly(line string, pe toml.ParseError) (what, instead string) {
	ofLine := !slices.ContainsFunc(wholeFile, func(part string) bool { return strings.Contains(pe.Message, part) })
	for _, s := range slipsOfLine {
		if m := s.looks.FindStringSubmatchIndex(line); m != nil && ofLine {
			expand := func(t string) string { return string(s.looks.ExpandString(nil, t, line, m)) }
			return clippedLine(expand(s.what)), clippedLine(expand(s.instead))
		}
	}
	for _, s := range said {
		if strings.Contains(pe.Message, s.part) {
			return named(s.what, pe), named(s.instead, pe)
		}
	}
	return "this line cannot be read", "write key = value, or a [table] header"
}

// named puts the key into a sentence that has a gap for it.
func named(sentence string, pe toml.ParseError) string {
	if !strings.Contains(sentence, "%s") {
		return sentence
	}
	key := pe.LastKey
	if rest, ok := strings.CutPrefix(pe.Message, "Key '"); ok {
		key, _, _ = strings.Cut(rest, "'")
	}
	if key == "" {
		key = "the file"
	}
	if _, bad := unprintable(key); bad || strings.ContainsAny(key, "\n\t") {
		key = fmt.Sprintf("%q", key)
	}
	return fmt.Sprintf(sentence, clipped(key))
}

// clippedLine keeps a quoted line short.
func clippedLine(s string) string {
	if runes := []rune(s); len(runes) > 3*maxShown {
		return string(runes[:3*maxShown]) + "…"
	}
	return s
}
