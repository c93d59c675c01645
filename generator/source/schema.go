package source

import (
	"fmt"
	"reflect"
)

// dialect is the edition of JSON Schema that is written. Keywords that came with it are kept out where an older one says the
// same, because some editors check by an older edition.
const dialect = "https://json-schema.org/draft/2020-12/schema"

// SchemaMark stands in every schema: a file with it was written by Paceleaf, and may be written again.
const SchemaMark = "Written by paceleaf keys, from the structs that the files are read into. Do not edit."

// Schema is the JSON Schema of a file that is read into a T, for editors that complete and check. It refuses nothing that
// the reader takes, and lets through what only the reader can judge: one key against another, one file against another. A
// day of TOML is a text of the format date, as editors hand it over.
func Schema[T any](title, about string) []byte {
	s := schemas{names: map[reflect.Type]string{}, taken: map[string]bool{}}
	t := reflect.TypeFor[T]()
	var root *node
	if t.Kind() == reflect.Struct {
		root = s.table(t)
	} else {
		f := &field{}
		if !f.take(t) || f.form != asTables {
			panic(fmt.Sprintf("a file cannot be read into a %s", t))
		}
		root = s.of(f)
	}
	root.Dialect, root.Comment, root.Title, root.Description = dialect, SchemaMark, title, about
	root.Defs = s.defs
	return WriteJSON(root)
}

// schemas gathers the tables of one schema; each struct is written once and referred to by its name.
type schemas struct {
	names map[reflect.Type]string
	taken map[string]bool
	defs  properties
}

// refer is a reference to the schema of a struct.
func (s *schemas) refer(t reflect.Type) *node {
	name, known := s.names[t]
	if !known {
		name = t.Name()
		if name == "" || s.taken[name] {
			panic(fmt.Sprintf("%s: two tables of one file need two names", t))
		}
		s.names[t], s.taken[name] = name, true
		at := len(s.defs)
		s.defs = append(s.defs, property{name: name})
		s.defs[at].node = s.table(t)
	}
	return &node{Ref: "#/$defs/" + name}
}

// table is the schema of a struct: its keys and no others, one spelling of each, and those that must be there.
func (s *schemas) table(t reflect.Type) *node {
	n := &node{Type: "object", AdditionalProperties: new(bool)}
	sh := shapeOf(t)
	for _, f := range sh.fields {
		names := sh.spelledIn(f)
		for _, name := range names {
			e := sh.keys[name].ending
			n.Properties = append(n.Properties, property{name, s.described(f, e)})
		}
		switch must := f.required || f.declared; {
		case must && len(names) == 1:
			n.Required = append(n.Required, names[0])
		case must:
			n.AllOf = append(n.AllOf, &node{AnyOf: each(names)})
		}
		if pairs := pairsOf(names); len(pairs) > 0 {
			n.AllOf = append(n.AllOf, &node{Not: &node{AnyOf: pairs}})
		}
	}
	return n
}

// each asks for one of several keys.
func each(names []string) (list []*node) {
	for _, name := range names {
		list = append(list, &node{Required: []string{name}})
	}
	return list
}

// pairsOf are the pairs of keys of which a file may hold only one: two units of one thing.
func pairsOf(names []string) (pairs []*node) {
	for i, a := range names {
		for _, b := range names[i+1:] {
			pairs = append(pairs, &node{Required: []string{a, b}})
		}
	}
	return pairs
}
