package source

import (
	"reflect"
	"sync"

	"paceleaf/generator/unit"
)

// form is the way in which a value is written.
type form int

const (
	asText form = iota
	asWord
	asBool
	asWhole
	asNumber
	asMeasure
	asTyped
	asReach
	asDay
	asOwnText
	asShort
	asKeyed
	asTable
	asItems
	asTables // a map: any id, each with a value
)

// field is one key of a table, or what a list or map holds.
type field struct {
	name    string
	index   []int
	form    form
	typ     reflect.Type // without its pointer
	pointer bool
	holds   *field // of a list or map
	endings []unit.Ending
	words   []string
	limits  *span
	usual   *span
	doc     string // what the key is, for the reference and for editors
	example string // what a message says to write
	show    string // an example for the reference and for editors alone: a message must not hand out another clinic's facts

	required, declared, lone bool
}

// span is a range of values, in the unit in which a type is kept.
type span struct{ lo, hi float64 }

// entry is what one key of a file fills.
type entry struct {
	field  *field
	ending unit.Ending
}

// shape is how a struct is written: what each key fills.
type shape struct {
	fields  []*field
	keys    map[string]entry
	order   []string // the keys, as the struct has them
	origins [][]int
}

// shapes keeps what was found about each type: tags never change.
var shapes sync.Map

// shapeOf reads the tags of a struct type. A tag that means nothing is a mistake in this program, hence the panic.
func shapeOf(t reflect.Type) *shape {
	if s, ok := shapes.Load(t); ok {
		return s.(*shape)
	}
	s := &shape{keys: map[string]entry{}}
	s.add(t, nil)
	shapes.Store(t, s)
	return s
}

// add takes the fields of t, then those of the structs that t embeds: what stands further out wins.
func (s *shape) add(t reflect.Type, index []int) {
	var embedded []reflect.StructField
	for i := range t.NumField() {
		sf := t.Field(i)
		at := append(index[:len(index):len(index)], i)
		tag, tagged := sf.Tag.Lookup("key")
		switch {
		case sf.Type == originType:
			s.origins = append(s.origins, at)
		case tagged:
			s.addField(fieldOf(sf, tag, at, t))
		case sf.Anonymous && sf.Type.Kind() == reflect.Struct:
			embedded = append(embedded, sf)
		}
	}
	for _, sf := range embedded {
		s.add(sf.Type, append(index[:len(index):len(index)], sf.Index...))
	}
}

func (s *shape) addField(f *field) {
	taken := true
	for _, e := range f.spellings() {
		key := ended(f.name, e)
		if _, exists := s.keys[key]; exists {
			continue
		}
		taken = false
		s.keys[key] = entry{f, e}
		s.order = append(s.order, key)
	}
	if !taken {
		s.fields = append(s.fields, f)
	}
}

// spellings are the endings under which the field may stand; one empty ending is a bare key.
func (f *field) spellings() []unit.Ending {
	switch {
	case len(f.endings) > 0:
		return f.endings
	case f.form == asItems && len(f.holds.endings) > 0:
		return f.holds.endings
	}
	return []unit.Ending{{Factor: 1}}
}

// spelled are the keys of the field.
func (f *field) spelled() (keys []string) {
	for _, e := range f.spellings() {
		keys = append(keys, ended(f.name, e))
	}
	return keys
}

func ended(name string, e unit.Ending) string {
	if e.Name == "" {
		return name
	}
	return name + "_" + e.Name
}
