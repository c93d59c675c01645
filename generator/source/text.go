package source

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// What is written in quotes, and yes and no.

// gap stands in the files that paceleaf start begins, where only the author knows what to write.
const gap = "?"

func (w *walker) fillText(f *field, v reflect.Value, raw any, at spot) {
	if f.form == asBool {
		w.fillBool(f, v, raw, at)
		return
	}
	text, ok := raw.(string)
	if n, whole := raw.(int64); whole && f.form == asText && n >= 0 {
		// the fourth hole of a machine and the number 112 are names that look like numbers
		text, ok = strconv.FormatInt(n, 10), true
	}
	if !ok {
		w.wrongKind(f, raw, at)
		return
	}
	text, ok = w.clean(text, at)
	if !ok {
		return
	}
	if text == "" && f.required {
		w.wrong(at, at.key+" is empty", f.sample(at))
		return
	}
	if text == gap && f.form == asText {
		instead := "put your own in its place, or take the line out"
		if f.required {
			instead = "put your own in its place"
		}
		w.wrong(at, fmt.Sprintf("%s is still %q", at.key, gap), instead)
		return
	}
	switch f.form {
	case asOwnText:
		w.judge(at, v.Addr().Interface().(fromText).FromText(text))
	case asWord:
		w.word(f, v, text, at)
	default:
		v.SetString(text)
	}
}

func (w *walker) word(f *field, v reflect.Value, text string, at spot) {
	for _, known := range f.words {
		if text == known {
			v.SetString(text)
			return
		}
	}
	w.wrong(at, fmt.Sprintf("%s %q", at.key, clipped(text)), "write "+either(quoted(nearest(text, f.words))))
}

func (w *walker) fillBool(f *field, v reflect.Value, raw any, at spot) {
	yes, ok := raw.(bool)
	if text, isText := raw.(string); isText && (text == "true" || text == "false") {
		w.wrong(at, fmt.Sprintf("%s is in quotes", at.key), fmt.Sprintf("write %s = %s", at.key, text))
		return
	}
	if !ok {
		w.wrongKind(f, raw, at)
		return
	}
	v.SetBool(yes)
}

// clean refuses what cannot be printed, and makes the line ends of any editor one.
func (w *walker) clean(text string, at spot) (string, bool) {
	text = strings.ReplaceAll(text, "\r\n", "\n")
	if n := utf8.RuneCountInString(text); n > maxRunes {
		w.wrong(at, fmt.Sprintf("%s has %d characters", at.key, n), fmt.Sprintf("write at most %d", maxRunes))
		return "", false
	}
	if r, bad := unprintable(text); bad {
		w.wrong(at, fmt.Sprintf("%s holds the control character %U", at.key, r), "take it out")
		return "", false
	}
	return text, true
}

func unprintable(text string) (rune, bool) {
	for _, r := range text {
		if unicode.IsControl(r) && r != '\n' && r != '\t' {
			return r, true
		}
	}
	return 0, false
}
