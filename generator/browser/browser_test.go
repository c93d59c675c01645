// Package browser_test opens the built pages in a real, headless Chromium and measures what only a browser can tell: what an
// ear is told, what fits on a small phone, what comes out of a printer, what the handout's script does. It holds tests only
// and is no room of the house.
//
// Without a browser every test here is skipped and says so; PACELEAF_BROWSER=must makes that a failure, as .ci/run does. The
// same goes for what only checks: PACELEAF_AXE is the path of axe.min.js, PACELEAF_HTML that of the HTML validator's
// command, and pdftotext and pdftohtml (poppler-utils) measure paper.
package browser_test

import (
	"context"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// chromes are the names under which a browser of the Chromium family is installed.
var chromes = []string{"chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge"}

// one browser serves all tests of a run; each test has tabs of its own.
var shared struct {
	once   sync.Once
	ctx    context.Context
	cancel func()
	err    error
}

func TestMain(m *testing.M) {
	code := m.Run()
	if shared.cancel != nil {
		shared.cancel()
	}
	os.Exit(code)
}

// missing skips a test for want of something outside Go, or fails it where everything must be there.
func missing(t *testing.T, what, remedy string) {
	t.Helper()
	if os.Getenv("PACELEAF_BROWSER") == "must" {
		t.Fatalf("%s is missing, and PACELEAF_BROWSER=must: %s", what, remedy)
	}
	t.Skipf("%s is missing: %s; this test is skipped", what, remedy)
}

// command is the path of an installed command.
func command(t *testing.T, remedy string, names ...string) string {
	t.Helper()
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	missing(t, names[0], remedy)
	return ""
}

// chrome is the one browser of this run.
func chrome(t *testing.T) context.Context {
	t.Helper()
	path := command(t, "install Chromium", chromes...)
	shared.once.Do(func() {
		options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU)
		all, stop := chromedp.NewExecAllocator(context.Background(), options...)
		ctx, cancel := chromedp.NewContext(all)
		shared.ctx, shared.cancel = ctx, func() { cancel(); stop() }
		shared.err = chromedp.Do(ctx)
	})
	if shared.err != nil {
		t.Fatalf("the browser does not start: %v", shared.err)
	}
	return shared.ctx
}

// look is how a page is opened.
type look struct {
	wide     int64 // CSS pixels; 0 is 360
	dark     bool
	noScript bool
	before   string // a script that runs before those of the page
}

// tab is a page under test.
type tab struct {
	*testing.T
	ctx context.Context
}

// patience is how long a tab may take with all its pages, on a machine that does other things too.
var patience = map[bool]time.Duration{false: 10 * time.Minute, true: 2 * time.Hour}[long]

// open opens a page in a tab of its own, which the end of the test closes.
func open(t *testing.T, url string, l look) tab {
	t.Helper()
	ctx, cancel := chromedp.NewContext(chrome(t))
	ctx, late := context.WithTimeout(ctx, patience)
	t.Cleanup(func() { late(); cancel() })
	p := tab{t, ctx}
	p.look(l)
	if l.before != "" {
		p.beforeScripts(l.before)
	}
	p.do(chromedp.Navigate(url))
	return p
}

// visit sees a list of pages in two tabs, for a tab costs as much as a small page. Each page is a test of its own.
func visit(t *testing.T, list []file, l look, see func(p tab, f file)) {
	t.Helper()
	for half := range 2 {
		t.Run("tab "+strconv.Itoa(half+1), func(t *testing.T) {
			t.Parallel()
			p := open(t, "about:blank", l)
			for i := half; i < len(list); i += 2 {
				t.Run(list[i].path, func(t *testing.T) {
					at := tab{t, p.ctx}
					at.look(l)
					at.navigate(list[i].url)
					see(at, list[i])
				})
			}
		})
	}
}

// look sets width, theme and scripts of a tab.
func (p tab) look(l look) {
	p.Helper()
	if l.wide == 0 {
		l.wide = 360
	}
	theme := "light"
	if l.dark {
		theme = "dark"
	}
	p.do(chromedp.EmulateViewport(l.wide, 740))
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: theme}}})
	call(p, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: l.noScript})
	call(p, network.Enable, network.EnableParams{})
}

// navigate goes to another page in the same tab.
func (p tab) navigate(url string) {
	p.Helper()
	p.do(chromedp.Navigate(url))
}

// eachText is the text of each element that is shown, without spaces around it.
func (p tab) eachText(selector string) []string {
	p.Helper()
	return eval[[]string](p, `[...document.querySelectorAll("`+selector+`")].filter(e => e.tagName == "OPTION" || e.checkVisibility()).map(e => e.textContent.replace(/\s+/g, " ").trim())`)
}

func (p tab) do(steps ...chromedp.Action[chromedp.Void]) {
	p.Helper()
	if err := chromedp.Do(p.ctx, steps...); err != nil {
		p.Fatal(err)
	}
}

// eval runs an expression in the page.
func eval[V any](p tab, expression string) V {
	p.Helper()
	v, err := chromedp.Run(p.ctx, chromedp.Evaluate[V](expression, chromedp.EvalAwaitPromise))
	if err != nil {
		p.Fatalf("%v\nin %.200s", err, strings.TrimSpace(expression))
	}
	return v
}
