package page

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/templates"
)

// TestContrast reads the palettes of light, dark and paper from the style itself.
func TestContrast(t *testing.T) {
	for _, sheet := range []string{"style/1-base.css", "style/9-media.css"} {
		css, err := templates.FS.ReadFile(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for i, root := range regexp.MustCompile(`:root\{[^}]*--paper[^}]*\}`).FindAllString(string(css), -1) {
			colour := map[string]string{}
			for _, m := range regexp.MustCompile(`--([a-z-]+):(#[0-9a-f]+)`).FindAllStringSubmatch(root, -1) {
				colour[m[1]] = m[2]
			}
			for _, p := range textPairs {
				if c := contrast(t, colour[p[0]], colour[p[1]]); c < leastContrast {
					t.Errorf("%s, palette %d: %s on %s has %.2f, want %d", sheet, i+1, p[0], p[1], c, leastContrast)
				}
			}
		}
	}
	if c := contrast(t, "#595959", "#ffffff"); math.Abs(c-7.0047) > 0.0001 {
		t.Errorf("the formula is off: #595959 on white is %.4f, want 7.0047", c)
	}
}

func contrast(t *testing.T, a, b string) float64 {
	x, y := luminance(t, a), luminance(t, b)
	return (math.Max(x, y) + 0.05) / (math.Min(x, y) + 0.05)
}

// luminance is the relative luminance of WCAG.
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	if len(hex) == 4 {
		hex = "#" + strings.Repeat(hex[1:2], 2) + strings.Repeat(hex[2:3], 2) + strings.Repeat(hex[3:4], 2)
	}
	var rgb [3]int
	if _, err := fmt.Sscanf(hex, "#%02x%02x%02x", &rgb[0], &rgb[1], &rgb[2]); err != nil {
		t.Fatalf("%q is no colour: %v", hex, err)
	}
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		c := float64(rgb[i]) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

// TestPageAsksForNothing: one file, its style allowed by its own hash, nothing from outside.
func TestPageAsksForNothing(t *testing.T) {
	page := string(printed(t, samplePrinter(t).HTML, Handout(samplePlan(), sampleWords(t))))
	style := page[strings.Index(page, "<style>")+len("<style>") : strings.Index(page, "</style>")]
	sum := sha256.Sum256([]byte(style))
	policy := "default-src &#39;none&#39;; style-src &#39;sha256-" + base64.StdEncoding.EncodeToString(sum[:])
	head := page[strings.Index(page, "<head>"):]
	if want := "<head>\n<meta http-equiv=\"Content-Security-Policy\" content=\"" + strings.ReplaceAll(policy, "+", "&#43;"); !strings.HasPrefix(head, want) {
		t.Errorf("the policy does not stand first or does not fit the style:\n%s\nwant %s", head[:200], want)
	}
	for _, bad := range []string{"src=", "<link", "@import", "url(", " style=", " on"} {
		if bad == " on" {
			if m := regexp.MustCompile(`<[^>]* on[a-z]+=`).FindString(page); m != "" {
				t.Errorf("an event handler: %s", m)
			}
		} else if strings.Contains(page, bad) {
			t.Errorf("the page has %q", bad)
		}
	}
	if !strings.HasPrefix(page, "<!doctype html>\n<html lang=\"en-GB\" dir=\"ltr\">") || !strings.Contains(page, "<title>DRAFT") {
		t.Error("language, direction or the DRAFT of the title is missing")
	}
	if n := len(page); n > 300_000 {
		t.Errorf("the page has %d bytes", n)
	}
}

// TestStyleStaysInside: a clinic's own style may not fetch anything, nor end its element.
func TestStyleStaysInside(t *testing.T) {
	for _, bad := range []string{"p{background:url(https://x.example/a.png)}", "@import 'x.css';", "</style><script>", "p{color:red"} {
		own := fstest.MapFS{"style/own.css": &fstest.MapFile{Data: []byte(bad)}}
		if _, err := NewPrinter(own, templates.FS); err == nil {
			t.Errorf("%q was let in", bad)
		}
	}
}

// TestSameBytes: the same view prints the same bytes, and its canonical form does not change with them.
func TestSameBytes(t *testing.T) {
	p, q, w := samplePrinter(t), samplePrinter(t), sampleWords(t)
	v := Handout(samplePlan(), w)
	if string(printed(t, p.HTML, v)) != string(printed(t, q.HTML, Handout(samplePlan(), w))) || string(v.JSON()) != string(Handout(samplePlan(), w).JSON()) {
		t.Error("two prints of one plan differ")
	}
}
