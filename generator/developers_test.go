package generator_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// What README.md and DEVELOPERS.md say is held to the code: names exist, verbs and keys are all there, and the walk for
// beginners builds.

var (
	fenced   = regexp.MustCompile("(?ms)^```.*?^```$")
	codeSpan = regexp.MustCompile("`([^`\n]+)`")
	pathLike = regexp.MustCompile(`^[A-Za-z0-9_.*/-]+$`)
	nameLike = regexp.MustCompile(`^[a-z]+(\.[A-Za-z]\w*){1,2}$`)
	module   = regexp.MustCompile(`^[a-z]+\.[a-z]+/`)
	fileEnds = []string{".go", ".toml", ".md", ".csv", ".tmpl", ".css", ".mod", ".txtar"}
)

func TestDevelopersNamesWhatExists(t *testing.T) {
	text := fenced.ReplaceAllString(document(t, "DEVELOPERS.md"), "")
	files, names := filesBelow(t, ".."), declared(t, "..")
	mods := document(t, "go.mod") + document(t, "tools/go.mod")
	seen := map[string]int{}
	for _, m := range codeSpan.FindAllStringSubmatch(text, -1) {
		span := m[1]
		switch {
		case module.MatchString(span):
			seen["module"]++
			if !strings.Contains(mods, span+" v") {
				t.Errorf("module %s stands in no go.mod", span)
			}
		case pathLike.MatchString(span) && (strings.Contains(span, "/") || slices.Contains(fileEnds, path.Ext(span))):
			seen["file"]++
			if !there(files, span) {
				t.Errorf("there is no file or folder %s", span)
			}
		case nameLike.MatchString(span) && names[strings.SplitN(span, ".", 2)[0]] != nil:
			seen["name"]++
			of, name, _ := strings.Cut(span, ".")
			if !names[of][name] {
				t.Errorf("package %s declares no %s", of, name)
			}
		}
	}
	for kind, least := range map[string]int{"module": 5, "file": 20, "name": 40} {
		if seen[kind] < least {
			t.Errorf("only %d spans were taken for a %s: the page or this test has lost its form", seen[kind], kind)
		}
	}
}

// TestReadmeNamesEveryVerb: what README.md tells to type is a verb with that flag, and no verb is left out.
func TestReadmeNamesEveryVerb(t *testing.T) {
	readme := document(t, "README.md")
	verbs, flags := map[string]bool{"help": true, "completion": true}, map[string]bool{"help": true, "race": true}
	var own []string
	for _, m := range regexp.MustCompile(`Use:\s+"(\w+)|VarP?\(&[\w.]+, "(\w+)"`).FindAllStringSubmatch(command(t), -1) {
		if m[2] != "" {
			flags[m[2]] = true
		} else if m[1] != "paceleaf" {
			verbs[m[1]], own = true, append(own, m[1])
		}
	}
	if len(own) < 6 || len(flags) < 5 {
		t.Fatalf("the command was not read: verbs %v, flags %v", own, flags)
	}
	for _, m := range regexp.MustCompile("(?m)(?:^    |`|cmd/)paceleaf ([a-z]+)").FindAllStringSubmatch(readme, -1) {
		if !verbs[m[1]] {
			t.Errorf("README.md tells to type paceleaf %s, and there is no such verb", m[1])
		}
	}
	for _, m := range regexp.MustCompile(`--([a-z]+)`).FindAllStringSubmatch(readme, -1) {
		if !flags[m[1]] {
			t.Errorf("README.md names --%s, and there is no such flag", m[1])
		}
	}
	for _, verb := range own {
		if !regexp.MustCompile("`paceleaf (start )?" + verb + "[ `]").MatchString(readme) {
			t.Errorf("README.md does not say what paceleaf %s does", verb)
		}
	}
}

// TestReadmeNamesEveryKey: each key of the files that a clinic writes about itself and its clients stands in README.md, with or
// without its unit, for README.md must be enough to begin with. The keys of programs stand in the printed reference
// (TestReferenceNamesEveryKey), and README.md says how each kind of file is printed.
func TestReadmeNamesEveryKey(t *testing.T) {
	readme := document(t, "README.md")
	keys := 0
	for _, file := range parsed(t, "client") {
		ast.Inspect(file, func(n ast.Node) bool {
			f, isField := n.(*ast.Field)
			if !isField || f.Tag == nil {
				return true
			}
			tag, _ := strconv.Unquote(f.Tag.Value)
			key, _, _ := strings.Cut(reflect.StructTag(tag).Get("key"), ",")
			keys++
			if key != "" && !regexp.MustCompile(`\b`+key+`(_[a-z_]+)?\b`).MatchString(readme) {
				t.Errorf("README.md does not name the key %s", key)
			}
			return true
		})
	}
	if keys < 100 {
		t.Errorf("only %d keys were found", keys)
	}
	_, section, _ := strings.Cut(readme, "\n### Every key\n")
	section, _, _ = strings.Cut(section, "\n### ")
	for _, k := range generator.FileKinds() {
		if !regexp.MustCompile(`\b` + k.Name + `\b`).MatchString(section) {
			t.Errorf("README.md does not say that the keys of %s can be printed", k.Name)
		}
	}
}

// TestReadmeWalk types the files of "Your first clinic in ten minutes" as README.md gives them, and plans the client.
func TestReadmeWalk(t *testing.T) {
	_, walk, found := strings.Cut(document(t, "README.md"), "\n## Your first clinic")
	walk, _, ends := strings.Cut(walk, "\n## ")
	if !found || !ends {
		t.Fatal("README.md has no walk for beginners")
	}
	clinic := fstest.MapFS{}
	for _, m := range regexp.MustCompile("(?ms)^`([a-z0-9./-]+)`:\n\n```[a-z]+\n(.*?)^```$").FindAllStringSubmatch(walk, -1) {
		clinic[m[1]] = &fstest.MapFile{Data: []byte(m[2])}
	}
	if len(clinic) != 5 {
		t.Fatalf("the walk gives %d files, want 5", len(clinic))
	}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "readme", Shelf: &shelf})
	if house == nil {
		t.Fatalf("%v", faults)
	}
	if faults = house.Check(unit.Day{Year: 2026, Month: 3, Date: 23}); len(faults) > 0 {
		t.Fatalf("check finds:\n%v", faults)
	}
	plan := house.Plan("wren-01").Plan
	if plan.Stage.Ahead || !plan.Stage.Recorded {
		t.Errorf("the stage of the walk is not earned: short of %v", plan.Stage.Short)
	}
	for _, p := range plan.Prescriptions {
		if p.Exercise.ID == "leg-press-single" && p.Side == unit.Right {
			if kg, ok := p.Weeks[0].Plates.Value(); !ok || kg != 20 {
				t.Errorf("README.md says 20 kg on the right leg's press, the plan %v (%v)", kg, p.Weeks[0].Plates.Why())
			}
			return
		}
	}
	t.Error("README.md quotes the right leg's press, and the plan has none")
}

// document is a file of the project, as text.
func document(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// command is the source of the command, without its tests.
func command(t *testing.T) (text string) {
	t.Helper()
	names, err := filepath.Glob("../cmd/paceleaf/*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if !strings.HasSuffix(name, "_test.go") {
			text += document(t, strings.TrimPrefix(filepath.ToSlash(name), "../"))
		}
	}
	return text
}

// filesBelow are the names of all files and folders of the project.
func filesBelow(t *testing.T, root string) (names []string) {
	t.Helper()
	err := filepath.WalkDir(root, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.Name() == ".git" {
			return fs.SkipDir
		}
		rel, err := filepath.Rel(root, name)
		names = append(names, filepath.ToSlash(rel))
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return names
}

// there reports whether a name stands for a file: with its folder, by a pattern, or bare wherever it stands.
func there(files []string, name string) bool {
	name = strings.TrimSuffix(name, "/")
	return slices.ContainsFunc(files, func(file string) bool {
		match, err := path.Match(name, file)
		bare := !strings.Contains(name, "/")
		return err == nil && match || bare && path.Base(file) == name
	})
}

// declared are the names that each package declares, tests too: Func, Type, Type.Method, Var.
func declared(t *testing.T, root string) map[string]map[string]bool {
	t.Helper()
	all := map[string]map[string]bool{}
	for _, name := range filesBelow(t, root) {
		if !strings.HasSuffix(name, ".go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(root, name), nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		of := strings.TrimSuffix(file.Name.Name, "_test")
		if all[of] == nil {
			all[of] = map[string]bool{}
		}
		for _, d := range file.Decls {
			for _, n := range namesOf(d) {
				all[of][n] = true
			}
		}
	}
	return all
}

func namesOf(d ast.Decl) (names []string) {
	switch d := d.(type) {
	case *ast.FuncDecl:
		if d.Recv == nil {
			return []string{d.Name.Name}
		}
		return []string{receiver(d.Recv.List[0].Type) + "." + d.Name.Name}
	case *ast.GenDecl:
		for _, s := range d.Specs {
			switch s := s.(type) {
			case *ast.TypeSpec:
				names = append(names, s.Name.Name)
			case *ast.ValueSpec:
				for _, n := range s.Names {
					names = append(names, n.Name)
				}
			}
		}
	}
	return names
}

// receiver is the type of a method, without star and parameters.
func receiver(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.StarExpr:
		return receiver(e.X)
	case *ast.IndexExpr:
		return receiver(e.X)
	case *ast.IndexListExpr:
		return receiver(e.X)
	case *ast.Ident:
		return e.Name
	}
	return ""
}

// parsed are the files of a room, without its tests.
func parsed(t *testing.T, dir string) (files []*ast.File) {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, file)
	}
	return files
}
