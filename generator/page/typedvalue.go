package page

import (
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// How a value that a person typed is printed: what was written, what it is worth, and where it stands.

// standsAt is the place of a typed value: file:line, key.
func standsAt(at basis.Origin, line func(basis.Origin) int) string {
	n := at.Line
	if n == 0 && line != nil {
		n = line(at)
	}
	place := at.File
	if n > 0 {
		place += ":" + strconv.Itoa(n)
	}
	if at.Key != "" {
		place += ", " + at.Key
	}
	return place
}

// asTyped is a typed value: as it was written and, where that was another unit, what it is worth.
func asTyped(s *basis.Step) string {
	kept := outcome(s)
	number, symbol := writtenIn(s.Typed)
	if v, err := strconv.ParseFloat(number, 64); err != nil || (symbol == "" || symbol == s.Unit) && v == s.Value {
		return kept
	}
	if by := factor(symbol, s.Unit); by != "" {
		return s.Typed + " = " + kept + " (× " + by + ")"
	}
	return s.Typed + " = " + kept
}

// writtenIn takes "42.8 kgf" apart.
func writtenIn(typed string) (number, symbol string) {
	typed = strings.TrimSpace(typed)
	end := strings.IndexFunc(typed, func(r rune) bool { return !strings.ContainsRune("+-.0123456789eE", r) })
	if end < 0 {
		return typed, ""
	}
	return typed[:end], strings.TrimSpace(typed[end:])
}

// typedQuantities are the quantities that may be typed in several units.
var typedQuantities = []unit.Measured{unit.Newtons(0), unit.Kilograms(0), unit.Metres(0), unit.Seconds(0)}

// factor is the number that turns one unit into another; empty where it only moves the decimal point or is not known.
func factor(from, to string) string {
	for _, q := range typedQuantities {
		if q.Unit() != to {
			continue
		}
		for _, e := range q.Endings() {
			if e.Symbol != from {
				continue
			}
			if mantissa, _, _ := strings.Cut(strconv.FormatFloat(e.Factor, 'e', -1, 64), "e"); mantissa != "1" {
				return strconv.FormatFloat(e.Factor, 'f', -1, 64)
			}
		}
	}
	return ""
}
