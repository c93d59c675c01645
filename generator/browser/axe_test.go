package browser_test

import (
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// standards are the tags of axe-core for WCAG 2.0 to 2.2, levels A and AA.
const standards = `["wcag2a","wcag2aa","wcag21a","wcag21aa","wcag22aa"]`

// findings is a script that runs axe-core, with or without its rule of contrast, and gives a line a violation: rule, how often, the first place.
func findings(contrast bool) string {
	return `axe.run(document, {runOnly: {type: "tag", values: ` + standards + `}, rules: {"color-contrast": {enabled: ` + strconv.FormatBool(contrast) + `}}, resultTypes: ["violations"]})
	.then(r => r.violations.map(v => v.id + " x" + v.nodes.length + ": " + v.help + ": " + v.nodes.slice(0, 3).map(n => n.target.join(" ")).join(" | ")))`
}

// engine is the text of axe-core.
func engine(t *testing.T) string {
	t.Helper()
	path := os.Getenv("PACELEAF_AXE")
	text, err := os.ReadFile(path)
	if path == "" || err != nil {
		missing(t, "axe-core", "set PACELEAF_AXE to the path of axe.min.js")
	}
	return string(text)
}

// TestAxe asks axe-core about every kind of page, on small and large screens, light and dark, with all folds open and, in the
// diary, every box ticked. The first page of a kind is seen at every width, the others at one look each in turn. It sees only part
// of what can be wrong; the other tests of this package and a reader's eyes see more.
//
// Contrast takes axe-core seven times as long as all else; our own measure of it, which is stricter, sees every page in
// TestScreen. So axe-core is asked about it at two looks of the first page of a kind.
func TestAxe(t *testing.T) {
	axe := engine(t)
	nth, seen := map[string]int{}, map[string]int{}
	for _, f := range pages(t) {
		nth[f.path] = seen[f.kind]
		seen[f.kind]++
	}
	visit(t, pages(t), look{before: clock(asOf)}, func(p tab, f file) {
		eval[chromedp.Void](p, axe)
		p.unfold()
		for i, l := range looks {
			contrast := long || nth[f.path] == 0 && i < 2
			structure := nth[f.path] == 0 && !l.dark || i == nth[f.path]%len(looks)
			if !contrast && !structure {
				continue
			}
			p.look(l)
			if found := eval[[]string](p, findings(contrast)); len(found) > 0 {
				p.Errorf("%s:\n%s", l.says(), strings.Join(found, "\n"))
			}
		}
	})
}

// looks are the ways in which a page is seen: on a small phone, a phone and a screen, light and dark.
var looks = []look{{wide: 360}, {wide: 360, dark: true}, {wide: 320}, {wide: 1280}, {wide: 320, dark: true}, {wide: 1280, dark: true}}

// narrowest is the place of the smallest screen among looks.
const narrowest = 2

// unfold opens every fold and ticks every box of the diary, so that what they hold is seen.
func (p tab) unfold() {
	p.Helper()
	eval[chromedp.Void](p, `document.querySelectorAll("details").forEach(d => d.open = true)
		document.querySelectorAll(".to-tick input:not(:checked)").forEach(box => box.click())`)
}

// TestAxeSees holds the check itself: axe-core must find a fault that is put into a page, and one of contrast where it is asked.
func TestAxeSees(t *testing.T) {
	axe := engine(t)
	p := open(t, pages(t)[0].url, look{})
	eval[chromedp.Void](p, axe)
	eval[chromedp.Void](p, `document.body.replaceChildren(Object.assign(document.createElement("button")), Object.assign(document.createElement("p"), {textContent: "faint", style: "color:#999;background:#fff"}))`)
	if found := strings.Join(eval[[]string](p, findings(true)), "\n"); !strings.Contains(found, "button-name") || !strings.Contains(found, "color-contrast") {
		t.Errorf("a button without a name, and faint text: axe-core found %q", found)
	}
	if found := strings.Join(eval[[]string](p, findings(false)), "\n"); !strings.Contains(found, "button-name") {
		t.Errorf("a button without a name: axe-core found %q", found)
	}
}

func (l look) says() string {
	theme := "light"
	if l.dark {
		theme = "dark"
	}
	return fmt.Sprintf("%d px, %s", l.wide, theme)
}
