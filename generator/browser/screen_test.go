package browser_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// measure runs one of the scripts of measure/ in the page.
func (p tab) measure(name string) []string {
	p.Helper()
	var text string
	for _, file := range []string{"tools", name} {
		part, err := os.ReadFile("measure/" + file + ".js")
		if err != nil {
			p.Fatal(err)
		}
		text += string(part) + "\n"
	}
	return eval[[]string](p, "(() => {"+text+"})()")
}

// none fails where a measurement finds something.
func (p tab) none(name, says string) {
	p.Helper()
	if found := p.measure(name); len(found) > 0 {
		p.Errorf("%s:\n%s", says, strings.Join(found[:min(len(found), 8)], "\n"))
	}
}

// TestScreen measures every page, and as a reader with wide spacing sees it: those of pages at every look, the others on the
// narrowest screen, which is also a screen of 1280 px at 400 %, and at one more look in turn.
func TestScreen(t *testing.T) {
	whole, all := pages(t), every(t)
	visit(t, all, look{wide: 320, before: clock(asOf)}, func(p tab, f file) {
		p.unfold()
		for i, l := range looks {
			if !slices.Contains(whole, f) && i != narrowest && i != slices.Index(all, f)%len(looks) {
				continue
			}
			p.look(l)
			p.none("sideways", l.says()+": wider than the screen")
			p.none("targets", l.says()+": smaller than 44 × 44 px")
			p.none("contrast", l.says()+": under 7 : 1")
		}
		p.look(looks[narrowest])
		p.none("spacing", "")
		p.none("sideways", "with the spacing of WCAG 1.4.12, wider than 320 px")
		p.none("clipped", "with the spacing of WCAG 1.4.12, text is cut off")
	})
}

// TestScreenSees holds the measurements themselves: each must find a fault that is put into a page.
func TestScreenSees(t *testing.T) {
	p := open(t, pages(t)[0].url, look{wide: 320})
	for _, c := range []struct{ name, put, find string }{
		{"sideways", `position:absolute;inset-inline-start:300px;inline-size:60px`, "put"},
		{"clipped", `overflow:hidden;inline-size:20px;block-size:10px`, "put"},
		{"contrast", `color:#777;background:#fff`, "has 4.48"},
		{"hidden", `display:none`, "put"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p.T = t
			eval[chromedp.Void](p, `void document.querySelector("main").append(Object.assign(document.createElement("p"), {id: "put", textContent: "put here by the test"}))`)
			eval[chromedp.Void](p, `void document.getElementById("put").style.setProperty("all", "revert"); void (document.getElementById("put").style.cssText = "`+c.put+`")`)
			if found := strings.Join(p.measure(c.name), "\n"); !strings.Contains(found, c.find) {
				t.Errorf("found %q, want %q in it", found, c.find)
			}
			eval[chromedp.Void](p, `document.getElementById("put").remove()`)
		})
	}
	eval[chromedp.Void](p, `void document.querySelector("main").append(Object.assign(document.createElement("button"), {id: "put", textContent: "x"})); void (document.getElementById("put").style.cssText = "min-block-size:0;padding:0")`)
	if found := strings.Join(p.measure("targets"), "\n"); !strings.Contains(found, "button#put") {
		t.Errorf("a small button is not found: %q", found)
	}
}

// TestKeyboard holds that the keyboard comes to every control of a handout, in the order of the page, and that one sees
// where it is.
func TestKeyboard(t *testing.T) {
	for _, f := range pages(t) {
		if f.kind == "handout" && !strings.Contains(f.path, "tern-04") && !long {
			continue
		}
		t.Run(f.path, func(t *testing.T) {
			t.Parallel()
			p := open(t, f.url, look{before: clock(asOf)})
			want, got := p.measure("focusable"), []string{}
			if !long {
				want = want[:min(len(want), 40)] // each step takes the browser a while
			}
			for range want {
				p.do(chromedp.KeyEvent(kb.Tab))
				at := p.measure("focus")
				got = append(got, at[0])
				if at[1] != "seen" {
					t.Errorf("the keyboard is on %s, and nothing shows it", at[0])
				}
			}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("the keyboard goes another way than the page (-page +keyboard):\n%s", diff)
			}
		})
	}
}
