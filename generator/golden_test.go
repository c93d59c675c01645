package generator_test

import (
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/site"
	"paceleaf/templates"
)

var update = flag.Bool("update", false, "rewrite testdata/golden; read the diff as carefully as code: a client would hold it in hand")

const golden = "../testdata/golden"

// TestGoldenSite builds the demo clinic whole and holds it against the reviewed pages. Style sheet, script and their hashes are
// left out, and so is what stands inside a picture: a change of style is looked at, not read. What a picture says stands
// below it in words.
func TestGoldenSite(t *testing.T) {
	built := builtDemo(t)
	if *update {
		rewrite(t, built)
		return
	}
	seen := map[string]bool{}
	for name, got := range built {
		want, err := os.ReadFile(filepath.Join(golden, name))
		if err != nil {
			t.Errorf("%s is new: review it, then run go test ./generator -run Golden -update", name)
			continue
		}
		seen[name] = true
		if diff := cmp.Diff(strings.Split(string(want), "\n"), strings.Split(got, "\n")); diff != "" {
			t.Errorf("%s differs (-want +got):\n%.4000s", name, diff)
		}
	}
	walk(t, golden, func(name string, _ []byte) {
		if !seen[name] {
			t.Errorf("%s is not built any more", name)
		}
	})
}

// builtDemo is every page of the demo clinic, by name.
func builtDemo(t *testing.T) map[string]string {
	t.Helper()
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	clinic := fstest.MapFS{}
	for name, data := range files {
		clinic[name] = &fstest.MapFile{Data: data}
	}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "golden"})
	if house == nil || len(faults) > 0 {
		t.Fatalf("the demo clinic has faults:\n%v", faults)
	}
	dir := t.TempDir()
	out, err := site.Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	report, err := house.Build(out, 0, nil)
	if err != nil || len(report.Faults) > 0 {
		t.Fatalf("build: %v %v", err, report.Faults)
	}
	if err := out.Close(); err != nil {
		t.Fatal(err)
	}
	built := map[string]string{}
	walk(t, dir, func(name string, data []byte) {
		if !pinned(name) {
			return
		}
		built[name] = pictures.ReplaceAllString(styleless.ReplaceAllString(string(data), ""), "$1></svg>")
	})
	return built
}

// ofLibrary are the pages of the library that are reviewed: one of a kind, for there are hundreds. Laws hold the others
// (library_test.go).
var ofLibrary = []string{"library/exercises/leg-press-single.html", "library/exercises/running-levels.html", "library/programs/acl-reconstruction.html",
	"library/notes/thigh-alone.html", "library/notes/thigh-alone-colleagues.html"}

func pinned(name string) bool {
	return !strings.HasPrefix(name, "library/") || slices.Contains(ofLibrary, name)
}

var styleless = regexp.MustCompile(`(?s)<style>.*?</style>|<script>.*?</script>|<meta http-equiv="Content-Security-Policy"[^>]*>`)

// pictures are kept with their ids, so that a picture that comes or goes is seen.
var pictures = regexp.MustCompile(`(?s)(<svg class="[^"]*" id="[^"]*")[^>]*>.*?</svg>`)

func rewrite(t *testing.T, built map[string]string) {
	t.Helper()
	if err := os.RemoveAll(golden); err != nil {
		t.Fatal(err)
	}
	for name, text := range built {
		to := filepath.Join(golden, name)
		if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(to, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// walk visits the pages below a folder; what the site keeps for itself is no page.
func walk(t *testing.T, dir string, visit func(name string, data []byte)) {
	t.Helper()
	err := fs.WalkDir(os.DirFS(dir), ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || strings.HasPrefix(e.Name(), ".") {
			return err
		}
		data, err := os.ReadFile(filepath.Join(dir, name))
		visit(filepath.ToSlash(name), data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}
