package source

import (
	"cmp"
	"math"
	"reflect"
	"strings"

	"paceleaf/generator/unit"
)

// The examples of the reference and of the schemas. A test reads each of them as it would stand in a file.

// shown is the example of a field, as TOML writes it, and the ending of the key that it stands behind. It is empty where
// neither tag nor type gives one.
func (f *field) shown() (unit.Ending, string) {
	own := f.spellings()[0]
	said := f.show
	if said == "" {
		said = f.example
	}
	if said != "" {
		return f.shownAs(said, own)
	}
	switch f.form {
	case asWord:
		return own, Quoted(f.words[0])
	case asBool:
		return own, "true"
	case asDay:
		return own, "2026-04-06"
	case asReach:
		return own, "[0, 90]"
	case asWhole, asNumber, asMeasure, asTyped:
		return own, f.middle(own)
	case asItems:
		e, one := f.holds.shown()
		return e, inBrackets(one)
	}
	return own, ""
}

// shownAs writes the tag's example. A number may name the ending of its key behind it, as in 80 percent.
func (f *field) shownAs(said string, own unit.Ending) (unit.Ending, string) {
	for _, e := range f.spellings() {
		if value, ends := strings.CutSuffix(said, " "+e.Name); ends && e.Name != "" {
			said, own = value, e
			break
		}
	}
	switch f.form {
	case asText, asOwnText, asShort, asWord:
		return own, Quoted(said)
	case asItems:
		if strings.HasPrefix(said, "[") {
			return own, said
		}
		_, one := f.holds.shownAs(said, own)
		return own, inBrackets(one)
	}
	return own, said
}

// middle is a number amid the bounds of a field, whole where one lies within; "" where there are none.
func (f *field) middle(e unit.Ending) string {
	s := cmp.Or(f.usual, f.limits)
	if s == nil {
		return ""
	}
	mid := (s.lo + s.hi) / 2
	if whole := math.Trunc(mid / e.Factor); s.holds(whole * e.Factor) {
		return decimal(whole)
	}
	return decimal(bound(mid / e.Factor))
}

func inBrackets(one string) string {
	if one == "" {
		return ""
	}
	return "[" + one + "]"
}

// shownIn is the example as it would stand behind the key with another ending; nil where it is not the same there.
func (f *field) shownIn(e unit.Ending) any {
	from, value := f.shown()
	v, err := decode([]byte("v = " + value))
	if err != nil || value == "" || e.Name != from.Name {
		return nil
	}
	return asJSON(v["v"])
}

// keyWords are the words that a field takes besides a number, under a key with that ending.
func (f *field) keyWords(e unit.Ending) []string {
	if w, has := reflect.New(f.typ).Interface().(keyedWords); has {
		return w.KeyWords(e)
	}
	return nil
}
