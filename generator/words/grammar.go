package words

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/text/feature/plural"
	"golang.org/x/text/language"

	"paceleaf/generator/source"
)

// The table [language] of client.toml says how the language is written: it has no sentences for a page.
const (
	directionKey = "language.direction" // ltr, rtl
	decimalKey   = "language.decimal"   // what stands before the decimals of a number
	pluralsKey   = "language.plurals"   // tag of the language whose plural forms hold, as CLDR has them
)

// grammar is how a language writes numbers and chooses plurals.
type grammar struct {
	decimal string
	plurals language.Tag
}

// learn reads the grammar from its table; a mistake in it is a fault of the file.
func (w *Words) learn() (faults source.Faults) {
	wrong := func(key, what, instead string) {
		at := w.sentences[key].At
		faults.Add(source.Fault{File: at.File, Line: at.Line, Key: at.Key, What: what, Instead: instead})
	}
	w.Dir, w.grammar = w.Say(directionKey), grammar{decimal: w.Say(decimalKey), plurals: language.English}
	if !slices.Contains([]string{"ltr", "rtl"}, w.Dir) {
		wrong(directionKey, fmt.Sprintf("%q is no direction of writing", w.Dir), `write "ltr" or "rtl"`)
	}
	if !slices.Contains([]string{".", ",", "٫"}, w.decimal) {
		wrong(decimalKey, fmt.Sprintf("%q does not part decimals", w.decimal), `write ".", "," or "٫"`)
	}
	tag, err := language.Parse(w.Say(pluralsKey))
	if err != nil {
		wrong(pluralsKey, fmt.Sprintf("%q is no tag of a language", w.Say(pluralsKey)), `write one such as "en", "pl" or "ar"`)
		return faults
	}
	w.plurals = tag
	return faults
}

// forms are the plurals that sentences may tell apart, in the order of CLDR.
var forms = map[plural.Form]string{plural.Zero: "zero", plural.One: "one", plural.Two: "two", plural.Few: "few", plural.Many: "many", plural.Other: "other"}

// formOf is the plural of a number as it is written: "1", "2.5". Source: CLDR 32, as golang.org/x/text has it.
func (g grammar) formOf(number string) string {
	whole, decimals, _ := strings.Cut(number, ".")
	digits := make([]byte, 0, len(whole)+len(decimals))
	for _, r := range whole + decimals {
		if r < '0' || r > '9' {
			return forms[plural.Other] // no number: a text stands in its place
		}
		digits = append(digits, byte(r-'0'))
	}
	return forms[plural.Cardinal.MatchDigits(g.plurals, digits, len(whole), len(decimals))]
}

// sampled is how many whole numbers tell which plurals a language has: the rules of CLDR look at the last two digits, and one more
// at a million.
const sampled = 200

// counting are the plurals that whole numbers of the language take, but for other.
func (g grammar) counting() (taken []string) {
	for n := range sampled {
		if form := g.formOf(fmt.Sprint(n)); form != forms[plural.Other] && !slices.Contains(taken, form) {
			taken = append(taken, form)
		}
	}
	slices.Sort(taken)
	return taken
}

// CheckTag says what is wrong with the tag of a language that somebody wants to begin.
func CheckTag(tag string) error {
	if _, err := language.Parse(tag); err != nil || tag == Shipped || strings.ToLower(tag) != tag && !strings.Contains(tag, "-") {
		return fmt.Errorf("%q is no tag of another language; write one such as de, pt-BR or ar", tag)
	}
	return nil
}
