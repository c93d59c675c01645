package browser_test

import (
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// call sends one command of the browser's protocol for which chromedp has no action.
func call[P, R any](p tab, command cdp.Command[P, R], params P) R {
	p.Helper()
	r, err := chromedp.Call(p.ctx, command, params)
	if err != nil {
		p.Fatal(err)
	}
	return r
}

// beforeScripts runs a script in every page of the tab before the page's own.
func (p tab) beforeScripts(script string) {
	p.Helper()
	call(p, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
}

// clock is a script that stops the clock of a page at a day, so that no test depends on today.
func clock(day string) string {
	return `(() => { const at = new Date("` + day + `T12:00:00"), Real = Date;
		window.Date = class extends Real { constructor(...a) { a.length ? super(...a) : super(at) } static now() { return +at } } })()`
}
