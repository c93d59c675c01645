package page

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/net/html"

	"paceleaf/templates"
)

// mostScript is what a phone has to read of script at the most: the promise of the handout.
const mostScript = 10_000

// TestScriptIsSmall: the script of every page keeps the promise.
func TestScriptIsSmall(t *testing.T) {
	for kind, script := range samplePrinter(t).scripts {
		if len(script) > mostScript {
			t.Errorf("the script of a %s has %d bytes, at most %d", kind, len(script), mostScript)
		}
	}
}

// TestHostileDiary: whatever stands in a diary is data for the script and nothing else: it ends no script and begins none.
func TestHostileDiary(t *testing.T) {
	p := samplePrinter(t)
	for _, bad := range append(hostile, "</script><script>x</script>", "<!--<script>") {
		want := &Diary{Client: bad, Ends: bad, Weeks: []string{bad}, Days: []DiaryDay{{On: bad, Says: bad, Do: []int{0}}},
			Moves: []DiaryMove{{Do: bad, At: bad, Title: bad, Legs: []DiaryLeg{{Says: bad, Load: bad}}}}, Words: map[string]string{"x": bad}}
		scripts := scriptsOf(t, printed(t, p.HTML, View{Kind: "handout", Diary: want}))
		if len(scripts) != 2 {
			t.Fatalf("%q: the page has %d scripts, want its data and its own", bad, len(scripts))
		}
		if scripts[1] != string(p.scripts["handout"]) {
			t.Errorf("%q: the script is not the one whose hash the policy names", bad)
		}
		got := &Diary{}
		if err := json.Unmarshal([]byte(scripts[0]), got); err != nil {
			t.Fatalf("%q: %v in %s", bad, err, scripts[0])
		}
		if diff := cmp.Diff(strings.ToValidUTF8(fmt.Sprintf("%+v", *want), "\ufffd"), fmt.Sprintf("%+v", *got)); diff != "" {
			t.Errorf("%q does not come out as it went in:\n%s", bad, diff)
		}
	}
}

// scriptsOf are the texts of all script elements of a page, as a browser parses them.
func scriptsOf(t *testing.T, page []byte) (texts []string) {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	for n := range root.Descendants() {
		if n.Type == html.ElementNode && n.Data == "script" {
			texts = append(texts, n.FirstChild.Data)
		}
	}
	return texts
}

// TestScriptRefused: a clinic's own script that would end early, or one that is missing, is told by file.
func TestScriptRefused(t *testing.T) {
	_, err := NewPrinter(fstest.MapFS{"script/weeks.js": {Data: []byte("// </script>")}}, templates.FS)
	if err == nil || !strings.Contains(err.Error(), `templates/script/weeks.js: "</" would end the script`) {
		t.Errorf("a script that ends early: %v", err)
	}
	if _, err := (sources{}).scripts(); err == nil || !strings.Contains(err.Error(), "is missing") {
		t.Errorf("no scripts at all: %v", err)
	}
}

// TestDigest: the digest belongs to the content of a page: the same page has the same, any other another.
func TestDigest(t *testing.T) {
	a, b := View{Title: "a"}, View{Title: "b"}
	if a.Digest() == b.Digest() || a.Digest() != (View{Title: "a"}).Digest() || len(a.Digest()) != 16 {
		t.Errorf("digests %s and %s", a.Digest(), b.Digest())
	}
}
