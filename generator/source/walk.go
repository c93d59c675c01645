package source

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Fill fills a struct from a document that was not a TOML file but is made as one: a row of a day sheet. origin names
// the place of a path of the document. See TOML.
func Fill[T any](document map[string]any, origin func(path string) basis.Origin, into *T) Faults {
	w := walker{origin: origin, cells: true}
	w.root(reflect.ValueOf(into).Elem(), document)
	w.faults.Sort()
	return w.faults
}

// walker fills a struct from a decoded file and keeps every mistake.
type walker struct {
	origin func(path string) basis.Origin
	faults Faults
	open   []*level // the tables around the value, the root first
	json   bool     // the file is JSON, where a day is written in quotes
	cells  bool     // the values are cells of a sheet, where a text has no quotes
}

// level is a table that is being read.
type level struct {
	shape *shape
	path  string
	done  map[*field]spot // the fields that have their key, and those whose key was reported as misspelt or misplaced
}

// spot is where a value stands: its key as it is written, its path, and the unit that the key names.
type spot struct {
	key    string
	path   string
	ending unit.Ending
}

func (w *walker) root(v reflect.Value, decoded map[string]any) {
	if v.Kind() == reflect.Struct {
		w.table(v, decoded, "")
		return
	}
	f := &field{}
	if !f.take(v.Type()) || f.form != asTables {
		panic(fmt.Sprintf("a file cannot be read into a %s", v.Type()))
	}
	w.tables(f, v, decoded, "")
}

func (w *walker) wrong(at spot, what, instead string) { w.add(at, what, instead, false) }

func (w *walker) ask(at spot, what, instead string) { w.add(at, what, instead, true) }

func (w *walker) add(at spot, what, instead string, ask bool) {
	o := w.origin(at.path)
	w.faults.Add(Fault{File: o.File, Line: o.Line, Key: o.Key, What: what, Instead: instead, Ask: ask})
}

// table fills a struct from the keys of a table.
func (w *walker) table(v reflect.Value, table map[string]any, path string) {
	s := shapeOf(v.Type())
	for _, index := range s.origins {
		v.FieldByIndex(index).Set(reflect.ValueOf(w.origin(path)))
	}
	here := &level{s, path, map[*field]spot{}}
	w.open = append(w.open, here)
	defer func() { w.open = w.open[:len(w.open)-1] }()
	for _, key := range slices.Sorted(maps.Keys(table)) {
		at := spot{key: key, path: below(path, key)}
		e, known := s.keys[key]
		if !known {
			w.unknown(here, at)
			continue
		}
		at.ending = e.ending
		if other, twice := here.done[e.field]; twice && s.keys[other.key].field == e.field {
			w.wrong(at, fmt.Sprintf("two keys for one thing: %s and %s", other.key, key), "keep one")
			continue
		}
		here.done[e.field] = at
		w.fill(e.field, v.FieldByIndex(e.field.index), table[key], at)
	}
	w.missing(here)
}

// fill puts a value into a field, by its form.
func (w *walker) fill(f *field, v reflect.Value, raw any, at spot) {
	if f.pointer {
		p := reflect.New(f.typ)
		v.Set(p)
		v = p.Elem()
	}
	switch f.form {
	case asText, asWord, asOwnText, asBool:
		w.fillText(f, v, raw, at)
	case asWhole, asNumber, asMeasure, asTyped:
		w.fillNumber(f, v, raw, at)
	case asReach:
		w.fillReach(v, raw, at)
	case asDay:
		w.fillDay(f, v, raw, at)
	case asKeyed:
		w.fillKeyed(f, v, raw, at)
	case asShort:
		w.fillShort(f, v, raw, at)
	case asTable:
		w.fillTable(f, v, raw, at)
	case asItems:
		w.items(f, v, raw, at)
	case asTables:
		w.fillTables(f, v, raw, at)
	}
}

func (w *walker) fillTable(f *field, v reflect.Value, raw any, at spot) {
	table, ok := raw.(map[string]any)
	if !ok {
		w.wrongKind(f, raw, at)
		return
	}
	w.table(v, table, at.path)
}

func (w *walker) fillShort(f *field, v reflect.Value, raw any, at spot) {
	text, ok := raw.(string)
	if !ok {
		w.fillTable(f, v, raw, at)
		return
	}
	w.judge(at, v.Addr().Interface().(fromShort).FromShort(text, w.origin(at.path)))
}

// judge reports the error of a value's own reading: what is wrong, then what to write instead.
func (w *walker) judge(at spot, err error) {
	if err == nil {
		return
	}
	what, instead, _ := strings.Cut(err.Error(), "; ")
	w.wrong(at, what, instead)
}
