package browser_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"

	"paceleaf/generator"
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
	return eval[string](p, `document.querySelector(".told").textContent`)
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

// TestDiaryIsSentAndRead fills in a day as a client would, presses "send", and has Paceleaf read the very file.
func TestDiaryIsSentAndRead(t *testing.T) {
	p := open(t, handoutOf(t, "tern-04"), look{before: clock("2026-04-08")})
	p.hand(`press("Wed 8 April")
		tick("Leg press", "LEFT"); tick("Leg press", "RIGHT")
		box("Leg press").querySelector("button").click()
		write("Leg press", "LEFT", "How many more", "2")
		write("Leg press", "RIGHT", "Weight on each side", "37.5"); write("Leg press", "RIGHT", "Set 1", "10"); write("Leg press", "RIGHT", "Set 2", "9")
		tick("Heel raise", "LEFT")
		tick("Leg curl", "Left out"); write("Leg curl", "", "Why?", "machine out of order")
		write("Your knee", "", "Worst pain", "1"); write("Your knee", "", "Swelling", "same")`)
	name, text := p.sent()
	if name != "2026-04-08.json" {
		t.Errorf("the file is called %s, and a log is called by its day", name)
	}
	var got, want any
	json.Unmarshal([]byte(text), &got)
	got.(map[string]any)["digest"] = "d"
	json.Unmarshal([]byte(`{"log": 1, "client": "tern-04", "block": 3, "digest": "d", "done": [
		{"on": "2026-04-08", "do": "leg-press-single", "left": {"kg": 52.5, "reps": [10, 10, 10], "reserve": 2}, "right": {"kg": 75, "reps": [10, 9]}},
		{"on": "2026-04-08", "do": "heel-raise-single", "left": {}}],
		"knee": [{"on": "2026-04-08", "pain": 1, "swelling": "same"}],
		"not_done": [{"on": "2026-04-08", "do": "leg-curl-machine", "why": "machine out of order"}]}`), &want)
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("what was typed is not what was sent (-typed +sent):\n%s\n%s", diff, text)
	}
	taken(t, "tern-04", name, text)
}

// taken puts a log into the clinic's folder and has Paceleaf read it.
func taken(t *testing.T, code, name, text string) {
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
	for _, l := range planned.Client.Logs {
		if l.Written.String()+".json" == name && len(l.Done) > 0 {
			return
		}
	}
	t.Errorf("%s was not read", name)
}

// TestDiaryStays holds that ticks come back when the page is opened again, that the page opens on the week after the last
// ticked one, and that "delete" takes all away.
func TestDiaryStays(t *testing.T) {
	url := handoutOf(t, "heron-07")
	p := open(t, url, look{before: clock("2026-04-30")})
	p.hand(`press("Delete my ticks"); press("Delete all")`)
	chosen := `[...document.querySelectorAll(".rail")].map(r => r.querySelector("[aria-pressed=true]").textContent).join()`
	if at := eval[string](p, chosen); at != "Week 1,Week 1,Week 1" {
		t.Fatalf("a page without ticks opens on %q", at)
	}
	p.hand(`find(".day-rail button")[0].click(); find(".day label.to-tick input")[0].click()`)
	p.do(chromedp.Reload())
	if at := eval[string](p, chosen); at != "Week 1,Week 1,Week 1" {
		t.Errorf("week 1 has just begun, and the page opens on %q", at)
	}
	p.hand(`find(".day-rail button").at(-1).click(); find(".day label.to-tick input")[0].click()`)
	p.do(chromedp.Reload())
	if at := eval[string](p, chosen); at != "Week 2,Week 2,Week 2" {
		t.Errorf("week 1 was ticked to its last day, and the page opens on %q", at)
	}
	if shown := eval[string](p, `[...document.querySelectorAll("#weeks > .week")].filter(e => e.checkVisibility()).map(e => e.id).join()`); shown != "week-2" {
		t.Errorf("the list of weeks shows %q", shown)
	}
	p.hand(`press("Week 1"); find(".day-rail button")[0].click()`)
	if on := eval[bool](p, `document.querySelector(".day label.to-tick input").checked`); !on {
		t.Error("a tick did not come back")
	}
	p.hand(`press("Delete my ticks"); press("Delete all")`)
	if left := eval[int](p, `Object.keys(localStorage).filter(k => k.includes("heron-07")).length`); left != 0 {
		t.Errorf("%d entries are left after deleting", left)
	}
}

// TestDiaryNeverInvents holds that nothing is sent which nobody said: an empty diary, a load without its times, an unanswered
// question.
func TestDiaryNeverInvents(t *testing.T) {
	p := open(t, handoutOf(t, "oyster-16"), look{before: clock("2026-04-30")})
	p.hand(`press("Delete my ticks"); press("Delete all"); press("Send")`)
	if !strings.Contains(p.told(), "nothing to send") {
		t.Errorf("an empty diary: the page says %q", p.told())
	}
	if zero := eval[int](p, `[...document.querySelectorAll(".kept select, .kept input:not([type=checkbox])")].filter(e => e.value !== "").length`); zero != 0 {
		t.Errorf("%d fields hold an answer before anybody gave one", zero)
	}
	p.hand(`const at = [...document.querySelectorAll(".of-leg")].find(g => g.textContent.includes("Weight"))
		at.querySelector("input").click()
		const kg = [...at.querySelectorAll("label.field")].find(l => l.textContent.startsWith("Weight")).querySelector("input")
		kg.value = "20"; kg.dispatchEvent(new Event("change")); press("Send")`)
	if !strings.Contains(p.told(), "how many times") {
		t.Errorf("a load without its times: the page says %q", p.told())
	}
}

// TestOverdue holds that a page says when its days are over, by its own clock, and not before.
func TestOverdue(t *testing.T) {
	for day, says := range map[string]bool{"2026-05-03": false, "2026-05-04": true} {
		p := open(t, handoutOf(t, "tern-04"), look{before: clock(day)})
		if got := eval[bool](p, `!!document.querySelector("main > .overdue")?.textContent.replace(/\s/g, " ").includes("ended on Sun 3 May 2026")`); got != says {
			t.Errorf("%s: the page says that it is over: %v, want %v", day, got, says)
		}
	}
}

// TestWithoutScript holds that a page without script shows all that stands in it: every week, every box, the grid for paper.
func TestWithoutScript(t *testing.T) {
	for _, f := range pages(t) {
		t.Run(f.path, func(t *testing.T) {
			t.Parallel()
			p := open(t, f.url, look{noScript: true})
			p.none("hidden", "without script this cannot be read")
			if n := eval[int](p, `document.querySelectorAll("button, input").length`); n != 0 && !strings.HasPrefix(f.kind, "library") {
				t.Errorf("%d controls do nothing without script", n)
			}
		})
	}
	p := open(t, handoutOf(t, "tern-04"), look{before: `Object.defineProperty(window, "localStorage", {get() { throw Error("no storage here") }})`})
	if grids := eval[int](p, `[...document.querySelectorAll("#tick > .scroll")].filter(e => e.checkVisibility()).length`); grids != 4 {
		t.Errorf("without storage %d of 4 grids for paper are shown", grids)
	}
}
