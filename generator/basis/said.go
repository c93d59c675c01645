package basis

import (
	"errors"
	"fmt"
	"reflect"
	"strconv"
	"strings"
)

// Said is a reason, the name of a rule or another fragment that a therapist reads: a key with its values, in no language yet.
// The key is the English of it, with a place for each value: {a} for the first, {b} for the second. Package words has it in the
// clinic's language under that key; check, why and plan.json print the English.
//
// It is a string so that it compares, keys a map and may be a plain constant. Only Say puts values in, and only String and Parts
// look inside.
type Said string

// What stands between a key and its values, and before a value the letter of its kind. No file that we read holds the mark:
// package source refuses control characters.
const (
	valueMark = "\x1f"
	asText    = 's' // an id, a name, what a person typed: alike in every language
	asNumber  = 'n'
	asSaid    = 'k' // a fragment by itself, or a word of a closed set
)

// Value is what fills a place of a fragment: a fragment, a number, or a text that is alike in every language.
type Value struct {
	Said   Said
	Number string // with a point; empty: it is no number
	Text   string
}

// Say puts values into a key, in the order of its places. A value that is an error or a word of a closed set is a fragment too.
func Say(key string, values ...any) Said {
	var b strings.Builder
	b.WriteString(key)
	for _, v := range values {
		b.WriteString(valueMark + noted(v))
	}
	return Said(b.String())
}

// Listed puts fragments behind one another, a semicolon between; empty ones are left out.
func Listed(fragments ...Said) Said { return inRow("{a}; {b}", fragments) }

// Enumerated is Listed with commas.
func Enumerated(fragments ...Said) Said { return inRow("{a}, {b}", fragments) }

func inRow(key string, fragments []Said) (all Said) {
	for _, f := range fragments {
		switch {
		case all == "":
			all = f
		case f != "":
			all = Say(key, all, f)
		}
	}
	return all
}

// SaidBy is what an error says: its own fragment, or its text as a key without places.
func SaidBy(err error) Said {
	var said Said
	if errors.As(err, &said) {
		return said
	}
	return Said(err.Error())
}

// Error makes a fragment the error of a formula that refuses.
func (s Said) Error() string { return s.String() }

// String is the English of the fragment.
func (s Said) String() string {
	key, values := s.Parts()
	return Fill(key, values, Value.String)
}

// String is the English of the value.
func (v Value) String() string {
	if v.Said != "" {
		return v.Said.String()
	}
	return v.Number + v.Text
}

// Fill puts values into the places of a text, each once: what a value says is never taken for a place.
func Fill(text string, values []Value, say func(Value) string) string {
	if len(values) == 0 {
		return text
	}
	pairs := make([]string, 0, 2*len(values))
	for i, v := range values {
		pairs = append(pairs, "{"+string(rune('a'+i))+"}", say(v))
	}
	return strings.NewReplacer(pairs...).Replace(text)
}

// Parts takes a fragment apart: the key to look it up by, and the values for its places.
func (s Said) Parts() (key string, values []Value) {
	parts := strings.Split(string(s), valueMark)
	for _, p := range parts[1:] {
		values = append(values, valueOf(p))
	}
	return parts[0], values
}

// noted writes a value so that it can be read again.
func noted(v any) string {
	switch v := v.(type) {
	case Said:
		return string(asSaid) + strconv.Quote(string(v))
	case error:
		return noted(SaidBy(v))
	case interface{ Words() []string }:
		return string(asSaid) + strconv.Quote(fmt.Sprint(v))
	case fmt.Stringer:
		return string(asText) + v.String()
	}
	switch r := reflect.ValueOf(v); {
	case r.CanFloat():
		return string(asNumber) + strconv.FormatFloat(r.Float(), 'f', -1, 64)
	case r.CanInt():
		return string(asNumber) + strconv.FormatInt(r.Int(), 10)
	}
	return string(asText) + fmt.Sprint(v)
}

func valueOf(part string) Value {
	kind, text := part[0], part[1:]
	switch kind {
	case asSaid:
		inner, _ := strconv.Unquote(text)
		return Value{Said: Said(inner)}
	case asNumber:
		return Value{Number: text}
	}
	return Value{Text: text}
}
