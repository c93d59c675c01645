package source

import (
	"bytes"
	"fmt"
	"reflect"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"paceleaf/generator/basis"
)

// TOML reads a file into a struct (or a map of structs) as its tags say, and returns all mistakes and questions, by line.
// Where one of them is wrong, the struct is filled only in part and must not be used.
//
// The tags are the contract: key:"name,option,…" with the options required (must be there and not empty), declared (must
// be there, may be empty), lone (one value may stand for a list of one) and list (a list of numbers, or one number);
// range:"lo hi" and ask:"lo hi" are bounds in the unit in which the type is kept. doc:"…" says what the key is; example:"…" is
// what a message says to write; show:"…" is an example for the reference and for editors alone (see KeyTables and Schema).
func TOML[T any](file string, data []byte, into *T) Faults {
	if f, bad := unreadable(file, data); bad {
		return Faults{f}
	}
	decoded, err := decode(data)
	if err != nil {
		return Faults{notTOML(file, data, err)}
	}
	if f, bad := overfull(file, data, decoded); bad {
		return Faults{f}
	}
	w := walker{origin: func(path string) basis.Origin { return basis.Origin{File: file, Key: path} }}
	w.root(reflect.ValueOf(into).Elem(), decoded)
	return finish(w.faults, data)
}

// decode calls the library; a panic of it is one more way to say that the file is wrong.
func decode(data []byte) (decoded map[string]any, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("the reader gave up")
		}
	}()
	_, err = toml.Decode(string(data), &decoded)
	return decoded, err
}

// finish gives every fault its line, sorts them and cuts a long list.
func finish(fs Faults, data []byte) Faults {
	if len(fs) == 0 {
		return nil
	}
	fs = fs.located(Lines(data))
	fs.Sort()
	if len(fs) <= maxFaults {
		return fs
	}
	rest := fs[maxFaults:]
	more := Fault{File: rest[0].File, Line: rest[0].Line, What: fmt.Sprintf("and %d more from here on", len(rest)), Ask: len(rest.Wrong()) == 0}
	return append(fs[:maxFaults:maxFaults], more)
}

// unreadable judges the bytes before the library sees them: it must not meet what would take it minutes or its stack.
func unreadable(file string, data []byte) (Fault, bool) {
	if f, bad := notText(file, data); bad {
		return f, true
	}
	if line := tooDeep(data); line > 0 {
		return deep(file, line), true
	}
	return Fault{}, false
}

// notText refuses what is too long or is not UTF-8; every kind of file passes here.
func notText(file string, data []byte) (Fault, bool) {
	if len(data) > maxBytes {
		return Fault{File: file, What: "the file is longer than 1 MiB", Instead: "split it, or remove what does not belong here"}, true
	}
	for i := 0; i < len(data); {
		r, n := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && n <= 1 {
			line := 1 + bytes.Count(data[:i], []byte("\n"))
			return Fault{File: file, Line: line, What: "this line is not UTF-8 text", Instead: "save the file as UTF-8"}, true
		}
		i += n
	}
	return Fault{}, false
}

func deep(file string, line int) Fault {
	return Fault{File: file, Line: line, What: fmt.Sprintf("more than %d tables or lists inside one another", maxNesting), Instead: "write it flatter"}
}

// overfull refuses a file that is legal but that no person wrote.
func overfull(file string, data []byte, decoded map[string]any) (Fault, bool) {
	c := census{}
	c.count(decoded, "", 0)
	switch {
	case c.values > maxValues:
		return Fault{File: file, What: fmt.Sprintf("more than %d values in one file", maxValues), Instead: "split it"}, true
	case c.deepest != "":
		return deep(file, Lines(data).Line(c.deepest)), true
	}
	return Fault{}, false
}

// census counts the values of a decoded file and remembers a path that is nested too deep.
type census struct {
	values  int
	deepest string
}

func (c *census) count(v any, path string, depth int) {
	if c.values++; c.values > maxValues {
		return
	}
	if depth > maxNesting && (c.deepest == "" || path < c.deepest) {
		c.deepest = path
	}
	if table, ok := v.(map[string]any); ok {
		for k, inner := range table {
			c.count(inner, below(path, k), depth+1)
		}
		return
	}
	items, _ := asList(v)
	for i, inner := range items {
		c.count(inner, item(path, i), depth+1)
	}
}
