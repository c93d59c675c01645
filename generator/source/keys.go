package source

import (
	"fmt"
	"reflect"
	"slices"
)

// KeyTable describes one table of a kind of file, as the tags of its struct say: the reference page prints it.
type KeyTable struct {
	Header string // as in a file: [[place.device]], [setup.ID]; "" for the keys above the first header
	About  string // what the table is
	Keys   []Key  // in the order of the struct; none where Same holds
	Same   string // the header of an earlier table that has the same keys
	Alike  []Alike
}

// Alike are beginnings of keys behind which the same may stand: the keys are listed with one, as left., and may begin with the
// others, as right. and both.
type Alike struct {
	Listed string
	Others []string
}

// Key describes one value of a table.
type Key struct {
	Names []string // every spelling, one for each unit, the type's own first: peak_n, peak_kgf, peak_lbf
	Must  bool     // it must be there
	Write string   // what may be written: kind, unit, bounds, words
	About string   // what it is
	Shown string   // the spelling that the example is written with
	Value string   // the example, in the writing of TOML
}

// KeyTables describes every table of a file that is read into a T, the top of the file first. It says what Schema says, for
// people: both are read from the tags by which the reader reads.
func KeyTables[T any]() []KeyTable {
	d := describer{seen: map[reflect.Type]string{}}
	t := reflect.TypeFor[T]()
	if t.Kind() == reflect.Struct {
		d.table(t, KeyTable{}, "")
		return d.tables
	}
	f := &field{}
	if !f.take(t) || f.form != asTables {
		panic(fmt.Sprintf("a file cannot be read into a %s", t))
	}
	d.held(f, "", "")
	return d.tables
}

// describer gathers the tables of one kind of file.
type describer struct {
	tables []KeyTable
	seen   map[reflect.Type]string // the header under which the keys of a type are described
}

// table describes a struct under its header; path is that header without its brackets.
func (d *describer) table(t reflect.Type, head KeyTable, path string) {
	if header, known := d.seen[t]; known {
		head.Same = header
		d.tables = append(d.tables, head)
		return
	}
	d.seen[t] = head.Header
	at := len(d.tables)
	d.tables = append(d.tables, head)
	l := lister{describer: d, path: path, head: head}
	l.list(t, "")
	l.head.Keys = l.keys
	d.tables[at] = l.head
	if len(l.keys) == 0 && head.Header == "" {
		d.tables = slices.Delete(d.tables, at, at+1)
	}
}

// held describes the tables that a list or map holds.
func (d *describer) held(f *field, path, about string) {
	head := KeyTable{Header: "[[" + path + "]]", About: about}
	if f.form == asTables {
		path = below(path, "ID")
		head.Header = "[" + path + "]"
	}
	d.table(f.holds.typ, head, path)
}

// lister gathers the keys of one table: its own, and with a dot those of the tables inside it.
type lister struct {
	*describer
	path   string
	head   KeyTable
	keys   []Key
	around []reflect.Type
}

func (l *lister) list(t reflect.Type, prefix string) {
	if slices.Contains(l.around, t) {
		panic(fmt.Sprintf("%s holds itself without a list", t))
	}
	l.around = append(l.around, t)
	defer func() { l.around = l.around[:len(l.around)-1] }()
	s, first := shapeOf(t), map[reflect.Type]string{}
	for _, f := range s.fields {
		dotted := f.form == asShort || f.form == asTable && !f.branches()
		if listed, twice := first[f.typ]; dotted && twice {
			l.alike(listed, prefix+f.name+".")
			continue
		}
		if dotted {
			first[f.typ] = prefix + f.name + "."
		}
		l.field(s, f, prefix)
	}
}

func (l *lister) alike(listed, other string) {
	for i := range l.head.Alike {
		if a := &l.head.Alike[i]; a.Listed == listed {
			a.Others = append(a.Others, other)
			return
		}
	}
	l.head.Alike = append(l.head.Alike, Alike{listed, []string{other}})
}

// field describes what one field is written as: a key, keys with a dot, or tables of their own.
func (l *lister) field(s *shape, f *field, prefix string) {
	switch {
	case f.form == asTable && f.branches():
		path := l.below(prefix + f.name)
		l.table(f.typ, KeyTable{Header: "[" + path + "]", About: f.doc}, path)
	case f.form == asTable:
		l.list(f.typ, prefix+f.name+".")
	case f.form == asShort:
		l.keys = append(l.keys, f.key(s, prefix))
		l.list(f.typ, prefix+f.name+".")
	case f.holdsTables():
		l.held(f, l.below(prefix+f.name), f.doc)
	default:
		l.keys = append(l.keys, f.key(s, prefix))
	}
}

// below is the path of a key of the table.
func (l *lister) below(key string) string {
	if l.path == "" {
		return key
	}
	return l.path + "." + key
}

// branches reports whether a table holds tables: then it has a header of its own, and its keys one dot, not two.
func (f *field) branches() bool {
	return slices.ContainsFunc(shapeOf(f.typ).fields, func(inner *field) bool { return inner.form == asTable })
}

// holdsTables reports whether the field is a list or map of tables.
func (f *field) holdsTables() bool {
	return (f.form == asItems || f.form == asTables) && f.holds.form == asTable
}

func (f *field) key(s *shape, prefix string) Key {
	k := Key{Must: f.required || f.declared, Write: f.writing(), About: f.doc}
	for _, name := range s.spelledIn(f) {
		k.Names = append(k.Names, prefix+name)
	}
	e, value := f.shown()
	k.Shown, k.Value = prefix+ended(f.name, e), value
	return k
}

// spelledIn are the keys that fill the field, of those that its tag gives: one may be taken by a field further out.
func (s *shape) spelledIn(f *field) (keys []string) {
	for _, name := range f.spelled() {
		if s.keys[name].field == f {
			keys = append(keys, name)
		}
	}
	return keys
}
