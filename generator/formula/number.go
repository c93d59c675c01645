package formula

import "math"

// positive reports whether x is a number above zero; NaN and the infinities are not.
func positive[Q ~float64](x Q) bool { return x > 0 && !math.IsInf(float64(x), 1) }

// number reports whether x is a number at all.
func number[Q ~float64](x Q) bool { return !math.IsNaN(float64(x)) && !math.IsInf(float64(x), 0) }
