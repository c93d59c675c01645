package unit

import "math"

// nudge forgives the last bits of a float, so that 260 N over 325 N is 80.0 and not 79.999…; chosen: far below any
// step that is printed, far above the error of a handful of operations.
const nudge = 1e-9

// CutTo returns the largest multiple of step that is not above x. It is the one rounding of Paceleaf.
// A step of zero or less returns x unchanged.
func CutTo[Q ~float64](x, step Q) Q {
	if step <= 0 {
		return x
	}
	n := math.Floor(float64(x)/float64(step) + nudge)
	// a step such as 0.1 has no exact float: divide by its inverse where that is whole, so that 807 tenths is 80.7
	if inverse := math.Round(1 / float64(step)); inverse >= 1 && math.Abs(float64(inverse*float64(step))-1) < nudge {
		return Q(n / inverse)
	}
	return Q(float64(n * float64(step)))
}
