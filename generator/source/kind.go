package source

import (
	"fmt"
	"strings"
	"time"
)

// wrongKind reports a value of another kind than the key wants.
func (w *walker) wrongKind(f *field, raw any, at spot) {
	w.wrong(at, fmt.Sprintf("%s is %s", at.key, kindOf(raw)), f.sample(at))
}

// kindOf says in plain words what was written.
func kindOf(raw any) string {
	switch v := raw.(type) {
	case string:
		return "a text"
	case bool:
		return fmt.Sprint(v)
	case int64, float64:
		return "a number"
	case time.Time:
		return "a date"
	case map[string]any:
		return "a table"
	default:
		return "a list"
	}
}

// sample says what to write for a field.
func (f *field) sample(at spot) string {
	switch f.form {
	case asText, asOwnText, asShort:
		return fmt.Sprintf("write %s = %s", at.key, f.shownText())
	case asWord:
		return fmt.Sprintf("write %s = %s", at.key, either(quoted(f.words)))
	case asBool:
		return fmt.Sprintf("write %s = true or false", at.key)
	case asDay:
		return fmt.Sprintf("write year-month-day, as in %s = 2026-04-06", at.key)
	case asReach:
		return fmt.Sprintf("write straightest and most bent, as in %s = [0, 90]", either(f.spelled()))
	case asTable, asTables:
		return fmt.Sprintf("write a table [%s]", at.header())
	case asItems:
		return f.sampleList(at)
	case asWhole:
		return fmt.Sprintf("write a whole number: %s = …", at.key)
	default:
		return "write " + f.sampleNumber(at)
	}
}

// sampleNumber names every key under which a number may stand, unless the file has chosen one already.
func (f *field) sampleNumber(at spot) string {
	if f.written(at) {
		return fmt.Sprintf("a number: %s = …", at.key)
	}
	return "a number: " + either(f.spelled()) + " = …"
}

func (f *field) written(at spot) bool { return at.ending.Name != "" }

func (f *field) sampleList(at spot) string {
	if strings.HasPrefix(f.example, "[") {
		return fmt.Sprintf("write %s = %s", at.key, f.example)
	}
	switch f.holds.form {
	case asTable:
		return fmt.Sprintf("write [[%s]] before each one", at.header())
	case asText, asOwnText, asShort:
		return fmt.Sprintf("write %s = [%s]", at.key, f.holds.shownText())
	case asWord:
		return fmt.Sprintf("write a list: %s = [%s]", at.key, either(quoted(f.holds.words)))
	default:
		if f.written(at) {
			return fmt.Sprintf("write a list of numbers: %s = [ … ]", at.key)
		}
		return fmt.Sprintf("write a list of numbers: %s = [ … ]", either(f.spelled()))
	}
}

// shownText is the example of a text, or a gap to fill.
func (f *field) shownText() string {
	if f.example == "" {
		return `"…"`
	}
	return fmt.Sprintf("%q", f.example)
}

// header is how the path is written between brackets: without the indexes of lists.
func (at spot) header() string {
	var b []byte
	skip := false
	for i := range len(at.path) {
		switch c := at.path[i]; {
		case c == '[':
			skip = true
		case c == ']':
			skip = false
		case !skip:
			b = append(b, c)
		}
	}
	return string(b)
}
