package source

import (
	"fmt"
	"math"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"paceleaf/generator/unit"
)

// fillNumber fills numbers with and without a unit, and the quantities that remember where they were typed.
func (w *walker) fillNumber(f *field, v reflect.Value, raw any, at spot) {
	n, ok := w.number(f, raw, at)
	if !ok {
		return
	}
	if f.form == asWhole {
		w.whole(f, v, n, at)
		return
	}
	kept := n
	if at.ending.Factor != 0 {
		kept = float64(n * at.ending.Factor)
	}
	w.bounded(f, n, kept, at)
	if f.form != asTyped {
		v.SetFloat(kept)
		return
	}
	v.Addr().Interface().(typed).SetTyped(kept, written(n, at.ending), w.origin(at.path))
}

// written is a typed number with its unit, as a worksheet quotes it: 42.8 kgf, 70°.
func written(n float64, e unit.Ending) string {
	switch e.Symbol {
	case "":
		return decimal(n)
	case "°":
		return decimal(n) + e.Symbol
	}
	return decimal(n) + " " + e.Symbol
}

// longest number that is written out; chosen: no number of the trade has so many digits.
const longest = 1e15

func decimal(n float64) string {
	if math.Abs(n) >= longest {
		return strconv.FormatFloat(n, 'g', -1, 64)
	}
	return strconv.FormatFloat(n, 'f', -1, 64)
}

func (w *walker) whole(f *field, v reflect.Value, n float64, at spot) {
	if n != math.Trunc(n) || math.Abs(n) > math.MaxInt32 {
		w.wrong(at, fmt.Sprintf("%s %s is not a whole number", at.key, decimal(n)), fmt.Sprintf("write %s = …, without a fraction", at.key))
		return
	}
	w.bounded(f, n, n, at)
	v.SetInt(int64(n))
}

var (
	plainNumber  = regexp.MustCompile(`^[+-]?[0-9]+(\.[0-9]+)?$`)
	commaDecimal = regexp.MustCompile(`^[+-]?[0-9]+,[0-9]+$`)
)

// number judges that a number was written, and how.
func (w *walker) number(f *field, raw any, at spot) (float64, bool) {
	switch n := raw.(type) {
	case int64:
		return float64(n), true
	case float64:
		if math.IsNaN(n) || math.IsInf(n, 0) {
			w.wrong(at, fmt.Sprintf("%s is %s, which is no number", at.key, strings.ToLower(strings.TrimPrefix(fmt.Sprint(n), "+"))), "write a number or leave the key out")
			return 0, false
		}
		return n, true
	case string:
		w.numberInQuotes(f, strings.TrimSpace(n), at)
	default:
		w.wrongKind(f, raw, at)
	}
	return 0, false
}

func (w *walker) numberInQuotes(f *field, text string, at spot) {
	switch {
	case len(text) > maxShown:
		w.wrong(at, fmt.Sprintf("%s %q is a text", at.key, clipped(text)), f.sample(at))
	case plainNumber.MatchString(text):
		w.wrong(at, fmt.Sprintf("%s %q is in quotes", at.key, text), fmt.Sprintf("write %s without quotes", text))
	case commaDecimal.MatchString(text) && w.cells:
		w.wrong(at, fmt.Sprintf("%s %q has a decimal comma", at.key, text), "write "+strings.Replace(text, ",", ".", 1))
	case commaDecimal.MatchString(text):
		w.wrong(at, fmt.Sprintf("%s %q has a decimal comma and quotes", at.key, text), fmt.Sprintf("write %s without quotes", strings.Replace(text, ",", ".", 1)))
	default:
		w.wrong(at, fmt.Sprintf("%s %q is a text", at.key, text), f.sample(at))
	}
}

// slack forgives the last bits of a conversion at a bound; chosen far below any digit that is typed.
const slack = 1e-9

func (s *span) holds(v float64) bool {
	return v >= s.lo-slack*math.Abs(s.lo) && v <= s.hi+slack*math.Abs(s.hi)
}

// bounded refuses what cannot be and asks about what is unusual; n is the number as written, kept in its own unit.
func (w *walker) bounded(f *field, n, kept float64, at spot) {
	switch {
	case f.limits != nil && !f.limits.holds(kept):
		w.wrong(at, fmt.Sprintf("%s %s is outside %s", at.key, decimal(n), f.limits.in(at.ending)), f.check(n, f.limits, at))
	case f.usual != nil && !f.usual.holds(kept):
		w.ask(at, fmt.Sprintf("%s %s is unusual, most are %s", at.key, decimal(n), f.usual.in(at.ending)), f.check(n, f.usual, at))
	}
}

// boundDigits of a bound are printed; a bound in another unit than its own is never round.
const boundDigits = 3

// in prints a span in the unit that the file has chosen.
func (s *span) in(e unit.Ending) string {
	factor := e.Factor
	if factor == 0 {
		factor = 1
	}
	return decimal(bound(s.lo/factor)) + " to " + written(bound(s.hi/factor), e)
}

// bound shortens a bound that is not whole to the digits that are printed.
func bound(v float64) float64 {
	if v == math.Trunc(v) {
		return v
	}
	short, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', boundDigits, 64), 64)
	return short
}

// check says what to do about a number outside its bounds: mostly it is right in another unit.
func (f *field) check(n float64, s *span, at spot) string {
	for _, e := range f.endings {
		if e.Name != at.ending.Name && s.holds(n*e.Factor) && (f.usual == nil || f.usual.holds(n*e.Factor)) {
			return fmt.Sprintf("check it, or write %s if it is in %s", ended(f.name, e), e.Symbol)
		}
	}
	return "check the number"
}
