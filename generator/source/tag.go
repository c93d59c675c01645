package source

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// What a type may say about how it is read. All but worded and measured are asked of a pointer to it.
type (
	// worded is a closed set of words.
	worded interface{ Words() []string }
	// measured is a float with key endings.
	measured = unit.Measured
	// typed is a basis.Num: it keeps where its value was typed.
	typed interface {
		SetTyped(v float64, typed string, at basis.Origin)
		Endings() []unit.Ending
	}
	// fromText is written as a string. The error says what is wrong; what to write instead.
	fromText interface{ FromText(text string) error }
	// fromShort may be written as a string in place of its table.
	fromShort interface {
		FromShort(text string, at basis.Origin) error
	}
	// fromKeyed is a value whose meaning depends on the ending of its key; it gets a float64, an int64 or a string.
	fromKeyed interface {
		KeyEndings() []unit.Ending
		FromKeyed(e unit.Ending, value any) error
	}
	// keyedWords are the words that a fromKeyed takes besides a number, under a key with that ending.
	keyedWords interface{ KeyWords(e unit.Ending) []string }
)

var (
	wordedType    = reflect.TypeFor[worded]()
	measuredType  = reflect.TypeFor[measured]()
	typedType     = reflect.TypeFor[typed]()
	fromTextType  = reflect.TypeFor[fromText]()
	fromShortType = reflect.TypeFor[fromShort]()
	fromKeyedType = reflect.TypeFor[fromKeyed]()
	originType    = reflect.TypeFor[basis.Origin]()
	dayType       = reflect.TypeFor[unit.Day]()
	reachType     = reflect.TypeFor[unit.Reach]()
)

// fieldOf reads the tags of one field of a struct.
func fieldOf(sf reflect.StructField, tag string, index []int, in reflect.Type) *field {
	parts := strings.Split(tag, ",")
	f := &field{name: parts[0], index: index, doc: sf.Tag.Get("doc"), example: sf.Tag.Get("example"), show: sf.Tag.Get("show")}
	f.limits, f.usual = spanOf(sf.Tag.Get("range")), spanOf(sf.Tag.Get("ask"))
	for _, option := range parts[1:] {
		switch option {
		case "required":
			f.required = true
		case "declared":
			f.declared = true
		case "lone", "list":
			f.lone = true
		default:
			panic(fmt.Sprintf("tag of %s.%s: option %q is unknown", in, sf.Name, option))
		}
	}
	if !sf.IsExported() || f.name == "" {
		panic(fmt.Sprintf("tag of %s.%s: the field cannot be filled", in, sf.Name))
	}
	if !f.take(sf.Type) {
		panic(fmt.Sprintf("tag of %s.%s: a %s cannot be written in a file", in, sf.Name, sf.Type))
	}
	return f
}

func spanOf(tag string) *span {
	if tag == "" {
		return nil
	}
	lo, hi, _ := strings.Cut(tag, " ")
	from, err1 := strconv.ParseFloat(lo, 64)
	to, err2 := strconv.ParseFloat(hi, 64)
	if err1 != nil || err2 != nil || from > to {
		panic(fmt.Sprintf("bounds %q: want two numbers, the smaller first", tag))
	}
	return &span{from, to}
}

// degrees is how a range is written.
var degrees = []unit.Ending{{Name: "deg", Symbol: "°", Factor: 1}}

// take finds the form of a type, and reports whether there is one.
func (f *field) take(t reflect.Type) bool {
	if t.Kind() == reflect.Pointer {
		f.pointer, t = true, t.Elem()
	}
	f.typ = t
	return f.takeSpecial(t) || f.takePlain(t)
}

func (f *field) takeSpecial(t reflect.Type) bool {
	to := reflect.PointerTo(t)
	own := func() any { return reflect.New(t).Interface() }
	switch {
	case t == dayType:
		f.form = asDay
	case t == reachType:
		f.form, f.endings = asReach, degrees
	case to.Implements(fromKeyedType):
		f.form, f.endings = asKeyed, own().(fromKeyed).KeyEndings()
	case to.Implements(typedType):
		f.form, f.endings = asTyped, own().(typed).Endings()
		return len(f.endings) > 0
	case to.Implements(fromShortType) && t.Kind() == reflect.Struct:
		f.form = asShort
	case to.Implements(fromTextType):
		f.form = asOwnText
	case t.Kind() == reflect.Float64 && to.Implements(measuredType):
		f.form, f.endings = asMeasure, own().(measured).Endings()
	case t.Kind() == reflect.String && to.Implements(wordedType):
		f.form, f.words = asWord, own().(worded).Words()
	default:
		return false
	}
	return true
}

func (f *field) takePlain(t reflect.Type) bool {
	switch t.Kind() {
	case reflect.String:
		f.form = asText
	case reflect.Bool:
		f.form = asBool
	case reflect.Int:
		f.form = asWhole
	case reflect.Float64:
		f.form = asNumber
	case reflect.Struct:
		f.form = asTable
	case reflect.Slice:
		return f.takeHolder(asItems, t)
	case reflect.Map:
		return t.Key().Kind() == reflect.String && f.takeHolder(asTables, t)
	default:
		return false
	}
	return true
}

// takeHolder makes a list or map of what it holds; bounds and example are meant of each.
func (f *field) takeHolder(as form, t reflect.Type) bool {
	f.form = as
	f.holds = &field{name: f.name, limits: f.limits, usual: f.usual, example: f.example, show: f.show}
	return f.holds.take(t.Elem())
}
