package formula_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"paceleaf/generator/formula"
)

// Every formula stands in the table of doc.go, names a source, says where it was studied and what it refuses, has a
// rule beside it and an Example; and the rule's sum gives, on the Example's inputs, what the formula gives.
func TestTable(t *testing.T) {
	book := open(t)
	for name, doc := range book.functions {
		for _, line := range []string{"Source: ", "Studied: ", "Refuses: "} {
			if !strings.Contains("\n"+doc, "\n"+line) {
				t.Errorf("%s has no line %q in its comment", name, line)
			}
		}
		if !book.rules["By"+name] && !book.rules[strings.TrimSuffix(name, "By")+"RuleBy"] {
			t.Errorf("%s has no rule By%s", name, name)
		}
		if _, ok := shelf[name]; !ok {
			t.Errorf("%s is not on the shelf of shelf_test.go", name)
			continue
		}
		if !slices.Contains(book.table, name) {
			t.Errorf("%s does not stand in the table of doc.go", name)
		}
		if len(book.examples[name]) == 0 {
			t.Errorf("%s has no Example that calls it with bare numbers", name)
		}
		for _, in := range book.examples[name] {
			// an Example may show a refusal, which has no sum; the first may not
			if v, err := call(name, in...); err == nil {
				sumGives(t, name, in, v)
			} else if slices.Equal(in, book.examples[name][0]) {
				t.Errorf("%s: its first Example is refused: %v", name, err)
			}
		}
	}
	for i, name := range book.table {
		if _, ok := book.functions[name]; !ok {
			t.Errorf("the table of doc.go names %s, which is no formula", name)
		}
		if slices.Contains(book.table[:i], name) {
			t.Errorf("the table of doc.go names %s twice", name)
		}
	}
	for name := range shelf {
		if _, ok := book.functions[name]; !ok {
			t.Errorf("the shelf holds %s, which is no formula", name)
		}
	}
	t.Logf("%d formulas, %d rows of the table", len(book.functions), len(book.table))
}

// A rule has a name of its own, a sum that takes every input, and a source.
func TestRules(t *testing.T) {
	names := map[string]string{formula.BySingle.Name.String(): "BySingle", formula.ByWhole.Name.String(): "ByWhole"}
	for name, e := range shelf {
		if e.by.Name == "" || e.by.Source == "" || (e.by.Sum == "") != unsummed[name] {
			t.Errorf("By%s lacks a name, a sum or a source: %+v", name, e.by)
		}
		if other, taken := names[e.by.Name.String()]; taken {
			t.Errorf("By%s and %s have one name, %q", name, other, e.by.Name)
		}
		names[e.by.Name.String()] = "By" + name
	}
}

// The package imports what its page promises and nothing more.
func TestImports(t *testing.T) {
	allowed := []string{"errors", "fmt", "math", "slices", "strconv", "strings", "gonum.org/v1/gonum/stat", "gonum.org/v1/gonum/stat/distuv",
		"paceleaf/generator/basis", "paceleaf/generator/unit"}
	for name, file := range open(t).files {
		for _, imp := range file.Imports {
			if path, _ := strconv.Unquote(imp.Path.Value); !slices.Contains(allowed, path) {
				t.Errorf("%s imports %s", name, path)
			}
		}
	}
}

// book is the package as its reader sees it.
type book struct {
	files     map[string]*ast.File
	functions map[string]string      // exported formulas and their comments; not the ones that return a rule
	rules     map[string]bool        // By…, each beside the formula of its file
	table     []string               // the third column of the table
	examples  map[string][][]float64 // the inputs of every call in an Example of that formula
}

func open(t *testing.T) book {
	t.Helper()
	b := book{map[string]*ast.File{}, map[string]string{}, map[string]bool{}, nil, map[string][][]float64{}}
	entries, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), e.Name(), nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		if strings.HasSuffix(e.Name(), "_test.go") {
			b.readExamples(file)
			continue
		}
		b.files[e.Name()] = file
		b.readFormulas(file)
		if e.Name() == "doc.go" {
			b.table = columnOfFunctions(file.Doc.Text())
		}
	}
	return b
}

func (b book) readFormulas(file *ast.File) {
	for _, d := range file.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			switch {
			case d.Recv != nil || !d.Name.IsExported():
			case returns(d, "Rule"):
				b.rules[d.Name.Name] = true
			case !returns(d, "Doubt", "Answer", "Interval", "Questionnaire", "error") && !answers(d):
				b.functions[d.Name.Name] = d.Doc.Text()
			}
		case *ast.GenDecl:
			for _, s := range d.Specs {
				if v, ok := s.(*ast.ValueSpec); ok && d.Tok == token.VAR {
					b.rules[v.Names[0].Name] = true
				}
			}
		}
	}
}

// returns reports whether the first result of a function is of one of the named types.
func returns(d *ast.FuncDecl, types ...string) bool {
	if d.Type.Results == nil {
		return false
	}
	t := d.Type.Results.List[0].Type
	if of, ok := t.(*ast.IndexExpr); ok {
		t = of.X
	}
	switch t := t.(type) {
	case *ast.SelectorExpr:
		return slices.Contains(types, t.Sel.Name)
	case *ast.Ident:
		return slices.Contains(types, t.Name)
	}
	return false
}

// answers reports whether a function is a plain yes or no.
func answers(d *ast.FuncDecl) bool { return returns(d, "bool") && len(d.Type.Results.List) == 1 }

var gap = regexp.MustCompile(`\s{2,}`)

// columnOfFunctions is the third column of the indented table, without its head.
func columnOfFunctions(page string) (names []string) {
	for _, line := range strings.Split(page, "\n") {
		cells := gap.Split(strings.TrimSpace(line), -1)
		if strings.HasPrefix(line, "\t") && len(cells) == 4 && cells[2] != "Function" {
			names = append(names, cells[2])
		}
	}
	return names
}

// readExamples collects, of each Example, the bare numbers that it calls its own formula with.
func (b book) readExamples(file *ast.File) {
	for _, d := range file.Decls {
		f, ok := d.(*ast.FuncDecl)
		if !ok || !strings.HasPrefix(f.Name.Name, "Example") {
			continue
		}
		name, _, _ := strings.Cut(strings.TrimPrefix(f.Name.Name, "Example"), "_")
		ast.Inspect(f, func(n ast.Node) bool {
			c, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			if s, ok := c.Fun.(*ast.SelectorExpr); ok && s.Sel.Name == name {
				if in, ok := numbers(c.Args); ok {
					b.examples[name] = append(b.examples[name], in)
				}
			}
			return true
		})
	}
}

// numbers reads literals, conversions of literals, and lists of them.
func numbers(args []ast.Expr) (in []float64, ok bool) {
	for _, a := range args {
		switch a := a.(type) {
		case *ast.BasicLit:
			v, err := strconv.ParseFloat(a.Value, 64)
			if err != nil {
				return nil, false
			}
			in = append(in, v)
		case *ast.CallExpr:
			more, ok := numbers(a.Args)
			if !ok {
				return nil, false
			}
			in = append(in, more...)
		case *ast.SelectorExpr:
			v, ok := words[a.Sel.Name]
			if !ok {
				return nil, false
			}
			in = append(in, v)
		case *ast.CompositeLit:
			if len(a.Elts) == 0 {
				in = append(in, math.NaN()) // an item that was not answered
				continue
			}
			more, ok := numbers(a.Elts)
			if !ok {
				return nil, false
			}
			in = append(in, more...)
		case *ast.UnaryExpr:
			more, ok := numbers([]ast.Expr{a.X})
			if !ok || a.Op != token.SUB {
				return nil, false
			}
			in = append(in, -more[0])
		default:
			return nil, false
		}
	}
	return in, true
}
