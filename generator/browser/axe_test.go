package browser_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// standards are the tags of axe-core for WCAG 2.0 to 2.2, levels A and AA.
const standards = `["wcag2a","wcag2aa","wcag21a","wcag21aa","wcag22aa"]`

// findings runs axe-core and returns a line a violation: rule, how often, the first place.
const findings = `axe.run(document, {runOnly: {type: "tag", values: ` + standards + `}, resultTypes: ["violations"]})
	.then(r => r.violations.map(v => v.id + " x" + v.nodes.length + ": " + v.help + ": " + v.nodes.slice(0, 3).map(n => n.target.join(" ")).join(" | ")))`

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

// TestAxe asks axe-core about every kind of page, on small and large screens, light and dark; of a kind with many pages the
// first is seen at every size, the others on a phone. It sees only part of what can be wrong; the other tests of this package
// and a reader's eyes see more.
func TestAxe(t *testing.T) {
	axe := engine(t)
	seen := map[string]bool{}
	for _, f := range pages(t) {
		looks := phone
		if !seen[f.kind] {
			looks, seen[f.kind] = append(slices.Clone(phone), others...), true
		}
		t.Run(f.path, func(t *testing.T) {
			t.Parallel()
			p := open(t, f.url, look{before: clock(asOf)})
			eval[chromedp.Void](p, axe)
			for _, l := range looks {
				p.look(l)
				if found := eval[[]string](p, findings); len(found) > 0 {
					t.Errorf("%s:\n%s", l.says(), strings.Join(found, "\n"))
				}
			}
		})
	}
}

var (
	phone  = []look{{wide: 360}}
	others = []look{{wide: 360, dark: true}, {wide: 320}, {wide: 1280}, {wide: 320, dark: true}, {wide: 1280, dark: true}}
)

// TestAxeSees holds the check itself: axe-core must find a fault that is put into a page.
func TestAxeSees(t *testing.T) {
	axe := engine(t)
	p := open(t, pages(t)[0].url, look{})
	eval[chromedp.Void](p, axe)
	eval[chromedp.Void](p, `void document.body.append(Object.assign(document.createElement("button")))`)
	if found := eval[[]string](p, findings); len(found) != 1 || !strings.Contains(found[0], "button-name") {
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
