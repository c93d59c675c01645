package source

import (
	"fmt"
	"slices"
	"strings"
)

// missing reports what must be there and is not; a key that is only misspelt has been reported already.
func (w *walker) missing(here *level) {
	for _, f := range here.shape.fields {
		if _, there := here.done[f]; there || !f.required && !f.declared {
			continue
		}
		at := spot{key: f.name, path: below(here.path, f.name)}
		if f.declared {
			w.wrong(at, f.name+" is missing", fmt.Sprintf("write %s = [] if there is none", f.name))
			continue
		}
		w.wrong(at, either(f.spelled())+" is missing", f.sample(at))
	}
}

// unknown reports a key that fills nothing, and remembers the field that was probably meant.
func (w *walker) unknown(here *level, at spot) {
	s, name := here.shape, clipped(shown(at.key))
	if same := s.sameBase(at.key, false); len(same) > 0 {
		w.wrong(at, name+" has no unit", "write "+either(same))
		here.done[s.keys[same[0]].field] = at
		return
	}
	near := meant(at.key, s.order)
	same := nearest(at.key, s.sameBase(at.key, true))
	sure := near != "" && farness(at.key, near) < sameStart
	switch {
	case len(same) > 0 && (!sure || slices.Contains(same, near)):
		w.wrong(at, name+" has an unknown unit", "write "+either(same))
		here.done[s.keys[same[0]].field] = at
	case sure:
		w.wrong(at, "unknown key "+name, fmt.Sprintf("did you mean %s?", near))
		here.done[s.keys[near].field] = at
	case w.misplaced(at):
	case near != "":
		w.wrong(at, "unknown key "+name, fmt.Sprintf("did you mean %s?", near))
	default:
		w.wrong(at, "unknown key "+name, "possible here: "+s.offer())
	}
}

// misplaced reports a key that belongs to a table further out. In TOML a header takes all keys below it, which nobody
// guesses who adds a line at the end of a file.
func (w *walker) misplaced(at spot) bool {
	for i := len(w.open) - 2; i >= 0; i-- {
		outer := w.open[i]
		e, known := outer.shape.keys[at.key]
		if !known {
			continue
		}
		instead := "move it up, above the first [header]"
		if outer.path != "" {
			instead = fmt.Sprintf("move it up, right below the header of %s", spot{path: outer.path}.header())
		}
		w.wrong(at, at.key+" does not belong to this table", instead)
		if _, there := outer.done[e.field]; !there {
			outer.done[e.field] = spot{key: shown(at.path), path: at.path}
		}
		return true
	}
	return false
}

// sameBase returns the keys whose name without the unit is the key's own; with an ending, that is all before it.
func (s *shape) sameBase(key string, withEnding bool) (same []string) {
	longest := ""
	for _, k := range s.order {
		e := s.keys[k]
		if e.ending.Name == "" {
			continue
		}
		name := e.field.name
		matches := key == name
		if withEnding {
			matches = strings.HasPrefix(key, name+"_")
		}
		if !matches || len(name) < len(longest) {
			continue
		}
		if len(name) > len(longest) {
			longest, same = name, nil
		}
		same = append(same, k)
	}
	return same
}

func (s *shape) offer() string {
	if len(s.order) <= maxOffered {
		return strings.Join(s.order, ", ")
	}
	return strings.Join(s.order[:maxOffered], ", ") + ", …"
}
