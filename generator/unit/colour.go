package unit

import (
	"math"
	"regexp"
	"strconv"
)

// Colour is a colour of the screen: # and six hexadecimal digits, red, green, blue.
type Colour string

var sixDigits = regexp.MustCompile(`^#[0-9a-fA-F]{6}$`)

// Valid reports whether the colour can be read.
func (c Colour) Valid() bool { return sixDigits.MatchString(string(c)) }

// Luminance is the relative luminance, 0 for black to 1 for white; 0 where the colour cannot be read.
//
// Source: Web Content Accessibility Guidelines (WCAG) 2.2, "relative luminance".
func (c Colour) Luminance() float64 {
	if !c.Valid() {
		return 0
	}
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		n, _ := strconv.ParseUint(string(c[1+2*i:3+2*i]), 16, 8)
		v := float64(n) / 255
		if v <= 0.04045 {
			v = float64(v / 12.92)
		} else {
			v = math.Pow(float64((v+0.055)/1.055), 2.4)
		}
		sum += float64(weight * v)
	}
	return sum
}

// Contrast is the ratio of two colours, 1 to 21, whichever is the lighter.
//
// Source: WCAG 2.2, "contrast ratio".
func (c Colour) Contrast(other Colour) float64 {
	a, b := c.Luminance(), other.Luminance()
	return (max(a, b) + 0.05) / (min(a, b) + 0.05)
}
