package browser_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"

	"paceleaf/generator"
	"paceleaf/generator/client"
	"paceleaf/programs"
	"paceleaf/templates"
)

// A client's hand on the diary of a handout: what is found by its name, as an eye or an ear finds it.
const hand = `
const find = s => [...document.querySelectorAll(s)].filter(e => e.checkVisibility())
const named = (s, text, nth = 0) => find(s).filter(e => e.textContent.replace(/\s/g, " ").trim().startsWith(text))[nth] ?? (() => { throw Error("nothing is called " + text) })()
const press = text => named("button", text).click()
const box = title => find(".day fieldset").find(f => f.querySelector("legend").textContent.includes(title)) ?? (() => { throw Error("no box " + title) })()
const tick = (title, leg) => [...box(title).querySelectorAll("label.to-tick")].find(l => l.textContent.startsWith(leg)).click()
const write = (title, leg, label, text, nth = 0) => {
	const within = leg ? [...box(title).querySelectorAll(".of-leg")].find(g => g.textContent.startsWith(leg)) : box(title)
	const at = [...within.querySelectorAll("label.field")].filter(l => l.textContent.startsWith(label))[nth].querySelector("input, select")
	at.value = text
	at.dispatchEvent(new Event("change"))
}
`

func (p tab) hand(script string) {
	p.Helper()
	eval[chromedp.Void](p, "(() => {"+hand+script+"})()")
}

// told is what the diary tells after a button was pressed.
func (p tab) told() string {
	p.Helper()
	return eval[string](p, `document.querySelector(".told").textContent.replace(/\s/g, " ")`)
}

// sent presses "send" and returns the file that comes down: its name and its text.
func (p tab) sent() (name, text string) {
	p.Helper()
	dir := p.TempDir()
	_, err := chromedp.CallBrowser(p.ctx, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior: browser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir})
	if err != nil {
		p.Fatal(err)
	}
	p.hand(`press("Send to my therapist")`)
	return p.saved(dir)
}

// saved waits for the one file that comes down.
func (p tab) saved(dir string) (name, text string) {
	p.Helper()
	for range 100 {
		files, _ := filepath.Glob(filepath.Join(dir, "*.json"))
		if len(files) == 1 {
			data, err := os.ReadFile(files[0])
			if err == nil && len(data) > 0 {
				return filepath.Base(files[0]), string(data)
			}
		}
		time.Sleep(50 * time.Millisecond)
	}
	p.Fatalf("no file came down; the page says %q", p.told())
	return "", ""
}

// diaryOf opens the handout of a client on a day, its diary empty.
func diaryOf(t *testing.T, code, day string) tab {
	t.Helper()
	p := open(t, handoutOf(t, code), look{before: clock(day)})
	p.emptied()
	return p
}

// emptied forgets all diaries on this device and opens the page anew.
func (p tab) emptied() {
	p.Helper()
	eval[chromedp.Void](p, "localStorage.clear()")
	p.do(chromedp.Reload())
}

func handoutOf(t *testing.T, code string) string {
	t.Helper()
	for _, f := range pages(t) {
		if f.path == "hand/"+code+"/handout.html" {
			return f.url
		}
	}
	t.Fatalf("%s has no handout", code)
	return ""
}

// taken puts a log into the clinic's folder and has Paceleaf read it.
func taken(t *testing.T, code, name, text string) *client.Log {
	t.Helper()
	clinic := demo()
	clinic["clients/"+code+"/logs/"+name] = &fstest.MapFile{Data: []byte(text)}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test"})
	if house == nil {
		t.Fatal(faults)
	}
	planned := house.Plan(code)
	if len(planned.Faults) > 0 {
		t.Errorf("the log has faults: %v", planned.Faults)
	}
	for i := range planned.Client.Logs {
		if l := &planned.Client.Logs[i]; strings.HasSuffix(l.At.File, "/"+name) {
			return l
		}
	}
	t.Fatalf("%s was not read", name)
	return nil
}
