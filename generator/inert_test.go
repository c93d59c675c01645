package generator_test

import (
	"bytes"
	"encoding/json"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/yuin/goldmark"
	gmhtml "github.com/yuin/goldmark/renderer/html"
	"golang.org/x/net/html"

	"paceleaf/generator"
	"paceleaf/generator/page"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// hostile is what somebody might type into any field.
const hostile = `<script>alert(1)</script><img src=x onerror=alert(2)> [go](javascript:alert(3)) ]]> --> {{.}} | # *`

// quotedText finds a text value of TOML: key, equals, text.
var quotedText = regexp.MustCompile(`(?m)^(\s*[A-Za-z0-9_.-]+\s*=\s*)"([^"\n]*)"`)

// TestHostileTextStaysInert puts a script into every text field of every file, one after another. Where the reader takes
// it, no page may carry it alive: no element, no handler, no link of ours that runs.
func TestHostileTextStaysInert(t *testing.T) {
	demo, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	printer, err := page.NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	taken, seen := 0, map[string]bool{}
	for _, name := range slices.Sorted(maps.Keys(demo)) {
		data := demo[name]
		for _, at := range quotedText.FindAllSubmatchIndex(data, -1) {
			field := fileKind(name) + string(data[at[2]:at[3]])
			if seen[field] {
				continue // one file of each kind is enough for each key
			}
			seen[field] = true
			changed := string(data[:at[4]]) + tomlSafe(string(data[at[4]:at[5]])+" "+hostile) + string(data[at[5]:])
			if buildsInert(t, printer, name+": "+string(data[at[0]:at[1]]), with(demo, name, changed), programs.FS) {
				taken++
			}
		}
		if strings.HasSuffix(name, ".md") && buildsInert(t, printer, name, with(demo, name, string(data)+"\n"+hostile+"\n\n<script>alert(4)</script>\n"), programs.FS) {
			taken++
		}
	}
	// all words of the shipped programs at once: titles, aims, sentences of the Markdown files
	if buildsInert(t, printer, "programs", mapFS(demo), hostilePrograms(t)) {
		taken++
	}
	if taken < 12 {
		t.Errorf("only %d fields took the text: does the test still reach the pages?", taken)
	}
	t.Logf("%d fields took hostile text", taken)
}

// fileKind is a file's folder below its client, or its name.
func fileKind(name string) string {
	parts := strings.Split(name, "/")
	if len(parts) > 3 {
		return parts[2] + "/"
	}
	return parts[len(parts)-1] + " "
}

// freeText are the keys of programs whose value is a sentence, not an id.
var freeText = regexp.MustCompile(`(?m)^(title|aim|about|describe|note|by|in)(\s*=\s*)"([^"\n]*)"`)

func hostilePrograms(t *testing.T) fs.FS {
	t.Helper()
	files := fstest.MapFS{}
	walkFS(t, programs.FS, func(name string, data []byte) {
		text := string(data)
		switch {
		case strings.HasSuffix(name, ".toml"):
			text = freeText.ReplaceAllString(text, `${1}${2}"${3} `+strings.ReplaceAll(tomlSafe(hostile), "$", "$$")+`"`)
		case strings.HasSuffix(name, ".md"):
			lines := strings.Split(text, "\n")
			for i, l := range lines {
				if l != "" && !strings.HasPrefix(l, "#") {
					lines[i] = l + " " + hostile
				}
			}
			text = strings.Join(lines, "\n")
		}
		files[name] = &fstest.MapFile{Data: []byte(text)}
	})
	return files
}

func walkFS(t *testing.T, of fs.FS, visit func(name string, data []byte)) {
	t.Helper()
	err := fs.WalkDir(of, ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return err
		}
		data, err := fs.ReadFile(of, name)
		visit(name, data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

func tomlSafe(s string) string { return strings.NewReplacer(`\`, `\\`, `"`, `\"`).Replace(s) }

func mapFS(files map[string][]byte) fstest.MapFS {
	m := fstest.MapFS{}
	for name, data := range files {
		m[name] = &fstest.MapFile{Data: data}
	}
	return m
}

func with(files map[string][]byte, name, text string) fstest.MapFS {
	m := mapFS(files)
	m[name] = &fstest.MapFile{Data: []byte(text)}
	return m
}

// buildsInert renders every client that has a plan and reports whether any page carries the text.
func buildsInert(t *testing.T, printer *page.Printer, what string, clinic, shipped fs.FS) (taken bool) {
	t.Helper()
	files := generator.Files{Clinic: clinic, Programs: shipped, Templates: templates.FS, Version: "test"}
	if what != "programs" {
		files.Shelf = &shelf // what ships has been read once, for all the tests of this package
	}
	house, _ := generator.Open(files)
	if house == nil {
		return false
	}
	codes := house.Codes()
	switch {
	case what == "programs":
		codes = codes[:many(min(3, len(codes)), len(codes))]
	case !strings.HasPrefix(what, "clients/"):
		codes = codes[:many(min(1, len(codes)), len(codes))] // what the whole clinic shares stands on the pages of each
	}
	for _, code := range codes {
		if only, _, isClient := strings.Cut(strings.TrimPrefix(what, "clients/"), "/"); isClient && strings.HasPrefix(what, "clients/") && only != code {
			continue // a client's file is on that client's pages alone
		}
		done := house.Plan(code)
		if done.Plan == nil {
			continue
		}
		for _, v := range []page.View{page.Handout(done.Plan, house.Words()), page.Worksheet(done.Plan, house.Words())} {
			out, err := printer.HTML(v)
			if err != nil {
				t.Fatalf("%s: %v", what, err)
			}
			md, err := printer.Markdown(v)
			if err != nil {
				t.Fatalf("%s: %v", what, err)
			}
			taken = taken || bytes.Contains(out, []byte("alert(1)"))
			inert(t, what+" (HTML)", out)
			inert(t, what+" (Markdown)", rendered(t, md))
		}
	}
	return taken
}

// rendered is the Markdown as the most trusting reader would show it: raw HTML and all links let through.
func rendered(t *testing.T, md []byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := goldmark.New(goldmark.WithRendererOptions(gmhtml.WithUnsafe())).Convert(md, &b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// inert fails on anything in a page that could run or load.
func inert(t *testing.T, what string, page []byte) {
	t.Helper()
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	for n := range root.Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		switch n.Data {
		case "script":
			if !ourScript(t, n) {
				t.Errorf("%s: a <script> reached the page", what)
			}
		case "img", "iframe", "object", "embed", "form", "base":
			t.Errorf("%s: a <%s> reached the page", what, n.Data)
		case "svg":
			if strange := notDrawn(n); strange != "" {
				t.Errorf("%s: a <svg> with %s reached the page", what, strange)
			}
		}
		for _, a := range n.Attr {
			value := strings.ToLower(strings.TrimSpace(a.Val))
			if strings.HasPrefix(a.Key, "on") || (a.Key == "href" || a.Key == "src") && strings.HasPrefix(value, "javascript:") {
				t.Errorf("%s: %s=%q reached the page", what, a.Key, a.Val)
			}
		}
	}
}

// ourScript reports whether a script is the page's own: one that pages of nobody's words have too, or its data, which is
// JSON and runs nothing.
func ourScript(t *testing.T, script *html.Node) bool {
	t.Helper()
	text := ""
	if script.FirstChild != nil {
		text = script.FirstChild.Data
	}
	for _, a := range script.Attr {
		if a.Key == "type" && a.Val == "application/json" {
			return len(script.Attr) == 2 && json.Valid([]byte(text))
		}
	}
	return len(script.Attr) == 0 && shippedScripts(t)[text]
}

// shippedScripts are the scripts of pages that hold nothing that a person wrote.
var shippedScripts = func() func(*testing.T) map[string]bool {
	var once sync.Once
	scripts := map[string]bool{}
	return func(t *testing.T) map[string]bool {
		once.Do(func() {
			printer, err := page.NewPrinter(templates.FS)
			if err != nil {
				t.Fatal(err)
			}
			for _, kind := range []string{"handout", "hold", "worksheet", "letter", "overview"} {
				for _, dated := range []*page.Diary{nil, {}} {
					out, err := printer.HTML(page.View{Kind: kind, Diary: dated})
					if err != nil {
						t.Fatal(err)
					}
					root, err := html.Parse(bytes.NewReader(out))
					if err != nil {
						t.Fatal(err)
					}
					for n := range root.Descendants() {
						if n.Data == "script" && len(n.Attr) == 0 && n.FirstChild != nil {
							scripts[n.FirstChild.Data] = true
						}
					}
				}
			}
		})
		return scripts
	}
}()

// TestOurScriptIsKnown holds the test above: ours is let through, a stranger's is not.
func TestOurScriptIsKnown(t *testing.T) {
	if len(shippedScripts(t)) == 0 {
		t.Fatal("no page has a script of ours")
	}
	for text, want := range map[string]bool{`<script>alert(1)</script>`: false, `<script src="x.js"></script>`: false, `<script type="module">1</script>`: false,
		`<script type="application/json" id="data">{"a":"b"}</script>`: true, `<script type="application/json" id="data">alert(1)</script>`: false} {
		root, err := html.Parse(strings.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		for n := range root.Descendants() {
			if n.Data == "script" {
				if got := ourScript(t, n); got != want {
					t.Errorf("%s: %v", text, got)
				}
			}
		}
	}
}
