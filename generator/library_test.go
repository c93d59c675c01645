package generator_test

import (
	"maps"
	"path"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"golang.org/x/net/html"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

// demoClinic is the demo clinic with files laid over it.
func demoClinic(t *testing.T, over map[string]string) fstest.MapFS {
	t.Helper()
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	clinic := fstest.MapFS{}
	for name, data := range files {
		clinic[name] = &fstest.MapFile{Data: data}
	}
	for name, text := range over {
		clinic[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return clinic
}

// builtLibrary builds the library of a clinic into dir and returns its files by path, with what the build reports.
func builtLibrary(t *testing.T, dir string, clinic fstest.MapFS, workers int) (map[string]string, generator.Report) {
	t.Helper()
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test"})
	if house == nil {
		t.Fatal(faults)
	}
	out, err := site.Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	report, err := house.BuildLibrary(out, workers)
	if err != nil {
		t.Fatal(err)
	}
	if err := out.Close(); err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	walk(t, dir, func(name string, data []byte) { files[strings.TrimPrefix(name, "library/")] = string(data) })
	return files, report
}

// shippedLibrary is the demo clinic's library, built once for all tests that read it.
func shippedLibrary(t *testing.T) map[string]string {
	t.Helper()
	onceLibrary.Do(func() { onceFiles, onceReport = builtLibrary(t, t.TempDir(), demoClinic(t, nil), 0) })
	if len(onceFiles) == 0 || len(onceReport.Faults.Wrong()) > 0 {
		t.Fatal("the library could not be built", onceReport.Faults)
	}
	return onceFiles
}

var (
	onceLibrary sync.Once
	onceFiles   map[string]string
	onceReport  generator.Report
)

// TestLibraryHangsTogether: every link and picture of every page leads to a file of the library, every anchor to a place, every
// page can be come to from the index, and what a telephone keeps is there.
func TestLibraryHangsTogether(t *testing.T) {
	files := shippedLibrary(t)
	pages, ids := map[string]*html.Node{}, map[string]map[string]bool{}
	for name, text := range files {
		if path.Ext(name) == ".html" {
			root, err := html.Parse(strings.NewReader(text))
			if err != nil {
				t.Fatal(err)
			}
			pages[name], ids[name] = root, idsOf(t, name, root)
		}
	}
	leads := map[string][]string{}
	for name, root := range pages {
		for _, to := range refsOf(root) {
			if strings.HasPrefix(to, "https://") {
				continue
			}
			file, anchor, _ := strings.Cut(to, "#")
			target := name
			if file != "" {
				target = path.Join(path.Dir(name), file)
			}
			if _, there := files[target]; !there {
				t.Errorf("%s leads to %s, which is not there", name, to)
			} else if anchor != "" && !ids[target][anchor] {
				t.Errorf("%s leads to %s, where there is no such place", name, to)
			}
			leads[name] = append(leads[name], target)
		}
	}
	reached := map[string]bool{"index.html": true}
	for todo := []string{"index.html"}; len(todo) > 0; todo = todo[1:] {
		for _, to := range leads[todo[0]] {
			if !reached[to] {
				reached[to] = true
				todo = append(todo, to)
			}
		}
	}
	for name := range pages {
		if !reached[name] {
			t.Errorf("no link leads to %s", name)
		}
	}
	for _, m := range regexp.MustCompile(`"([a-z0-9/-]+\.[a-z]+)"`).FindAllStringSubmatch(files["sw.js"]+files["manifest.webmanifest"], -1) {
		if _, there := files[m[1]]; !there && m[1] != "sw.js" {
			t.Errorf("a telephone would keep %s, which is not there", m[1])
		}
	}
	if missing := regexp.MustCompile(`‹[^›]*›`).FindString(strings.Join(slices.Collect(maps.Values(files)), "")); missing != "" {
		t.Errorf("a sentence has no words: %s", missing)
	}
}

func idsOf(t *testing.T, name string, root *html.Node) map[string]bool {
	ids := map[string]bool{}
	for n := range root.Descendants() {
		for _, a := range n.Attr {
			if a.Key == "id" {
				if ids[a.Val] {
					t.Errorf("%s has two places named %s", name, a.Val)
				}
				ids[a.Val] = true
			}
		}
	}
	return ids
}

// refsOf are the links and pictures of a page.
func refsOf(root *html.Node) (refs []string) {
	for n := range root.Descendants() {
		for _, a := range n.Attr {
			if a.Key == "href" || a.Key == "src" {
				refs = append(refs, a.Val)
			}
		}
	}
	return refs
}

// TestLibraryFirstView: the index with its script and style, all that a first view needs but the pictures on the screen, weighs
// at most 150 kB raw.
func TestLibraryFirstView(t *testing.T) {
	files := shippedLibrary(t)
	if n := len(files["index.html"]); n > 150_000 || n < 50_000 {
		t.Errorf("the index has %d bytes, at most 150000", n)
	}
	for name, text := range files {
		if path.Dir(name) == "figures" && len(text) > 16_000 {
			t.Errorf("%s has %d bytes", name, len(text))
		}
	}
}

// TestLibraryIsTheSame: with one worker or many, in the first build or after others, the same bytes; a second build writes
// nothing; what changes in one file changes the pages that show it, and those alone.
func TestLibraryIsTheSame(t *testing.T) {
	dir := t.TempDir()
	first, report := builtLibrary(t, dir, demoClinic(t, nil), 1)
	if report.Library.New != len(first) {
		t.Errorf("%d files, and %d are called new", len(first), report.Library.New)
	}
	if _, again := builtLibrary(t, dir, demoClinic(t, nil), 7); again.Library != (site.Written{}) {
		t.Errorf("nothing changed, and %+v was written", again.Library)
	}
	own := strings.Replace(shippedFile(t, "exercises/squat.toml"), "Squat", "Deep squat", 1)
	clinic := demoClinic(t, map[string]string{"programs/exercises/squat.toml": own})
	changed, report := builtLibrary(t, dir, clinic, 7)
	fresh, _ := builtLibrary(t, t.TempDir(), clinic, 2)
	if !maps.Equal(changed, fresh) {
		t.Error("built over an earlier library and built anew, the files differ")
	}
	var names []string
	for name, text := range changed {
		if first[name] != text {
			names = append(names, name)
		}
	}
	if !slices.Contains(names, "exercises/squat.html") || !slices.Contains(names, "exercises/mini-squat.html") || slices.Contains(names, "exercises/plank.html") {
		t.Errorf("changed: %v", slices.Sorted(slices.Values(names)))
	}
	if report.Library.Changed != len(names) {
		t.Errorf("%d files changed, and %d were written", len(names), report.Library.Changed)
	}
	if back, _ := builtLibrary(t, dir, demoClinic(t, nil), 0); !maps.Equal(back, first) {
		t.Error("back again is not what it was at first")
	}
}

func shippedFile(t *testing.T, name string) string {
	t.Helper()
	data, err := programs.FS.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestLibrarySaysWhose: a page says whether it ships, is the clinic's own, or stands in the place of a shipped one; a half-written
// exercise is told and has no page, and all others are there.
func TestLibrarySaysWhose(t *testing.T) {
	files, report := builtLibrary(t, t.TempDir(), demoClinic(t, map[string]string{
		"programs/exercises/squat.toml":   shippedFile(t, "exercises/squat.toml"),
		"programs/exercises/plank.md":     shippedFile(t, "exercises/plank.md"),
		"programs/exercises/our-own.toml": shippedFile(t, "exercises/plank.toml"),
		"programs/exercises/our-own.md":   shippedFile(t, "exercises/plank.md"),
		"programs/exercises/half.toml":    "title = \"Half\"\n",
	}), 0)
	for name, want := range map[string]string{"mini-squat": "comes with Paceleaf.</p>", "squat": "in the place of the one that comes", "plank": "in the place of the one that comes", "our-own": "Saltmarsh Knee Clinic&#39;s own.</p>"} {
		if page := files["exercises/"+name+".html"]; !strings.Contains(page, want) {
			t.Errorf("the page of %s does not say %q", name, want)
		}
	}
	if _, there := files["exercises/half.html"]; there || !strings.Contains(report.Faults.Wrong().Error(), "programs/exercises/half.toml") {
		t.Errorf("a half-written exercise has a page, or its mistakes are not told:\n%v", report.Faults)
	}
}
