package source

import (
	"fmt"
	"maps"
	"reflect"
	"regexp"
	"slices"
)

// items fills a list; where the tag allows it, one value stands for a list of one.
func (w *walker) items(f *field, v reflect.Value, raw any, at spot) {
	list, ok := asList(raw)
	if !ok && !f.lone {
		w.wrongKind(f, raw, at)
		return
	}
	if !ok {
		v.Set(reflect.MakeSlice(f.typ, 1, 1))
		w.fill(f.holds, v.Index(0), raw, at)
		return
	}
	if len(list) == 0 && f.required {
		w.wrong(at, at.key+" is empty", f.sample(at))
	}
	v.Set(reflect.MakeSlice(f.typ, len(list), len(list)))
	for i, raw := range list {
		w.fill(f.holds, v.Index(i), raw, spot{at.key, item(at.path, i), at.ending})
	}
}

// asList returns the items of a list; the library gives a list of [[tables]] a type of its own.
func asList(raw any) ([]any, bool) {
	switch list := raw.(type) {
	case []any:
		return list, true
	case []map[string]any:
		items := make([]any, len(list))
		for i, table := range list {
			items[i] = table
		}
		return items, true
	}
	return nil, false
}

func (w *walker) fillTables(f *field, v reflect.Value, raw any, at spot) {
	table, ok := raw.(map[string]any)
	if !ok {
		w.wrongKind(f, raw, at)
		return
	}
	w.tables(f, v, table, at.path)
}

var id = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// tables fills a map: its keys are ids that a person chose.
func (w *walker) tables(f *field, v reflect.Value, table map[string]any, path string) {
	v.Set(reflect.MakeMapWithSize(f.typ, len(table)))
	for _, key := range slices.Sorted(maps.Keys(table)) {
		at := spot{key: key, path: below(path, key)}
		if !id.MatchString(key) {
			w.wrong(at, fmt.Sprintf("%q is no id", clipped(key)), "write small letters, digits and single hyphens, as in knee-extension")
			continue
		}
		one := reflect.New(f.typ.Elem()).Elem()
		w.fill(f.holds, one, table[key], at)
		v.SetMapIndex(reflect.ValueOf(key).Convert(f.typ.Key()), one)
	}
}
