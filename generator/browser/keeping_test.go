package browser_test

import (
	"net/http"
	"net/http/httptest"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// TestLibraryIsKept serves the pages of the demo clinic and looks at the library, then at a handout: the phone keeps the whole
// library and shows it once nobody serves it any more, and of the handout it keeps nothing, though somebody laid a copy of it
// into the folder of the library.
func TestLibraryIsKept(t *testing.T) {
	dir, err := built()
	if err != nil {
		t.Fatal(err)
	}
	pages := http.FileServer(http.Dir(dir))
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Cache-Control", "no-store") // what the browser itself would keep for a while is not what is asked here
		if r.URL.Path == beside {
			r.URL.Path = handout
		}
		pages.ServeHTTP(w, r)
	}))
	defer server.Close()
	p := open(t, server.URL+"/library/index.html", look{})
	eval[bool](p, `navigator.serviceWorker.ready.then(() => true)`)
	for _, path := range []string{handout, beside} {
		p.navigate(server.URL + path)
		if title := p.eachText("h1"); len(title) != 1 {
			t.Fatalf("%s is served with the titles %q", path, title)
		}
	}
	kept := eval[[]string](p, `caches.keys().then(async names => {
		const urls = []
		for (const name of names) for (const request of await (await caches.open(name)).keys()) urls.push(new URL(request.url).pathname)
		return urls
	})`)
	for _, path := range kept {
		if _, err := os.Stat(dir + path); err != nil || !strings.HasPrefix(path, "/library/") {
			t.Errorf("the phone keeps %s, which is no file of the library: %v", path, err)
		}
	}
	for _, path := range []string{"/library/index.html", "/library/exercises/squat.html", "/library/figures/step-up-left.svg", "/library/notes/thigh-alone.html", "/library/programs/acl-reconstruction.html"} {
		if !slices.Contains(kept, path) {
			t.Errorf("of %d files the phone does not keep %s", len(kept), path)
		}
	}
	server.Close()
	p.do(chromedp.Navigate(server.URL + "/library/exercises/plank.html"))
	if title := eval[string](p, `document.querySelector("h1")?.textContent ?? ""`); title != "Plank" {
		t.Errorf("without a server the page of the plank is headed %q", title)
	}
	for path, want := range map[string]bool{handout: false, beside: false, "/library/": true, "/library/glossary.html": true, "/library/index.html?from=mail": true} {
		if held := eval[bool](p, `fetch("`+path+`").then(() => true, () => false)`); held != want {
			t.Errorf("without a server %s is there: %v, want %v", path, held, want)
		}
	}
}

// handout is a page that was made for one person, beside where a copy of it lies that belongs nowhere.
const (
	handout = "/hand/tern-04/handout.html"
	beside  = "/library/exercises/tern-04.html"
)

// TestFinding types and chooses in the index: what does not fit goes, the number of those left is told, and all come back.
func TestFinding(t *testing.T) {
	dir, err := built()
	if err != nil {
		t.Fatal(err)
	}
	p := open(t, "file://"+dir+"/library/index.html", look{})
	left := func(do string) []string {
		return eval[[]string](p, do+`;[...document.querySelectorAll(".cards > li:not(.gone)")].map(e => e.id)`)
	}
	told := func() string { return eval[string](p, `document.querySelector(".count").textContent`) }
	tell := `document.querySelector(".finder").dispatchEvent(new Event("input"))`
	all := len(left(""))
	if all < 60 || !strings.HasPrefix(told(), "9") && !strings.HasPrefix(told(), "1") {
		t.Errorf("%d exercises, told %q", all, told())
	}
	if found := left(`document.querySelector("#find-0").value = "LEG press"; ` + tell); len(found) < 3 || slices.Contains(found, "plank") {
		t.Errorf("for leg press: %v", found)
	}
	if found := left(`document.querySelector("#find-4").value = "#needs-nothing"; ` + tell); len(found) > 3 {
		t.Errorf("for leg press with nothing: %v", found)
	}
	if found := left(`document.querySelector("#find-0").value = "plank on the knees"; document.querySelector("#find-4").value = "#all"; ` + tell); len(found) != 1 || told() != "1 exercise shown" {
		t.Errorf("%v, told %q", found, told())
	}
	eval[bool](p, `new Promise(done => { document.querySelector(".finder button").click(); setTimeout(() => done(true), 50) })`)
	if len(left("")) != all {
		t.Error("not all come back")
	}
	plain := open(t, "file://"+dir+"/library/index.html", look{noScript: true})
	if shown := plain.texts(".cards > li .name"); len(shown) != all {
		t.Errorf("without a script %d of %d exercises stand there", len(shown), all)
	}
}
