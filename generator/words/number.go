package words

import (
	"math"
	"strconv"
	"strings"
)

// Number writes v with at most that many decimals and without trailing zeros. Doses are written with a point and a true
// minus in every language: so are the weights and machines that they speak of.
func (w *Words) Number(v float64, decimals int) string {
	text := strconv.FormatFloat(math.Abs(v), 'f', decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if v < 0 && text != "0" {
		text = "−" + text
	}
	return text
}
