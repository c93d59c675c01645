package browser_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

// asOf is the day of the demo clinic's blocks: its overview is made for it, and the clock of its handouts stands on it.
const asOf = "2026-04-06"

// built is the demo clinic with a pause called for one client, built once for all tests: out of it come all kinds of pages.
var built = sync.OnceValues(func() (string, error) {
	dir, err := os.MkdirTemp("", "paceleaf-browser-")
	if err != nil {
		return "", err
	}
	return dir, build(dir, demo())
})

// demo is the folder of the demo clinic, in memory, with two clients more, so that these pages are among the pages: teal-01 is
// tern-04 with a pause called, smew-01 is dunlin-02 in large print.
func demo() fstest.MapFS {
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		panic(err)
	}
	clinic := fstest.MapFS{"clients/teal-01/holds/2026-04-08.toml": {Data: []byte("by = \"imbali\"\nreason = \"swelling\"\n")}}
	for name, data := range files {
		clinic[name] = &fstest.MapFile{Data: data}
		if same, of := strings.CutPrefix(name, "clients/tern-04/"); of {
			clinic["clients/teal-01/"+same] = clinic[name]
		}
		if same, of := strings.CutPrefix(name, "clients/dunlin-02/"); of {
			clinic["clients/smew-01/"+same] = clinic[name]
			if same == "client.toml" {
				clinic["clients/smew-01/"+same] = &fstest.MapFile{Data: append([]byte("print = \"large\"\n"), data...)}
			}
		}
	}
	return clinic
}

func build(dir string, clinic fs.FS) error {
	today, err := unit.ParseDay(asOf)
	if err != nil {
		return err
	}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test", Today: today})
	if house == nil {
		return faults[0]
	}
	out, err := site.Open(dir)
	if err != nil {
		return err
	}
	report, err := house.Build(out, 0, nil)
	if err != nil {
		return err
	}
	if wrong := report.Faults.Wrong(); len(wrong) > 0 {
		return wrong[0]
	}
	if err := out.Close(); err != nil {
		return err
	}
	floor, err := house.Floor(today, "")
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(dir, floor.File.Path), floor.File.Data, 0o600)
}

// long reports whether all is looked at from all sides, which takes many minutes; else every page is looked at, and of what
// takes long the looks are spread over the pages of a kind.
var long = os.Getenv("PACELEAF_LONG") == "1"

// kinds are the kinds of pages, each with how its file is recognised and how many of it are looked at where that takes long: of
// a handout every client's, of what is like its neighbour some.
var kinds = []kind{
	{"handout", 99, under("hand/", "/handout.html")},
	{"hold", 1, under("hand/", "/hold.html")},
	{"worksheet", 1, under("desk/", "/worksheet.html")},
	{"letter", 8, under("desk/", "/letter.html")},
	{"retest", 1, under("desk/", "/retest.html")},
	{"floor", 1, under("desk/floor", ".html")},
	{"overview", 1, under("desk/overview", ".html")},
	{"library index", 1, under("library/index", ".html")},
	{"exercise", 3, under("library/exercises/", ".html")},
	{"program", 2, under("library/programs/", ".html")},
	{"note", 2, under("library/notes/", ".html")},
	{"library list", 3, under("library/", ".html")},
}

type kind struct {
	name string
	most int
	is   func(path string) bool
}

func under(start, end string) func(string) bool {
	return func(path string) bool { return strings.HasPrefix(path, start) && strings.HasSuffix(path, end) }
}

// file is a built page.
type file struct {
	kind, path string // path below the output folder
	url        string
}

// pages are some pages of every kind, or every page where all is looked at.
func pages(t *testing.T) (list []file) {
	t.Helper()
	seen := map[string]int{}
	for _, f := range every(t) {
		i := slices.IndexFunc(kinds, func(k kind) bool { return k.name == f.kind })
		if seen[f.kind]++; long || seen[f.kind] <= kinds[i].most {
			list = append(list, f)
		}
	}
	return list
}

// every page that was built. One of no kind is a mistake of the list of kinds.
func every(t *testing.T) (list []file) {
	t.Helper()
	dir, err := built()
	if err != nil {
		t.Fatal(err)
	}
	err = filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || filepath.Ext(name) != ".html" {
			return err
		}
		rel, _ := filepath.Rel(dir, name)
		rel = filepath.ToSlash(rel)
		i := slices.IndexFunc(kinds, func(k kind) bool { return k.is(rel) })
		if i < 0 {
			t.Errorf("%s is a page of no known kind: add the kind to kinds", rel)
			return nil
		}
		list = append(list, file{kinds[i].name, rel, "file://" + filepath.ToSlash(name)})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, k := range kinds {
		if !slices.ContainsFunc(list, func(f file) bool { return f.kind == k.name }) {
			t.Fatalf("no %s was built", k.name)
		}
	}
	return list
}
