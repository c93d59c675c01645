package browser_test

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
)

// sharing stands in for the sheet of a phone that hands files on. It takes what real ones take (text, by the list of file types
// at developer.mozilla.org, Navigator.share) and ends as the test wants: taken, or turned down with a named error.
const sharing = `
window.shared = []
const taking = f => /\.txt$/.test(f.name) && f.type == "text/plain"
Object.defineProperty(navigator, "canShare", {value: d => d.files.every(taking)})
Object.defineProperty(navigator, "share", {value: async d => {
	if (window.refused) throw new DOMException("", window.refused)
	for (const f of d.files) shared.push([f.name, await f.text()])
}})
`

// TestDiaryIsShared: where a device can hand files on, the log is handed on, and the very file is read.
func TestDiaryIsShared(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-06")
	p.do(chromedp.Navigate("about:blank"))
	p.beforeScripts(sharing)
	p.navigate(handoutOf(t, "tern-04"))
	p.hand(`tick("Leg curl", "LEFT"); press("Send")`)
	eval[chromedp.Void](p, `new Promise(done => { const look = () => shared[0] ? done() : setTimeout(look, 20); look() })`)
	got := eval[[][]string](p, "shared")
	if len(got) != 1 || got[0][0] != "2026-04-06.txt" || !strings.Contains(p.told(), "Handed over") {
		t.Fatalf("%d files handed on: %q; the page says %q", len(got), got, p.told())
	}
	p.isLog(got[0][1], `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {}}]}`)
	if l := taken(t, "tern-04", got[0][0], got[0][1]); l.Written.String() != "2026-04-06" {
		t.Errorf("read as written on %s", l.Written)
	}
}

// TestSharingIsRefused: a client who closes the sheet gets no file behind their back; where the device refuses, the file is saved.
func TestSharingIsRefused(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-06")
	p.beforeScripts(sharing)
	p.do(chromedp.Reload())
	dir := p.TempDir()
	if _, err := chromedp.CallBrowser(p.ctx, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior: browser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir}); err != nil {
		t.Fatal(err)
	}
	p.hand(`refused = "AbortError"; tick("Leg curl", "LEFT"); press("Send")`)
	eval[chromedp.Void](p, `new Promise(done => setTimeout(done, 300))`)
	if files, _ := filepath.Glob(filepath.Join(dir, "*")); len(files) > 0 || p.told() != "" {
		t.Errorf("the client closed the sheet: %q came down, and the page says %q", files, p.told())
	}
	p.hand(`refused = "NotAllowedError"; press("Send")`)
	if name, _ := p.saved(dir); name != "2026-04-06.json" || !strings.Contains(p.told(), "Saved as 2026-04-06.json") {
		t.Errorf("%s came down, and the page says %q", name, p.told())
	}
}
