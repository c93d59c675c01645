package formula

import "paceleaf/generator/unit"

// sine returns sin θ of an angle in degrees, of the same series as cosine.
func sine(θ unit.Degrees) float64 { return cosine(90 - θ) }
