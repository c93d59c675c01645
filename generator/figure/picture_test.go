package figure

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"paceleaf/generator/unit"
)

// limb finds the classes that a label must keep off.
var limb = regexp.MustCompile(`^f-(body|work|twin|far)$`)

// No label lies on a limb or on another label: the letters' own box, point by point, against the finished outlines.
func TestLabelsKeepClear(t *testing.T) {
	each(t, func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte) {
		d := parsed(t, svg)
		if len(d.Texts) == 0 {
			return
		}
		var limbs [][]point
		for _, p := range d.Paths {
			if limb.MatchString(p.Class) {
				limbs = append(limbs, polygons(t, p.D)...)
			}
		}
		var boxes []box
		for _, x := range d.Texts {
			half := float64(len([]rune(x.Text))) * digitWide / 2
			b := box{point{x.X - half, x.Y - capHeight}, point{x.X + half, x.Y}}
			if b.touches(limbs) {
				t.Errorf("%s, %s, %v: %s lies on a limb", e.id, side, r, x.Text)
			}
			for _, o := range boxes {
				if b.low.X < o.top.X && o.low.X < b.top.X && b.low.Y < o.top.Y && o.low.Y < b.top.Y {
					t.Errorf("%s, %s, %v: two labels lie on each other", e.id, side, r)
				}
			}
			boxes = append(boxes, b)
		}
	})
}

// box is the room that letters take.
type box struct{ low, top point }

func (b box) touches(limbs [][]point) bool {
	for i := range 9 {
		for k := range 5 {
			if inside(limbs, point{lerp(b.low.X, b.top.X, float64(i)/8), lerp(b.low.Y, b.top.Y, float64(k)/4)}) {
				return true
			}
		}
	}
	return false
}

// Letters are at least 12 pixels high where a phone of 360 leaves a column of 284, and lie within the picture.
func TestLettersAreLargeEnough(t *testing.T) {
	const column, least = 284, 12
	if !strings.Contains(Style(), fmt.Sprintf("%gpx", letters)) {
		t.Fatal("the style sheet has another size of letters than the labels are placed for")
	}
	each(t, func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte) {
		d := parsed(t, svg)
		var x, y, w, h float64
		fmt.Sscan(d.ViewBox, &x, &y, &w, &h)
		for _, l := range d.Texts {
			if px := letters * column / w; px < least {
				t.Errorf("%s: letters of %.1f px in a picture %g wide", e.id, px, w)
			}
			if l.X < x+4 || l.X > x+w-4 || l.Y-capHeight < y || l.Y > y+h {
				t.Errorf("%s, %s, %v: %s is cut off", e.id, side, r, l.Text)
			}
		}
	})
}

// A left leg is the right one mirrored: every dot and label has its x turned over, and no letter is turned.
func TestLeftIsMirrored(t *testing.T) {
	for _, e := range exercises(t) {
		o := Options{ID: "f1", Title: "t", Describe: "d", Side: unit.Right, Range: e.Range}
		right, err := Draw(e.Figure, o)
		if err != nil {
			t.Fatal(err)
		}
		o.Side = unit.Left
		left, _ := Draw(e.Figure, o)
		a, b := parsed(t, right), parsed(t, left)
		for i := range a.Dots {
			if math.Abs(a.Dots[i].X+b.Dots[i].X) > 0.011 || a.Dots[i].Y != b.Dots[i].Y {
				t.Errorf("%s: dot %d at %v and %v", e.id, i, a.Dots[i], b.Dots[i])
			}
		}
		for i := range a.Texts {
			if math.Abs(a.Texts[i].X+b.Texts[i].X) > 0.11 || a.Texts[i].Text != b.Texts[i].Text {
				t.Errorf("%s: label %v and %v", e.id, a.Texts[i], b.Texts[i])
			}
		}
		if bytes.Contains(left, []byte("transform")) {
			t.Errorf("%s: the left picture is transformed", e.id)
		}
	}
}

// A picture says who it is: title and description, by ids that begin with its own and stand in it once.
func TestPicturesAreNamed(t *testing.T) {
	seen := map[string]bool{}
	for _, e := range exercises(t) {
		svg, err := Draw(e.Figure, Options{ID: "fig-" + e.id, Title: e.Title + " <b>", Describe: e.Describe})
		if err != nil {
			t.Fatal(err)
		}
		d := parsed(t, svg)
		if d.Role != "img" || d.Labelled != d.Title.ID+" "+d.Desc.ID || d.Title.Text != e.Title+" <b>" || d.Desc.Text != e.Describe {
			t.Errorf("%s: role %q, labelled by %q, title %v, description %v", e.id, d.Role, d.Labelled, d.Title, d.Desc)
		}
		for _, id := range []string{d.Title.ID, d.Desc.ID} {
			if seen[id] || !strings.HasPrefix(id, "fig-"+e.id) {
				t.Errorf("%s: id %q", e.id, id)
			}
			seen[id] = true
		}
	}
}

// A picture in a page weighs at most 8 kB, and every class of it has a rule.
func TestPicturesAreLight(t *testing.T) {
	most, name, sum, n := 0, "", 0, 0
	each(t, func(t *testing.T, e exercise, side unit.Side, r *unit.Reach, svg []byte) {
		if len(svg) > most {
			most, name = len(svg), e.id
		}
		sum, n = sum+len(svg), n+1
		for _, c := range regexp.MustCompile(`class="(f-[a-z]+)"`).FindAllSubmatch(svg, -1) {
			if !strings.Contains(Style(), "."+string(c[1])) {
				t.Errorf("%s: no rule for %s", e.id, c[1])
			}
		}
	})
	if !strings.Contains(Style(), "direction:ltr") {
		t.Error("on a page that reads from the right a minus would stand behind its number, and the letters of an axis in its field")
	}
	t.Logf("%d pictures, %d bytes on average, at most %d (%s); style sheet %d bytes", n, sum/n, most, name, len(Style()))
	if most > 8<<10 {
		t.Errorf("%s weighs %d bytes, want at most %d", name, most, 8<<10)
	}
}
