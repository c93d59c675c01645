package words

import (
	"math"
	"strconv"
	"strings"
)

// Number writes v with at most that many decimals and without trailing zeros, with the decimal mark of the language, a true minus
// and Latin digits in every language: so are the weights and machines marked that doses speak of.
func (w *Words) Number(v float64, decimals int) string {
	text := strconv.FormatFloat(math.Abs(v), 'f', decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if v < 0 && text != "0" {
		text = "−" + text
	}
	return w.written(text)
}

// written puts the decimal mark of the language into a number that has a point.
func (w *Words) written(number string) string { return strings.Replace(number, ".", w.decimal, 1) }
