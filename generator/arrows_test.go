package generator_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// The arrows of the house, as DEVELOPERS.md draws them: what each room may import of ours, besides basis and unit, which
// every room may. There are no others. A new arrow is a decision: write it here and there, with its reason.
var arrows = map[string][]string{
	"cmd/paceleaf":         {"generator", "site", "templates", "programs"},
	"generator":            {"site", "generator/library", "generator/page", "generator/plan", "generator/finding", "generator/program", "generator/client", "generator/words", "generator/source"},
	"generator/library":    {"generator/page", "generator/program", "generator/figure", "generator/words"}, // no clients, no plans: no person
	"generator/page":       {"generator/words", "generator/plan", "generator/finding", "generator/program", "generator/figure"},
	"generator/plan":       {"generator/finding", "generator/program", "generator/client", "generator/formula"},
	"generator/finding":    {"generator/client", "generator/formula"},
	"generator/program":    {"generator/source", "generator/figure"},
	"generator/client":     {"generator/source"},
	"generator/words":      {"generator/source"},
	"generator/source":     {},
	"generator/formula":    {},
	"generator/figure":     {},
	"generator/basis":      {},
	"generator/calculator": {}, // works printed sums again: for tests alone, no room imports it
	"generator/unit":       {},
	"site":                 {},
	"programs":             {},
	"templates":            {},
}

// everywhere may be imported by every room; unit itself imports neither, basis only unit.
var everywhere = []string{"generator/basis", "generator/unit"}

// doors are the packages that only some rooms may import. A name ending in / stands for all below it.
var doors = []struct {
	imported string
	rooms    []string
	why      string
}{
	{"github.com/BurntSushi/toml", []string{"generator/source"}, "one door to TOML"},
	{"html/template", []string{"generator/page"}, "only page prints"},
	{"text/template", []string{"generator/page"}, "only page prints"},
	{"github.com/Masterminds/sprig/", []string{"generator/page"}, "only page prints, through an allow-list"},
	{"github.com/yuin/goldmark/", []string{"generator/page"}, "only page prints"},
	{"github.com/tdewolff/minify/", []string{"generator/page"}, "only page prints, and a script once"},
	{"gonum.org/v1/gonum/", []string{"generator/formula"}, "statistics are formulas"},
	{"golang.org/x/text/", []string{"generator/words"}, "plurals are words"},
	{"os", []string{"cmd/paceleaf", "site"}, "only the command and the writer touch the machine"},
	{"os/", []string{"cmd/paceleaf", "site"}, "only the command and the writer touch the machine"},
	{"syscall", []string{"site"}, "only the writer touches the machine"},
}

// pure rooms compute from what they are given: no machine, no files, no network, no template, no clock (clocked are the
// names of package time that read one).
var (
	pure    = []string{"generator/unit", "generator/basis", "generator/formula", "generator/finding", "generator/plan", "generator/figure"}
	impure  = []string{"os", "os/", "io/fs", "net", "net/", "html/template", "text/template", "embed", "syscall", "math/rand", "math/rand/", "crypto/rand", "log", "log/"}
	clocked = []string{"Now", "Since", "Until", "Tick", "NewTicker", "NewTimer", "After", "AfterFunc", "Sleep", "Local", "LoadLocation"}
	shunned = []string{"util", "utils", "common", "helper", "helpers", "types", "misc", "shared"}
	loggers = []string{"log", "log/slog"}
)

func TestArrows(t *testing.T) {
	rooms := readRooms(t, "..")
	for dir := range arrows {
		if rooms[dir] == nil {
			t.Errorf("the table names %s, and there is no such room", dir)
		}
	}
	for _, dir := range inOrder(rooms) {
		for _, says := range rooms[dir].faults(dir) {
			t.Error(says)
		}
	}
}

// TestArrowsSeen holds the test itself: each thing that is forbidden is found in a room made for it.
func TestArrowsSeen(t *testing.T) {
	for _, c := range []struct{ name, dir, text, says string }{
		{"an arrow backwards", "generator/finding", `import _ "paceleaf/generator/plan"`, "may not import generator/plan"},
		{"a room below another", "generator/page/inner", `import _ "fmt"`, "is no room of the house"},
		{"a second door to TOML", "generator/client", `import _ "github.com/BurntSushi/toml"`, "one door to TOML"},
		{"Markdown in plan", "generator/plan", `import _ "github.com/yuin/goldmark/ast"`, "only page prints"},
		{"statistics in finding", "generator/finding", `import _ "gonum.org/v1/gonum/stat"`, "statistics are formulas"},
		{"the machine in page", "generator/page", `import _ "os/exec"`, "touch the machine"},
		{"files in a pure room", "generator/plan", `import _ "io/fs"`, "is pure"},
		{"the clock in a pure room", "generator/plan", `import "time"; var _ = time.Now()`, "reads the clock"},
		{"the clock under another name", "generator/unit", `import watch "time"; var _ = watch.Now`, "reads the clock"},
		{"a dot import", "generator/unit", `import . "time"`, "dot import"},
		{"a room that says nothing", "generator/helpers", `import _ "fmt"`, "says nothing"},
		{"an init", "site", `func init() {}`, "func init"},
		{"a logger", "site", `import "log"`, "logger"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := &room{}
			r.read(t, c.dir+"/x.go", []byte("package x; "+c.text))
			found := strings.Join(r.faults(c.dir), "\n")
			if !strings.Contains(found, c.says) {
				t.Errorf("%s in %s: found %q, want a fault with %q", c.text, c.dir, found, c.says)
			}
		})
	}
}

// room is what the non-test files of one folder say.
type room struct {
	files map[string]*ast.File
}

// readRooms parses every non-test file below root. Build tags are not asked: an arrow holds on every system.
func readRooms(t *testing.T, root string) map[string]*room {
	rooms := map[string]*room{}
	err := filepath.WalkDir(root, func(name string, e fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, _ := filepath.Rel(root, name)
		rel = filepath.ToSlash(rel)
		if e.IsDir() {
			if rel != "." && (strings.HasPrefix(e.Name(), ".") || e.Name() == "testdata" || rel == "tools") {
				return fs.SkipDir
			}
			return nil
		}
		if !strings.HasSuffix(rel, ".go") || strings.HasSuffix(rel, "_test.go") {
			return nil
		}
		dir := path.Dir(rel)
		if rooms[dir] == nil {
			rooms[dir] = &room{}
		}
		rooms[dir].read(t, name, nil)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return rooms
}

// read parses one file; src nil reads it from the disk.
func (r *room) read(t *testing.T, name string, src []byte) {
	var from any
	if src != nil {
		from = src
	}
	file, err := parser.ParseFile(token.NewFileSet(), name, from, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	if r.files == nil {
		r.files = map[string]*ast.File{}
	}
	r.files[name] = file
}

// faults are all that a room does against the house.
func (r *room) faults(dir string) (list []string) {
	say := func(format string, args ...any) { list = append(list, fmt.Sprintf(format, args...)) }
	if slices.Contains(shunned, path.Base(dir)) {
		say("%s: the name says nothing; name the room for what it holds", dir)
	}
	crossed := map[string][]string{} // room that no arrow points at -> files that import it
	allowed, known := arrows[dir]
	if !known {
		say("%s: is no room of the house; add it to the table and to DEVELOPERS.md", dir)
	}
	for _, name := range inOrder(r.files) {
		file := r.files[name]
		at := dir + "/" + path.Base(filepath.ToSlash(name))
		for _, spec := range file.Imports {
			imported, _ := strconv.Unquote(spec.Path.Value)
			if spec.Name != nil && spec.Name.Name == "." {
				say("%s: a dot import hides where a name comes from: %s", at, imported)
			}
			if why := wrongDoor(dir, imported); why != "" {
				say("%s: imports %s: %s", at, imported, why)
			}
			ours, isOurs := strings.CutPrefix(imported, "paceleaf/")
			switch {
			case isOurs && !known:
			case isOurs && !slices.Contains(allowed, ours) && !free(dir, ours):
				crossed[ours] = append(crossed[ours], path.Base(at))
			case slices.Contains(pure, dir) && listed(impure, imported):
				say("%s: imports %s, but %s is pure", at, imported, dir)
			case slices.Contains(loggers, imported):
				say("%s: imports %s: no logger; return an error, or print in cmd", at, imported)
			}
		}
		if slices.Contains(shunned, file.Name.Name) {
			say("%s: package %s says nothing; name it for what it holds", at, file.Name.Name)
		}
		list = append(list, inside(dir, at, file)...)
	}
	for _, ours := range inOrder(crossed) {
		say("%s may not import %s, as %s does; it may import %s", dir, ours, strings.Join(crossed[ours], ", "), strings.Join(allowed, ", "))
	}
	return list
}

// free reports whether a room is one that every room may import.
func free(dir, ours string) bool {
	switch dir {
	case "generator/unit", "programs", "templates":
		return false
	case "generator/basis":
		return ours == "generator/unit"
	}
	return slices.Contains(everywhere, ours)
}

// wrongDoor says why a room may not import a package that has its own door.
func wrongDoor(dir, imported string) string {
	for _, d := range doors {
		if (d.imported == imported || strings.HasSuffix(d.imported, "/") && strings.HasPrefix(imported+"/", d.imported)) && !slices.Contains(d.rooms, dir) {
			return fmt.Sprintf("%s; it may stand in %v", d.why, d.rooms)
		}
	}
	return ""
}

func listed(list []string, imported string) bool {
	return slices.ContainsFunc(list, func(entry string) bool {
		return entry == imported || strings.HasSuffix(entry, "/") && strings.HasPrefix(imported, entry)
	})
}

// inside finds what imports do not show: an init, and a clock read in a pure room.
func inside(dir, at string, file *ast.File) (list []string) {
	for _, d := range file.Decls {
		if f, isFunc := d.(*ast.FuncDecl); isFunc && f.Recv == nil && f.Name.Name == "init" {
			list = append(list, at+": func init: nothing may happen because a package is imported")
		}
	}
	if !slices.Contains(pure, dir) {
		return list
	}
	clock := ""
	for _, spec := range file.Imports {
		if imported, _ := strconv.Unquote(spec.Path.Value); imported == "time" {
			clock = "time"
			if spec.Name != nil {
				clock = spec.Name.Name
			}
		}
	}
	ast.Inspect(file, func(n ast.Node) bool {
		s, isSelector := n.(*ast.SelectorExpr)
		if !isSelector {
			return true
		}
		if of, isName := s.X.(*ast.Ident); isName && clock != "" && of.Name == clock && slices.Contains(clocked, s.Sel.Name) {
			list = append(list, fmt.Sprintf("%s: %s reads the clock with %s.%s; take the day as an input", at, dir, clock, s.Sel.Name))
		}
		return true
	})
	return list
}

func inOrder[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}
