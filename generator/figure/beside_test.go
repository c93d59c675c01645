package figure

import (
	"fmt"
	"math"
	"testing"

	"paceleaf/generator/unit"
)

// The window of a picture from the front lies on no limb of the body, within the picture, and holds its own digits and dots: else
// they would be read as those of something else.
func TestWindowStandsFree(t *testing.T) {
	windows := 0
	each(t, func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte) {
		shown, _ := Beside(e.Figure)
		if !shown || r == nil {
			return
		}
		windows++
		d := parsed(t, svg)
		var middle point
		for _, c := range d.Dots {
			if c.Class == "f-lens" && c.R == besideWindow {
				middle = point{c.X, c.Y}
			}
		}
		holds := func(x, y, more float64) bool { return math.Hypot(x-middle.X, y-middle.Y)+more <= besideWindow }
		for _, p := range d.joints("f-beside") {
			if !holds(p.X, p.Y, 1.1) {
				t.Errorf("%s, %s, %v: the dot %v is outside the window", e.id, side, r, p)
			}
		}
		for _, x := range d.Texts {
			half := float64(len([]rune(x.Text))-1) * digitWide / 2 // a degree sign is half as wide, and high up
			if !holds(x.X-half, x.Y-capHeight/2, 0) || !holds(x.X+half, x.Y-capHeight/2, 0) {
				t.Errorf("%s, %s, %v: %s is outside the window", e.id, side, r, x.Text)
			}
		}
		var x, y, w, h float64
		fmt.Sscan(d.ViewBox, &x, &y, &w, &h)
		if middle.X-besideWindow < x || middle.X+besideWindow > x+w || middle.Y-besideWindow < y || middle.Y+besideWindow > y+h {
			t.Errorf("%s, %s: the window is cut off", e.id, side)
		}
		own := 0
		for _, p := range d.Paths {
			if !limb.MatchString(p.Class) {
				continue
			}
			for _, ring := range polygons(t, p.D) {
				for _, q := range ring {
					if holds(q.X, q.Y, 0) {
						own++
						break
					}
				}
			}
		}
		if own != 3 { // thigh, knee to calf, calf to ankle: the pieces of its own leg
			t.Errorf("%s, %s, %v: %d pieces of limbs lie in the window, want the 3 of its own", e.id, side, r, own)
		}
	})
	if windows < 30 {
		t.Errorf("only %d windows", windows)
	}
}

// A bend that is seen from the front is the bend that is written, in space: with a shank that goes aside too.
func TestShankLeansBackForItsBend(t *testing.T) {
	for _, tt := range []struct{ bend, fore, aside, want float64 }{
		{60, 33, 0, 27},     // one plane: what the thigh leaves
		{0, 0, 0, 0},        // straight
		{90, 0, 0, 90},      // the shank goes straight back
		{60, 0, 60, 0},      // the bend lies all in the picture
		{60, 30, 20, 26.87}, // cos 60 = cos 30 cos 20 cos g - sin 30 sin g, by bisection
	} {
		if got := shinBack(tt.bend, tt.fore, tt.aside); math.Abs(got-tt.want) > 0.02 {
			t.Errorf("bend %g, thigh %g ahead, shank %g aside: %.3f back, want %g", tt.bend, tt.fore, tt.aside, got, tt.want)
		}
	}
}
