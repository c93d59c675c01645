package formula

import (
	"math"
	"strconv"
)

// positive reports whether x is a number above zero; NaN and the infinities are not.
func positive[Q ~float64](x Q) bool { return x > 0 && !math.IsInf(float64(x), 1) }

// number reports whether x is a number at all.
func number[Q ~float64](x Q) bool { return !math.IsNaN(float64(x)) && !math.IsInf(float64(x), 0) }

// digits writes a whole number for a message.
func digits[Q ~float64](x Q) string { return strconv.FormatFloat(float64(x), 'f', -1, 64) }
