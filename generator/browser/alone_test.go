package browser_test

import (
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// asked collects every address that a tab asks for, and gives them up to now once.
func (p tab) asked() func() []string {
	p.Helper()
	var lock sync.Mutex
	var list []string
	err := chromedp.Listen(p.ctx, func(event any) {
		if e, is := event.(*network.EventRequestWillBeSent); is {
			lock.Lock()
			defer lock.Unlock()
			list = append(list, e.Request.URL)
		}
	})
	if err != nil {
		p.Fatal(err)
	}
	return func() []string {
		lock.Lock()
		defer lock.Unlock()
		now := list
		list = nil
		return now
	}
}

// TestPagesKeepToThemselves holds that a page of a person asks for nothing but itself, and a page of the library for nothing
// but files of its own folder, and whoever works on the diary asks for nothing either; that no script throws; and that a script
// which is not the page's own is stopped by its policy.
func TestPagesKeepToThemselves(t *testing.T) {
	watch := `window.wrong = []; addEventListener("error", e => wrong.push(e.message));
		addEventListener("securitypolicyviolation", e => wrong.push(e.violatedDirective)); console.error = e => wrong.push(String(e))`
	asked := map[tab]func() []string{}
	var lock sync.Mutex
	visit(t, pages(t), look{before: clock(asOf) + ";" + watch}, func(p tab, f file) {
		lock.Lock()
		of := tab{nil, p.ctx} // one ear a tab
		if asked[of] == nil {
			asked[of] = p.asked()
		}
		urls := asked[of]
		lock.Unlock()
		urls()
		p.navigate(f.url)
		eval[chromedp.Void](p, `void document.querySelectorAll("button:not(.send)").forEach(b => b.click())`)
		for _, url := range urls() {
			own := url == f.url || strings.HasPrefix(url, "data:image/")
			library := strings.Contains(f.path, "library/") && strings.HasPrefix(url, "file://") && strings.Contains(url, "/library/")
			if !own && !library {
				p.Errorf("the page asks for %s", url)
			}
		}
		if wrong := eval[[]string](p, "wrong"); len(wrong) > 0 {
			p.Errorf("scripts fail: %q", wrong)
		}
		eval[chromedp.Void](p, `void document.querySelector("style").after(Object.assign(document.createElement("script"), {textContent: "1"}))`)
		eval[chromedp.Void](p, `new Promise(done => setTimeout(done, 50))`)
		if wrong := eval[[]string](p, "wrong"); len(wrong) != 1 || !strings.Contains(wrong[0], "script-src") && !strings.Contains(wrong[0], "default-src") {
			p.Errorf("a script put in by the test should be stopped by the policy, and is not: %q", wrong)
		}
	})
}

// TestAskingIsSeen holds the test itself: a picture from elsewhere is seen, though the page's own policy keeps it away.
func TestAskingIsSeen(t *testing.T) {
	p := open(t, "about:blank", look{})
	asked := p.asked()
	eval[chromedp.Void](p, `void document.body.append(Object.assign(new Image(), {src: "http://127.0.0.1:9/x.png"}))`)
	eval[chromedp.Void](p, `new Promise(done => setTimeout(done, 200))`)
	if !strings.Contains(strings.Join(asked(), " "), "x.png") {
		t.Errorf("a request was not seen: %q", asked())
	}
}
