package source

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
)

// JSON reads a file that a machine wrote: one value, no unknown keys. Unlike TOML it stops at the first mistake, for no
// person is to mend such a file line by line.
func JSON[T any](file string, data []byte, into *T) Faults {
	if f, bad := notText(file, data); bad {
		return Faults{f}
	}
	body := bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	d := json.NewDecoder(bytes.NewReader(body))
	d.DisallowUnknownFields()
	if err := d.Decode(into); err != nil {
		return Faults{notJSON(file, body, d, err)}
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return Faults{{File: file, Line: lineAt(body, d.InputOffset()), What: "something follows the end of the value", Instead: asWritten}}
	}
	return nil
}

// asWritten is the one remedy for a file that no person writes.
const asWritten = "use the file as it was written, or write it again"

func notJSON(file string, data []byte, d *json.Decoder, err error) Fault {
	f := Fault{File: file, Line: lineAt(data, d.InputOffset()), What: "this is not JSON", Instead: asWritten}
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	key, unknown := strings.CutPrefix(err.Error(), "json: unknown field ")
	switch {
	case errors.As(err, &syntax):
		f.Line = lineAt(data, syntax.Offset)
	case errors.As(err, &kind):
		f.Line, f.Key = lineAt(data, kind.Offset), kind.Field
		f.What = fmt.Sprintf("%s is %s", fieldOrFile(kind.Field), articled(kind.Value))
	case unknown:
		f.Line, f.What = lineAt(data, int64(bytes.Index(data, []byte(key)))), "unknown key "+clipped(strings.Trim(key, `"`))
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF):
		f.Line, f.What = lineAt(data, int64(len(data))), "the file ends before its value does"
	default:
		// the words of a type that reads its own text
		f.What, f.Instead, _ = strings.Cut(err.Error(), "; ")
	}
	return f
}

func fieldOrFile(field string) string {
	if field == "" {
		return "the whole file"
	}
	return field
}

// kinds of JSON values, as the library names them.
var kinds = map[string]string{"string": "a text", "number": "a number", "bool": "true or false", "array": "a list", "object": "a table", "null": "null"}

func articled(value string) string {
	first, rest, _ := strings.Cut(value, " ")
	if plain, ok := kinds[first]; ok {
		return strings.TrimSpace(plain + " " + rest)
	}
	return clipped(value)
}

// lineAt returns the line of an offset, never one behind the last.
func lineAt(data []byte, offset int64) int {
	end := max(0, min(int(offset), len(bytes.TrimRight(data, "\n"))))
	return 1 + bytes.Count(data[:end], []byte("\n"))
}

// WriteJSON writes a value so that it is the same bytes each time and can be read in an editor. A value that JSON does not
// have, such as a number that is not finite, is a mistake in this program, hence the panic.
func WriteJSON(v any) []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		panic("value cannot be written as JSON: " + err.Error())
	}
	return b.Bytes()
}
