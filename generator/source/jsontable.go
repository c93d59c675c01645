package source

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"regexp"
	"strings"

	"paceleaf/generator/basis"
)

// JSONTable reads a JSON file into a struct as its key tags say, by the same walker as TOML: all mistakes and questions at
// once, each on its line. A day is written in quotes, and null is as if the key were left out. Where a mistake is wrong,
// the struct is filled only in part and must not be used. Unlike JSON it is for what came from outside: a person may look
// into such a file.
func JSONTable[T any](file string, data []byte, into *T) Faults {
	if f, bad := notText(file, data); bad {
		return Faults{f}
	}
	body := bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	r := jsonReader{file: file, data: body, d: json.NewDecoder(bytes.NewReader(body)), lines: map[string]int{"": 1}}
	r.d.UseNumber()
	table, f := r.document()
	if f != nil {
		return Faults{*f}
	}
	w := walker{origin: r.origin, json: true, faults: r.faults}
	w.root(reflect.ValueOf(into).Elem(), table)
	return finishJSON(w.faults)
}

// finishJSON puts the remedies into the writing of JSON, sorts and cuts a long list.
func finishJSON(fs Faults) Faults {
	for i := range fs {
		fs[i].Instead = inJSON(fs[i].Instead)
	}
	fs.Sort()
	if len(fs) <= maxFaults {
		return fs
	}
	rest := fs[maxFaults:]
	more := Fault{File: rest[0].File, Line: rest[0].Line, What: fmt.Sprintf("and %d more from here on", len(rest)), Ask: len(rest.Wrong()) == 0}
	return append(fs[:maxFaults:maxFaults], more)
}

var (
	tomlKey    = regexp.MustCompile(`\b([a-z][a-z0-9_]*) = `)
	tomlTable  = regexp.MustCompile(`\[([a-z][a-z0-9_.]*)\]`)
	tomlTables = regexp.MustCompile(`\[\[([a-z][a-z0-9_.]*)\]\] before each one`)
)

// inJSON turns what to write from the writing of TOML into that of JSON.
func inJSON(instead string) string {
	instead = tomlTables.ReplaceAllString(instead, `a list of tables: "$1": [ { … } ]`)
	instead = strings.ReplaceAll(instead, "a table [", "[")
	instead = tomlTable.ReplaceAllString(instead, `a table: "$1": { … }`)
	instead = strings.ReplaceAll(instead, "= 2026-04-06", `= "2026-04-06"`)
	return tomlKey.ReplaceAllString(instead, `"$1": `)
}

// jsonReader decodes a file value by value, and keeps on which line each stands.
type jsonReader struct {
	file   string
	data   []byte
	d      *json.Decoder
	lines  map[string]int
	values int
	faults Faults
}

func (r *jsonReader) origin(path string) basis.Origin {
	o := basis.Origin{File: r.file, Key: path, Line: 1}
	for ; path != ""; path = above(path) {
		if line, known := r.lines[path]; known {
			o.Line = line
			break
		}
	}
	return o
}

func (r *jsonReader) here() int { return lineAt(r.data, r.d.InputOffset()) }

// document is the whole file: one table.
func (r *jsonReader) document() (map[string]any, *Fault) {
	v, err := r.value("", 0)
	if err != nil {
		return nil, r.broken(err)
	}
	table, ok := v.(map[string]any)
	if !ok {
		return nil, &Fault{File: r.file, Line: 1, What: "the whole file is " + kindOf(v), Instead: "write a table: { … }"}
	}
	if _, err := r.d.Token(); !errors.Is(err, io.EOF) {
		return nil, &Fault{File: r.file, Line: r.here(), What: "something follows the end of the value", Instead: asWritten}
	}
	return table, nil
}

// refusal is a fault that ends the reading of a file.
type refusal struct{ Fault }

func (r refusal) Error() string { return r.What }

func (r *jsonReader) broken(err error) *Fault {
	var known refusal
	if errors.As(err, &known) {
		return &known.Fault
	}
	f := notJSON(r.file, r.data, r.d, err)
	return &f
}

// value reads the next value; null is a nil.
func (r *jsonReader) value(path string, depth int) (any, error) {
	if r.values++; r.values > maxValues {
		return nil, refusal{Fault{File: r.file, Line: r.here(), What: fmt.Sprintf("more than %d values in one file", maxValues), Instead: "split it"}}
	}
	if depth > maxNesting {
		return nil, refusal{deep(r.file, r.here())}
	}
	t, err := r.d.Token()
	if err != nil {
		return nil, err
	}
	if _, known := r.lines[path]; !known {
		r.lines[path] = r.here()
	}
	switch t := t.(type) {
	case json.Delim:
		if t == '{' {
			return r.table(path, depth)
		}
		return r.list(path, depth)
	case json.Number:
		if whole, err := t.Int64(); err == nil {
			return whole, nil
		}
		n, err := t.Float64()
		if err != nil {
			return nil, refusal{Fault{File: r.file, Line: r.here(), Key: path, What: clipped(t.String()) + " is beyond all numbers", Instead: "check the number"}}
		}
		return n, nil
	}
	return t, nil
}

func (r *jsonReader) table(path string, depth int) (any, error) {
	table := map[string]any{}
	for r.d.More() {
		t, err := r.d.Token()
		if err != nil {
			return nil, err
		}
		key, line := fmt.Sprint(t), r.here()
		at := below(path, key)
		if _, twice := r.lines[at]; twice {
			r.faults.Add(Fault{File: r.file, Line: line, Key: at, What: fmt.Sprintf("%s stands twice", clipped(key)), Instead: "keep one"})
		}
		r.lines[at] = line
		v, err := r.value(at, depth+1)
		if err != nil {
			return nil, err
		}
		if v != nil {
			table[key] = v
		}
	}
	_, err := r.d.Token()
	return table, err
}

func (r *jsonReader) list(path string, depth int) (any, error) {
	items := []any{}
	for r.d.More() {
		at := item(path, len(items))
		v, err := r.value(at, depth+1)
		if err != nil {
			return nil, err
		}
		if v == nil {
			return nil, refusal{Fault{File: r.file, Line: r.here(), Key: at, What: "null stands in a list", Instead: "take it out"}}
		}
		items = append(items, v)
	}
	_, err := r.d.Token()
	return items, err
}
