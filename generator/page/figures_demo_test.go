package page

import (
	"bytes"
	"compress/gzip"
	"regexp"
	"slices"
	"testing"
)

// degreesIn are the bends in a text, in its order.
var degreesIn = regexp.MustCompile(`[−0-9.]+°`)

// TestPicturesOfTheDemo holds every handout of the invented clinic: pictures are there, their digits are the dose line's,
// their caption's too, no id stands twice, and the page is light.
func TestPicturesOfTheDemo(t *testing.T) {
	w, printer, ranges := sampleWords(t), samplePrinter(t), 0
	for _, p := range demoPlans(t) {
		v := Handout(p, w)
		html := printed(t, printer.HTML, v)
		lawHolds(t, printer, v)
		onlyOnce(t, p.Client.Code, html)
		pictures, bytesOf := 0, 0
		for _, part := range v.Parts {
			for _, exercise := range inside(part.Nodes, ofClass("exercise")) {
				for _, n := range inside(exercise.Nodes, hasPicture) {
					pictures, bytesOf = pictures+1, bytesOf+len(n.Picture())
					ranges += digitsAgree(t, p.Client.Code, exercise, n)
				}
			}
		}
		packed := zipped(t, html)
		t.Logf("%s: %d pictures of %d bytes; page %d bytes, %d zipped", p.Client.Code, pictures, bytesOf, len(html), packed)
		if pictures == 0 || len(html) > 300_000 || packed > 100_000 || bytesOf > 8192*pictures {
			t.Errorf("%s: %d pictures of %d bytes on a page of %d, zipped %d", p.Client.Code, pictures, bytesOf, len(html), packed)
		}
	}
	if ranges < 20 {
		t.Errorf("only %d pictures had a range", ranges)
	}
}

// digitsAgree holds the digits of a picture against the words of its leg's box, and returns 1 if there were any.
func digitsAgree(t *testing.T, code string, exercise, n Node) int {
	t.Helper()
	digits := readPicture(t, n).Digits
	if len(digits) == 0 {
		return 0
	}
	var lines []string
	for _, line := range inside(exercise.Nodes, ofClass("all-legs")) {
		lines = append(lines, textOf(line.Spans))
	}
	for _, box := range inside(exercise.Nodes, ofClass("side-"+string(n.Drawing.Side))) {
		for _, line := range inside(box.Nodes, ofClass("range")) {
			lines = append(lines, textOf(line.Spans))
		}
		for _, list := range inside(box.Nodes, ofClass("later")) {
			for _, item := range list.Items {
				lines = append(lines, textOf(item))
			}
		}
	}
	if len(lines) == 0 {
		t.Errorf("%s, %s: a picture with %v and no words of its range", code, exercise.Title, digits)
	}
	said := slices.ContainsFunc(lines, func(line string) bool { return sameBends(degreesIn.FindAllString(line, -1), digits) })
	if !said {
		t.Errorf("%s, %s: the picture has %v, the box says %q", code, exercise.Title, digits, lines)
	}
	if caption := degreesIn.FindAllString(n.Says, -1); !sameBends(caption, digits) {
		t.Errorf("%s, %s: the picture has %v, below it stand %v", code, exercise.Title, digits, caption)
	}
	return 1
}

// sameBends reports whether a sentence begins with the bends of a picture, in either order.
func sameBends(said, digits []string) bool {
	if len(said) < len(digits) {
		return false
	}
	a, b := slices.Clone(said[:len(digits)]), slices.Clone(digits)
	slices.Sort(a)
	slices.Sort(b)
	return slices.Equal(a, b)
}

// onlyOnce finds an id that stands twice on a page.
func onlyOnce(t *testing.T, code string, page []byte) {
	t.Helper()
	seen := map[string]bool{}
	for _, m := range regexp.MustCompile(` id="([^"]*)"`).FindAllSubmatch(page, -1) {
		if id := string(m[1]); seen[id] {
			t.Errorf("%s: the id %s stands twice", code, id)
		} else {
			seen[id] = true
		}
	}
	if len(seen) < 10 {
		t.Errorf("%s: only %d ids were found", code, len(seen))
	}
}

func zipped(t *testing.T, page []byte) int {
	t.Helper()
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	if _, err := z.Write(page); err != nil {
		t.Fatal(err)
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Len()
}
