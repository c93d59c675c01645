package words_test

import (
	"flag"
	"fmt"
	"go/ast"
	"go/constant"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/templates"
)

var update = flag.Bool("update", false, "write the fragments of the core into templates/words/en-GB/reasons.toml")

// rooms are those that make fragments for the therapist, each after what it imports.
var rooms = []string{"unit", "basis", "formula", "source", "figure", "client", "finding", "program", "plan"}

const said = "paceleaf/generator/basis.Said"

// fragments are the keys of all fragments that the core can make, read from its code by the compiler's own rules: every constant
// that becomes a basis.Said, every key that is given with values, and every error that a formula returns.
type fragments struct {
	found  map[string]bool
	joined []string // places where fragments are put together
	set    *token.FileSet
	info   *types.Info
	room   string
}

func fragmentsOf(t *testing.T) fragments {
	set := token.NewFileSet()
	known := house{outside: importer.ForCompiler(set, "source", nil), rooms: map[string]*types.Package{}}
	f := fragments{found: map[string]bool{}, set: set}
	for _, room := range rooms {
		var files []*ast.File
		names, _ := filepath.Glob("../" + room + "/*.go")
		for _, name := range names {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			file, err := parser.ParseFile(set, name, nil, parser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, file)
		}
		f.info, f.room = &types.Info{Types: map[ast.Expr]types.TypeAndValue{}}, room
		pkg, err := (&types.Config{Importer: known}).Check("paceleaf/generator/"+room, set, files, f.info)
		if err != nil {
			t.Fatal(err)
		}
		known.rooms[pkg.Path()] = pkg
		f.read()
	}
	return f
}

// house imports our rooms as they were just read, and the rest from its source.
type house struct {
	outside types.Importer
	rooms   map[string]*types.Package
}

func (h house) Import(path string) (*types.Package, error) {
	if p := h.rooms[path]; p != nil {
		return p, nil
	}
	if strings.HasPrefix(path, "paceleaf/") {
		return nil, fmt.Errorf("%s is no room that makes fragments, or stands too late in the list", path)
	}
	return h.outside.Import(path)
}

func (f *fragments) read() {
	for e, tv := range f.info.Types {
		if tv.Value != nil && tv.Value.Kind() == constant.String && types.Unalias(tv.Type).String() == said {
			f.take(constant.StringVal(tv.Value))
		}
		switch e := e.(type) {
		case *ast.CallExpr:
			f.call(e)
		case *ast.BinaryExpr:
			if e.Op == token.ADD && tv.Value == nil && types.Unalias(tv.Type).String() == said {
				f.joined = append(f.joined, f.set.Position(e.Pos()).String())
			}
		}
	}
}

// call takes the key of a fragment with values, and the text of an error of a formula.
func (f *fragments) call(call *ast.CallExpr) {
	signature, is := f.info.Types[call.Fun].Type.(*types.Signature)
	if !is || len(call.Args) == 0 {
		return
	}
	if n := signature.Params().Len(); n > 1 && signature.Variadic() && signature.Params().At(n-2).Name() == "key" && n-2 < len(call.Args) {
		f.constant(call.Args[n-2])
	}
	if s, is := call.Fun.(*ast.SelectorExpr); is && f.room == "formula" && s.Sel.Name == "New" {
		f.constant(call.Args[0])
	}
}

func (f *fragments) constant(e ast.Expr) {
	if tv := f.info.Types[e]; tv.Value != nil {
		f.take(constant.StringVal(tv.Value))
	}
}

func (f *fragments) take(key string) {
	if key != "" {
		f.found[key] = true
	}
}

// closed are the words of closed sets, and what the core calls its own things, that stand in places of fragments.
var closed = slices.Concat(unit.Left.Words(), unit.GradeZero.Words(), unit.Published.Words(), unit.Kind("").Words(), unit.Work("").Words(), unit.OtherLeg("").Words(),
	unit.DeviceKind("").Words(), plan.Pause.Words(), client.PainKind("").Words(), client.Operation.Words(), client.Swelling("").Words(), program.Tell("").Words(), unit.Graft("").Words(), client.Mode("").Words(),
	[]string{"at least", "above", "at most", "below", "closed", "open", "suspended", "effusion", "pain", "extension", "sets", "reps", "reserve",
		"therapist", "operation-note", "letter", "call", "cuff-repetitions", "cuff-rests", "weeks", "months", "other leg", "walking and brace", "activities"})

// TestEveryFragmentHasItsWords: the file of fragments has the English of every fragment that the core can make, and nothing else.
// A language is translated from it, so that none of them can be missed.
func TestEveryFragmentHasItsWords(t *testing.T) {
	made := fragmentsOf(t)
	for _, at := range made.joined {
		t.Errorf("%s: fragments are put together with +; use basis.Say, Listed or Enumerated, which a language can reorder", at)
	}
	for _, word := range closed {
		made.found[word] = true
	}
	keys := slices.Sorted(maps.Keys(made.found))
	if *update {
		write(t, keys)
		return
	}
	var file words.Reasons
	data, err := fs.ReadFile(templates.FS, "words/en-GB/reasons.toml")
	if err != nil {
		t.Fatal(err)
	}
	if faults := source.TOML("reasons.toml", data, &file); len(faults) > 0 {
		t.Fatal(faults)
	}
	has := map[string]bool{}
	for _, r := range file.Texts {
		if has[r.English] = true; !made.found[r.English] {
			t.Errorf("reasons.toml has %q, which the core does not say: go test ./generator/words -update", r.English)
		}
	}
	for _, key := range keys {
		if !has[key] {
			t.Errorf("reasons.toml lacks %q: go test ./generator/words -update", key)
		}
	}
}

const fileHead = `# Reasons, flags, names of rules and other fragments that the core makes for the therapist's pages: en is the English that it is
# found by, say is what the page says, {a} and {b} are its values. Written by: go test ./generator/words -update
`

func write(t *testing.T, keys []string) {
	var b strings.Builder
	b.WriteString(fileHead)
	for _, key := range keys {
		quoted := strconv.Quote(key)
		fmt.Fprintf(&b, "\n[[text]]\nen = %s\nsay = %s\n", quoted, quoted)
	}
	if err := os.WriteFile("../../templates/words/en-GB/reasons.toml", []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
}
