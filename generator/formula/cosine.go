package formula

import (
	"math"

	"paceleaf/generator/unit"
)

// cosine returns cos θ of an angle in degrees. math.Cos is not used: some processors fuse its sums, and the last bit of a
// page would hang on the machine. Here each product is divided before it is added, and cos 90° is 0 and not 6·10⁻¹⁷.
//
// Series of sine and cosine, taken up to 45°, where ten terms reach the last bit of a float64.
func cosine(θ unit.Degrees) float64 {
	x, sign := math.Mod(math.Abs(float64(θ)), 360), 1.0
	if x > 180 {
		x = 360 - x
	}
	if x > 90 {
		x, sign = 180-x, -1
	}
	first, from := 1.0, 0.0 // cos x = 1 − x²/2! + …
	if x > 45 {
		x = 90 - x // sin x = x − x³/3! + …
		first, from = x*math.Pi/180, 1
	}
	x = x * math.Pi / 180
	term, sum := first, first
	for k := from + 1; k < 20; k += 2 {
		term = float64(float64(-term*x)*x) / (k * (k + 1))
		sum += term
	}
	return sign * sum
}
