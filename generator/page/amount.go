package page

import (
	"math"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// How the desk pages write numbers: one way in sums and tables, so that a number is recognised wherever it stands.

const (
	// inputDigits are the significant digits of a number that goes into a sum; chosen: a pocket calculator's, less one.
	inputDigits = 9
	// resultDigits and resultDecimals bound a number that comes out of one; chosen: what the inputs can reproduce.
	resultDigits   = 6
	resultDecimals = 4
	// dust is what floats leave of a zero; chosen: far below what anybody measures, far above their error.
	dust = 1e-9
)

// amount is a number as the sums print it, or "" where there is none.
func amount[Q unit.Quantity](n basis.Num[Q]) string {
	if !n.OK() {
		return ""
	}
	return outcome(n.Step())
}

// left is a number of repetitions in reserve, to a tenth and never above what it is.
func left(n basis.Num[unit.Count]) string {
	v, ok := n.Value()
	if !ok {
		return ""
	}
	return resultNumber(float64(unit.CutTo(v, 0.1)))
}

// amountOr is a number, or why there is none.
func (s sheet) amountOr(n basis.Input) string {
	if n.OK() {
		return s.outcome(n.Step())
	}
	return s.reason(n.Why())
}

// degreesText writes an angle.
func degreesText(d unit.Degrees) string { return withUnit(resultNumber(float64(d)), d.Unit()) }

// withUnit puts the symbol behind the number; a degree sign close to it.
func withUnit(number, symbol string) string {
	switch symbol {
	case "":
		return number
	case "°":
		return number + symbol
	}
	return number + " " + symbol
}

// significant writes v to n significant digits, without the zeros at the end.
func significant(v float64, n int) string {
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'e', n-1, 64), 64)
	return trueMinus(strconv.FormatFloat(rounded, 'f', -1, 64))
}

// resultNumber writes a number that came out of a sum: never finer than its inputs can reproduce, and never a zero that is none.
func resultNumber(v float64) string {
	if math.Abs(v) < dust {
		return "0"
	}
	whole := 1 // digits before the point
	for n := math.Abs(v); n >= 10 && whole < resultDigits; n /= 10 {
		whole++
	}
	text := strconv.FormatFloat(v, 'f', min(resultDecimals, max(0, resultDigits-whole)), 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if v != 0 && strings.Trim(text, "-0") == "" {
		return significant(v, 2)
	}
	return trueMinus(text)
}

// trueMinus writes the true minus sign, and no minus before zero.
func trueMinus(number string) string {
	if number == "-0" {
		return "0"
	}
	return strings.Replace(number, "-", "−", 1)
}
