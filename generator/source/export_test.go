package source

import "reflect"

// TagsOf reads the tags of a struct and of all that it holds; a tag that means nothing panics.
func TagsOf(t reflect.Type) { tagsOf(t, map[reflect.Type]bool{}) }

func tagsOf(t reflect.Type, seen map[reflect.Type]bool) {
	if seen[t] {
		return
	}
	seen[t] = true
	for _, f := range shapeOf(t).fields {
		for f.holds != nil {
			f = f.holds
		}
		if f.form == asTable || f.form == asShort {
			tagsOf(f.typ, seen)
		}
	}
}
