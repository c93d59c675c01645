package browser_test

import (
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// week is the week that each rail of the page shows.
func (p tab) week() string {
	p.Helper()
	return strings.Join(p.eachText(".rail [aria-pressed=true]"), ",")
}

// TestDiaryStays holds that ticks come back when the page is opened again, that the page opens on the week after the last
// ticked one whatever day it is, and that "delete" asks once more before it takes all away.
func TestDiaryStays(t *testing.T) {
	p := diaryOf(t, "heron-07", "2026-04-30")
	if at := p.week(); at != "Week 1,Week 1,Week 1" {
		t.Fatalf("a page without ticks opens on %q", at)
	}
	p.hand(`find(".day-rail button")[0].click(); find(".day label.to-tick input")[0].click()`)
	p.do(chromedp.Reload())
	if at := p.week(); at != "Week 1,Week 1,Week 1" {
		t.Errorf("week 1 has just begun, and the page opens on %q", at)
	}
	p.hand(`find(".day-rail button").at(-1).click(); find(".day label.to-tick input")[0].click()`)
	p.do(chromedp.Reload())
	if at := p.week(); at != "Week 2,Week 2,Week 2" {
		t.Errorf("week 1 was ticked to its last day, and the page opens on %q", at)
	}
	if shown := eval[string](p, `[...document.querySelectorAll("#weeks > .week")].filter(e => e.checkVisibility()).map(e => e.id).join()`); shown != "week-2" {
		t.Errorf("the list of weeks shows %q", shown)
	}
	p.hand(`press("Week 1"); find(".day-rail button")[0].click()`)
	if on := eval[bool](p, `document.querySelector(".day label.to-tick input").checked`); !on {
		t.Error("a tick did not come back")
	}
	p.hand(`press("Delete my ticks")`)
	if left := p.entries("heron-07"); left == 0 {
		t.Error("the first press deletes already")
	}
	p.hand(`press("Delete all? Press again")`)
	if left := p.entries("heron-07"); left != 0 {
		t.Errorf("%d entries are left after deleting", left)
	}
	p.do(chromedp.Reload())
	if at := p.week(); at != "Week 1,Week 1,Week 1" {
		t.Errorf("after deleting the page opens on %q", at)
	}
}

// entries is how much the device keeps of a client.
func (p tab) entries(code string) int {
	p.Helper()
	return eval[int](p, `Object.keys(localStorage).filter(k => k.includes("`+code+`") && localStorage[k]).length`)
}

// TestDiaryIsMended: what was typed can be typed anew after days, and the last change be taken back; what was deleted stays so.
func TestDiaryIsMended(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-08")
	p.hand(`press("Undo")`)
	if !strings.Contains(p.told(), "nothing to undo") {
		t.Errorf("the page says %q", p.told())
	}
	p.hand(`press("Mon 6 April"); tick("Leg curl", "LEFT"); write("Leg curl", "LEFT", "Set 1", "8")`)
	p.do(chromedp.Reload())
	p.hand(`press("Mon 6 April"); write("Leg curl", "LEFT", "Set 1", "9"); write("Leg curl", "LEFT", "Set 2", "4"); press("Undo")`)
	if typed := eval[string](p, `[...document.querySelectorAll(".of-leg .sets")][0].querySelectorAll("input")[1].value`); typed != "" {
		t.Errorf("the change was taken back, and the page still shows %q", typed)
	}
	_, text := p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {"reps": [9]}}]}`)
	p.hand(`press("Undo"); press("Undo")`)
	if !strings.Contains(p.told(), "nothing to undo") {
		t.Errorf("all of this visit was taken back, and the page says %q", p.told())
	}
	p.do(chromedp.Reload())
	_, text = p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {"reps": [8]}}]}`)
	p.hand(`press("Mon 6 April"); write("Leg curl", "LEFT", "Set 2", "4"); press("Delete my ticks"); press("Delete all"); press("Undo"); press("Send")`)
	if !strings.Contains(p.told(), "nothing to send") {
		t.Errorf("what was deleted came back: the page says %q", p.told())
	}
}

// TestDiariesStayApart: the pages of two clients on one phone know nothing of each other, though one code begins the other; and
// what one deletes the other keeps.
func TestDiariesStayApart(t *testing.T) {
	p := diaryOf(t, "tern-04", "2026-04-06")
	eval[chromedp.Void](p, `localStorage["paceleaf tern-0 d"] = localStorage["paceleaf tern-041 d"] = "{}"`)
	p.hand(`tick("Leg curl", "LEFT")`)
	p.navigate(handoutOf(t, "knot-12"))
	p.hand(`press("Send")`)
	if !strings.Contains(p.told(), "nothing to send") {
		t.Errorf("the page of another client says %q", p.told())
	}
	p.hand(`find(".day label.to-tick input")[0].click(); press("Delete my ticks"); press("Delete all")`)
	if eval[bool](p, `Object.keys(localStorage).some(k => k.includes("knot-12"))`) {
		t.Error("not all was deleted")
	}
	p.navigate(handoutOf(t, "tern-04"))
	if at := p.eachText(".day-rail button")[0]; at != "Mon 6 April ✓" {
		t.Errorf("the other client's tick is gone: %q", at)
	}
	p.hand(`press("Delete my ticks"); press("Delete all")`)
	if n := eval[int](p, `Object.keys(localStorage).filter(k => k.startsWith("paceleaf tern-0")).length`); n != 2 {
		t.Errorf("%d of 2 clients with a similar code keep their ticks", n)
	}
}

// TestDiaryOnAFullDevice: where nothing more can be kept the page says so, keeps what it has, and still sends all.
func TestDiaryOnAFullDevice(t *testing.T) {
	const fill = `let i = 0; for (let n = 1 << 24; n >= 1; n >>= 1) try { for (;;) localStorage[i] = "x".repeat(n), i++ } catch { }`
	p := diaryOf(t, "tern-04", "2026-04-06")
	p.hand(`tick("Leg curl", "LEFT")`)
	eval[chromedp.Void](p, fill)
	p.hand(`tick("Leg curl", "RIGHT")`)
	if !strings.Contains(p.told(), "cannot keep more") {
		t.Errorf("a full device: the page says %q", p.told())
	}
	_, text := p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {}, "right": {}}]}`)
	p.do(chromedp.Reload())
	_, text = p.sent()
	p.isLog(text, `{"done": [{"on": "2026-04-06", "do": "leg-curl-machine", "left": {}}]}`)
	eval[chromedp.Void](p, `localStorage.clear()`)
}

// TestWithoutStorage: where nothing can be kept, as in a private window or a mail's preview, there is no diary, and the grid for
// paper stands.
func TestWithoutStorage(t *testing.T) {
	for name, broken := range map[string]string{
		"none":      `Object.defineProperty(window, "localStorage", {get() { throw Error("no storage here") }})`,
		"absent":    `Object.defineProperty(window, "localStorage", {value: null})`,
		"no room":   `Object.defineProperty(window, "localStorage", {value: new Proxy({}, {set() { throw new DOMException("full", "QuotaExceededError") }})})`,
		"no script": "",
	} {
		t.Run(name, func(t *testing.T) {
			p := open(t, handoutOf(t, "tern-04"), look{before: broken, noScript: broken == ""})
			if rows := len(p.eachText("#tick tbody tr")); rows != 12 {
				t.Errorf("the grid for paper shows %d of 12 training days", rows)
			}
			if eval[bool](p, `!!document.querySelector(".kept")`) {
				t.Error("there is a diary that keeps nothing")
			}
		})
	}
	p := open(t, handoutOf(t, "tern-04"), look{before: clock("2026-04-06") + `; localStorage["paceleaf tern-04 " + 1] = 1`})
	eval[chromedp.Void](p, `for (const k of Object.keys(localStorage)) localStorage[k] = "{broken"`)
	p.do(chromedp.Reload())
	p.hand(`tick("Leg curl", "LEFT"); press("Delete my ticks"); press("Delete all")`)
}

// TestDiaryPrints: a page that is printed from the phone that keeps the diary prints the grid for paper, all weeks, and
// nothing of the diary.
func TestDiaryPrints(t *testing.T) {
	command(t, "install poppler-utils", "pdftotext")
	p := diaryOf(t, "tern-04", "2026-04-06")
	p.hand(`tick("Leg curl", "LEFT")`)
	text := strings.Join(p.printed("A4", chromedp.PaperA4).text, "\n")
	for _, part := range p.texts("#tick .scroll, #weeks > .week") {
		if missing := missingOn(text, part); len(missing) > 0 {
			t.Errorf("on paper %q is missing of %.60q", missing, part)
		}
	}
	for _, never := range []string{"Send to my therapist", "As the box says", "Delete my ticks"} {
		if strings.Contains(text, never) {
			t.Errorf("paper says %q", never)
		}
	}
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	if n := eval[int](p, `[...document.querySelectorAll("button, input, select")].filter(e => e.checkVisibility()).length`); n > 0 {
		t.Errorf("%d controls stand on paper", n)
	}
}
