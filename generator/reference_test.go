package generator_test

import (
	"encoding/json"
	"go/ast"
	"io/fs"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/BurntSushi/toml"

	"paceleaf/generator"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	prose "paceleaf/generator/words"
	"paceleaf/templates"
)

// readAs reads a file as a kind of file: the reader itself, without what is judged of several keys together.
var readAs = map[string]func(data []byte) source.Faults{
	"clinic":      reads[client.Clinic],
	"client":      reads[client.Person],
	"test":        reads[client.TestDay],
	"block":       reads[client.Block],
	"hold":        reads[client.Hold],
	"log":         readsJSON[client.Log],
	"program":     reads[program.File],
	"phase":       reads[program.Phase],
	"limits":      reads[program.LimitFile],
	"exercise":    reads[program.Exercise],
	"note":        reads[program.Note],
	"errors":      reads[program.ErrorFile],
	"sources":     reads[program.Bibliography],
	"translation": reads[program.Translation],
	"plain":       reads[prose.PlainWords],
	"glossary":    reads[prose.Glossary],
}

func reads[T any](data []byte) source.Faults {
	var into T
	return source.TOML("x.toml", data, &into)
}

// readsJSON takes TOML too, and puts it into the writing of JSON.
func readsJSON[T any](data []byte) source.Faults {
	var into T
	decoded := map[string]any{}
	if err := toml.Unmarshal(data, &decoded); err != nil {
		return source.Faults{{What: err.Error()}}
	}
	text, err := json.Marshal(jsonTypes(decoded))
	if err != nil {
		return source.Faults{{What: err.Error()}}
	}
	return source.JSONTable("x.json", text, &into)
}

// TestEveryExampleIsRead: each key of the reference says what it is and has an example, and the reader takes it: no fault is
// about that key.
func TestEveryExampleIsRead(t *testing.T) {
	keys := 0
	for _, kind := range generator.FileKinds() {
		for _, table := range kind.Tables {
			for _, key := range table.Keys {
				keys++
				if key.About == "" || key.Write == "" || key.Value == "" {
					t.Errorf("%s %s %v: about %q, write %q, example %q: one of them is empty; give the field the tags doc and show", kind.Name, table.Header, key.Names, key.About, key.Write, key.Value)
					continue
				}
				for _, says := range faultsOf(kind, table, key) {
					t.Errorf("%s %s: the example %s = %s: %s", kind.Name, table.Header, key.Shown, key.Value, says)
				}
			}
		}
	}
	if keys < 250 {
		t.Errorf("only %d keys were found", keys)
	}
}

// TestExampleFaultsAreSeen holds the test above: an example that the reader does not take is found.
func TestExampleFaultsAreSeen(t *testing.T) {
	for _, c := range []struct{ kind, header, key, value string }{
		{"test", "", "mass_kg", `"heavy"`},
		{"test", "", "mass_st", "10"},
		{"test", "[[strength]]", "left.peak_n", "[5000]"},
		{"clinic", "[[place.device]]", "kind", `"sofa"`},
		{"client", "[setup.ID]", "left.arm_cm", "3100"},
		{"log", "[[done]]", "left.reps", `["many"]`},
		{"sources", "[ID]", "year", "20"},
		{"phase", "[[enter]]", "at_least", `"most"`},
	} {
		i := slices.IndexFunc(generator.FileKinds(), func(k generator.FileKind) bool { return k.Name == c.kind })
		kind := generator.FileKinds()[i]
		if says := faultsOf(kind, source.KeyTable{Header: c.header}, source.Key{Shown: c.key, Value: c.value}); len(says) == 0 {
			t.Errorf("%s %s %s = %s: no fault was found", c.kind, c.header, c.key, c.value)
		}
	}
}

var index = regexp.MustCompile(`\[\d+\]`)

// faultsOf are the faults about one key, written alone into its table.
func faultsOf(kind generator.FileKind, table source.KeyTable, key source.Key) (says []string) {
	path := strings.ReplaceAll(strings.Trim(table.Header, "[]"), "ID", "an-id")
	want := strings.TrimPrefix(path+"."+key.Shown, ".")
	for _, f := range readAs[kind.Name]([]byte(alone(kind, table, key.Shown+" = "+key.Value))) {
		if at := index.ReplaceAllString(f.Key, ""); at == want || at == "" || strings.HasPrefix(at, want+".") {
			says = append(says, f.Error())
		}
	}
	return says
}

// alone is a file with one line in one table, below the headers of the tables around it.
func alone(kind generator.FileKind, table source.KeyTable, line string) string {
	var b strings.Builder
	for _, t := range kind.Tables {
		outer := strings.Trim(t.Header, "[]")
		if outer != "" && strings.HasPrefix(strings.Trim(table.Header, "[]"), outer+".") {
			b.WriteString(t.Header + "\n")
		}
	}
	b.WriteString(table.Header + "\n" + line + "\n")
	return strings.ReplaceAll(b.String(), "ID]", "an-id]")
}

// TestReferenceNamesEveryKey: each key that a file may hold stands in the printed reference. The keys are counted from the
// source text, not from what the reference is made of.
func TestReferenceNamesEveryKey(t *testing.T) {
	page, err := generator.Reference("", fstest.MapFS{}) // the tables alone: a remark that names a key does not explain it
	if err != nil {
		t.Fatal(err)
	}
	keys := 0
	for _, dir := range []string{"client", "program", "unit"} {
		for _, file := range parsed(t, dir) {
			ast.Inspect(file, func(n ast.Node) bool {
				f, isField := n.(*ast.Field)
				if !isField || f.Tag == nil {
					return true
				}
				tag, _ := strconv.Unquote(f.Tag.Value)
				key, _, _ := strings.Cut(reflect.StructTag(tag).Get("key"), ",")
				keys++
				if key != "" && !regexp.MustCompile("[`.\\[\"]"+key+"(_[a-z_]+)?[`.\\]\"]").MatchString(page) {
					t.Errorf("paceleaf keys does not name the key %s (%s)", key, dir)
				}
				return true
			})
		}
	}
	if keys < 250 {
		t.Errorf("only %d keys were found", keys)
	}
}

// TestRemarksOfKeys: what stands beside the tables is of a kind of file, and is printed with it.
func TestRemarksOfKeys(t *testing.T) {
	entries, err := fs.ReadDir(templates.FS, "keys")
	if err != nil || len(entries) < 5 {
		t.Fatalf("%d remarks, %v", len(entries), err)
	}
	for _, e := range entries {
		remarks, _ := fs.ReadFile(templates.FS, "keys/"+e.Name())
		page, err := generator.Reference(strings.TrimSuffix(e.Name(), ".md"), templates.FS)
		if err != nil || !strings.Contains(page, string(remarks)) {
			t.Errorf("keys/%s is printed nowhere: %v", e.Name(), err)
		}
	}
}

// TestReferenceOfOneKind: one kind is a part of the whole, and a kind that is none is refused with those that there are.
func TestReferenceOfOneKind(t *testing.T) {
	whole, _ := generator.Reference("", templates.FS)
	for _, k := range generator.FileKinds() {
		part, err := generator.Reference(k.Name, templates.FS)
		if err != nil || !strings.Contains(whole, part) || !strings.HasPrefix(part, "## "+k.Name+": "+k.Path+"\n") {
			t.Errorf("%s: %v, %q…", k.Name, err, part[:min(60, len(part))])
		}
	}
	if _, err := generator.Reference("tests", templates.FS); err == nil || !strings.Contains(err.Error(), "clinic, client, test,") {
		t.Errorf("tests: %v", err)
	}
}
