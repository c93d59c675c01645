package browser_test

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// Sizes of print in points. Clear print asks for 12 at least (UKAAF, second-hand); figures' digits and the works that a page
// rests on may be smaller. The desk's pages are dense, and no smaller than 9. All chosen; a measure may be 5 % off (smallest).
var leastPoints = map[string]float64{"handout": 9, "hold": 9, "worksheet": 9, "letter": 9, "overview": 9, "retest": 9, "floor": 9,
	"program": 7, "note": 9} // a note for colleagues stands on one sheet, to go with a letter

const measured = 0.95

// mostSheets is how many sheets of A4 a page may take at the most.
// A program is one sheet of paper: two sides.
var mostSheets = map[string]int{"program": 2, "note": 1, "exercise": 3, "handout": 12, "hold": 1, "worksheet": 9, "letter": 1}

// moreOnLetter are the sheets of a handout that Letter may need beside those of A4: it is 18 mm shorter, and a card that does not
// fit goes to the next sheet whole.
const moreOnLetter = 1

// sheets is a printed page: its text, sheet by sheet.
type sheets struct {
	file string
	text []string
}

// printed prints the page of a tab on paper of a name.
func (p tab) printed(name string, paper chromedp.PaperSize) sheets {
	p.Helper()
	data, err := chromedp.Run(p.ctx, chromedp.PrintToPDF(chromedp.PDFPaper(paper)))
	if err != nil {
		p.Fatal(err)
	}
	file := filepath.Join(p.TempDir(), "page.pdf")
	if err := os.WriteFile(file, data, 0o600); err != nil {
		p.Fatal(err)
	}
	if dir := os.Getenv("LOOK"); dir != "" {
		of := regexp.MustCompile(`[^a-z0-9]+`).ReplaceAllString(strings.ToLower(p.Name()+" "+name), "-")
		os.WriteFile(filepath.Join(dir, of+".pdf"), data, 0o600)
	}
	out := p.poppler("pdftotext", "-raw", file, "-")
	return sheets{file, strings.Split(strings.TrimSuffix(out, "\f"), "\f")}
}

func (p tab) poppler(name string, args ...string) string {
	p.Helper()
	command(p.T, "install poppler-utils", name)
	out, err := exec.Command(name, args...).Output()
	if err != nil {
		p.Fatalf("%s: %v", name, err)
	}
	return string(out)
}

// wordHeight finds the box of a word in what pdftotext -bbox tells.
var wordHeight = regexp.MustCompile(`<word [^>]*yMin="([\d.]+)"[^>]*yMax="([\d.]+)">`)

// smallest is the size of the smallest letters, in points. The box of a word is as high as its font's ascent and descent
// together: 1.12 of its size in Liberation Sans, 1.16 in DejaVu Sans. It is divided by the larger, so it is never told too large.
func (p tab) smallest(s sheets) float64 {
	p.Helper()
	least := 1000.0
	for _, m := range wordHeight.FindAllStringSubmatch(p.poppler("pdftotext", "-bbox", s.file, "-"), -1) {
		top, _ := strconv.ParseFloat(m[1], 64)
		foot, _ := strconv.ParseFloat(m[2], 64)
		least = min(least, (foot-top)/1.164)
	}
	return least
}

// wordsOf are the words of a text with how often each stands there.
func wordsOf(text string) map[string]int {
	count := map[string]int{}
	for _, w := range strings.Fields(text) {
		count[w]++
	}
	return count
}

// missingOn are the words of a text that a sheet does not hold.
func missingOn(sheet, text string) (missing []string) {
	have := wordsOf(sheet)
	for w, n := range wordsOf(text) {
		if have[w] < n {
			missing = append(missing, w)
		}
	}
	return missing
}

// whole reports on which sheet a text stands whole.
func (s sheets) whole(text string) (sheet int, whole bool) {
	for i, on := range s.text {
		if len(missingOn(on, text)) == 0 {
			return i + 1, true
		}
	}
	return 0, false
}

// texts are the texts of elements, without their pictures.
func (p tab) texts(selector string) []string {
	p.Helper()
	return eval[[]string](p, `[...document.querySelectorAll("`+selector+`")].map(e => {
		const texts = [], walk = document.createTreeWalker(e, NodeFilter.SHOW_TEXT)
		while (walk.nextNode()) if (!walk.currentNode.parentElement.closest("svg, script, button")) texts.push(walk.currentNode.data)
		return texts.join(" ")
	})`)
}

// TestPaper prints every kind of page on A4 and on Letter and measures it.
func TestPaper(t *testing.T) {
	command(t, "install poppler-utils", "pdftotext")
	for _, f := range pages(t) {
		t.Run(f.path, func(t *testing.T) {
			t.Parallel()
			p := open(t, f.url, look{wide: 1280, before: clock(asOf)})
			large := eval[bool](p, `document.body.matches(".large-print")`)
			for name, paper := range map[string]chromedp.PaperSize{"A4": chromedp.PaperA4, "Letter": chromedp.PaperLetter} {
				s := p.printed(name, paper)
				size := p.smallest(s)
				if size < leastPoints[f.kind]*measured {
					t.Errorf("%s: letters of %.1f pt, at least %.0f", name, size, leastPoints[f.kind])
				}
				most, set := mostSheets[f.kind]
				if f.kind == "handout" && name == "Letter" {
					most += moreOnLetter
				}
				if set && len(s.text) > most && !large {
					t.Errorf("%s: %d sheets, at most %d", name, len(s.text), most)
				}
				t.Logf("%s: %d sheets, smallest letters %.1f pt", name, len(s.text), size)
				if f.kind == "handout" || f.kind == "hold" {
					p.onPaper(s, large)
				}
				if f.kind == "worksheet" && name == "A4" {
					broken := strings.NewReplacer("-", " ") // a line may end at a hyphen
					for _, text := range p.texts("#decide") {
						if missing := missingOn(broken.Replace(s.text[0]), broken.Replace(text)); len(missing) > 0 {
							t.Errorf("the decision does not stand on the first sheet whole: %v is missing", missing)
						}
					}
				}
				if f.kind == "handout" && !large {
					p.wellFilled(name, s)
				}
			}
			if !strings.HasPrefix(f.path, "library/") { // the library's own sizes are measured above
				call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
				p.none("points", "on paper, letters smaller than promised")
			}
		})
	}
}

// onPaper is what holds on every page that a client takes home. In large print a sheet holds the two urgent levels of the stop
// rules, and an exercise may need more than one sheet: there its boxes are whole.
func (p tab) onPaper(s sheets, large bool) {
	p.Helper()
	urgent, whole := "#stop .stop", ".exercise, .leg, .week, #tick .scroll"
	if large {
		urgent, whole = ".stop-emergency, .stop-today", ".leg, .week, #tick .scroll, .steps"
	}
	for _, level := range p.texts(urgent) {
		if missing := missingOn(s.text[0], level); len(missing) > 0 {
			p.Errorf("sheet 1 of %d lacks %q of the stop rules %.40q", len(s.text), missing, level)
		}
	}
	running := p.texts(".running")[0]
	for i, sheet := range s.text {
		if missing := missingOn(sheet, running); len(missing) > 0 {
			p.Errorf("sheet %d does not say whose it is: %q is missing", i+1, missing)
		}
		if number := fmt.Sprintf("%d / %d", i+1, len(s.text)); !strings.Contains(sheet, number) {
			p.Errorf("sheet %d does not say %q", i+1, number)
		}
	}
	for _, exercise := range p.texts(whole) {
		if _, one := s.whole(exercise); !one {
			p.Errorf("%.40q… stands on no sheet whole", strings.Join(strings.Fields(exercise), " "))
		}
	}
}

// TestPaperSees holds the measurements themselves.
func TestPaperSees(t *testing.T) {
	command(t, "install poppler-utils", "pdftotext")
	p := open(t, handoutOf(t, "tern-04"), look{wide: 1280})
	eval[chromedp.Void](p, `const sheet = new CSSStyleSheet(); sheet.replaceSync(".exercise:nth-of-type(2){display:block!important;break-inside:auto!important;padding-top:200mm!important} .leg{font-size:5pt!important}"); document.adoptedStyleSheets = [sheet]`)
	s := p.printed("A4", chromedp.PaperA4)
	if size := p.smallest(s); size > 5.1 {
		t.Errorf("letters of 5 pt are measured as %.1f", size)
	}
	split := 0
	for _, exercise := range p.texts(".exercise") {
		if _, whole := s.whole(exercise); !whole {
			split++
		}
	}
	if split == 0 {
		t.Error("an exercise over two sheets is not seen")
	}
	eval[chromedp.Void](p, `const apart = new CSSStyleSheet(); apart.replaceSync(".exercise, .week, #knee>div{break-before:page!important} #weeks, #knee{display:block!important;columns:auto!important}"); document.adoptedStyleSheets = [apart]`)
	if all, least := p.full(p.printed("A4", chromedp.PaperA4)); all >= fullOnAverage || least >= leastFull {
		t.Errorf("sheets with one thing each are measured as %.2f full, the emptiest %.2f", all, least)
	}
}
