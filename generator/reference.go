package generator

import (
	"fmt"
	"io/fs"
	"path"
	"strings"

	"paceleaf/generator/client"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/words"
)

// FileKind is a kind of file that a clinic may hold, and what its struct says of its keys.
type FileKind struct {
	Name   string // as it is asked for: test
	Path   string // in a clinic's folder: clients/CODE/tests/DAY.toml
	About  string
	Tables []source.KeyTable
	Schema []byte // JSON Schema
}

// FileKinds are all kinds of file that are read by keys, in the order in which a clinic meets them.
func FileKinds() []FileKind {
	return []FileKind{
		kindOf[client.Clinic]("clinic", "clinic.toml", "What all clients of the clinic share."),
		kindOf[client.Person]("client", "clients/CODE/client.toml", "A client: what changes rarely."),
		kindOf[client.TestDay]("test", "clients/CODE/tests/DAY.toml", "What was measured on one day. All keys may be left out."),
		kindOf[client.Block]("block", "clients/CODE/blocks/NUMBER.toml", "What you ask for in one block of weeks."),
		kindOf[client.Hold]("hold", "clients/CODE/holds/DAY.toml", "A pause between visits, named by its first day."),
		kindOf[client.Log]("log", "clients/CODE/logs/DAY.json", "What the client did and felt. JSON, for a machine writes it."),
		kindOf[program.File]("program", "programs/ID.toml", "A program: its phases, activities and goals."),
		kindOf[program.Phase]("phase", "programs/phases/ID.toml", "A phase of a program: what earns it, and what is done in it."),
		kindOf[program.LimitFile]("limits", "programs/limits/ID.toml", "Limits by week."),
		kindOf[program.Exercise]("exercise", "programs/exercises/ID.toml", "An exercise; its words stand in ID.md beside it."),
		kindOf[program.Note]("note", "programs/notes/ID.toml", "A note of reasons; its two texts stand in ID.md beside it."),
		kindOf[program.ErrorFile]("errors", "programs/errors.toml", "What is known of the error of each measure."),
		kindOf[program.Translation]("translation", "programs/words/LANGUAGE/PATH.toml", "The texts of programs/PATH.toml, and of the Markdown file beside it, in another language."),
		kindOf[words.PlainWords]("plain", "templates/words/LANGUAGE/plain.toml", "Words that a client may not know, and what to say instead."),
		kindOf[words.Glossary]("glossary", "templates/words/LANGUAGE/glossary.toml", "Words that a client meets, each explained: a page of the library."),
		kindOf[program.Bibliography]("sources", "programs/sources.toml", "The works that programs and limits name."),
	}
}

func kindOf[T any](name, file, about string) FileKind {
	return FileKind{Name: name, Path: file, About: about, Tables: source.KeyTables[T](), Schema: source.Schema[T](file, about)}
}

// SchemaMark stands in every schema: a file with it is Paceleaf's own and may be written again.
const SchemaMark = source.SchemaMark

// SchemaFolder is where a clinic's schemas lie: hidden, for they are for editors, and no person writes there.
const SchemaFolder = ".paceleaf/schemas"

// Schemas are the JSON Schemas of all kinds of file, in a folder, by name of file.
func Schemas(folder string) map[string][]byte {
	files := map[string][]byte{}
	for _, k := range FileKinds() {
		files[path.Join(folder, k.Name+".json")] = k.Schema
	}
	return files
}

// Reference is the page of keys, as Markdown: of all kinds of file where name is empty, else of that one. What no table of keys can
// say of a kind stands in keys/NAME.md of the shipped templates, and is printed below its tables.
func Reference(name string, templates fs.FS) (string, error) {
	var b strings.Builder
	var names []string
	if name == "" {
		b.WriteString(referenceHead)
	}
	for _, k := range FileKinds() {
		names = append(names, k.Name)
		if name == "" || name == k.Name {
			k.print(&b)
			if remarks, err := fs.ReadFile(templates, "keys/"+k.Name+".md"); err == nil {
				fmt.Fprintf(&b, "### What the keys do together\n\n%s\n", remarks)
			}
		}
	}
	if b.Len() == 0 {
		return "", fmt.Errorf("there is no kind of file %q; write one of %s", name, strings.Join(names, ", "))
	}
	return b.String(), nil
}

const referenceHead = `# Every key of every file

Numbers are bare and the key names the unit; of several spellings of one key a file holds one. A day is written as 2026-04-06, without
quotes. A key with a dot may stand in a table of its own too: left.arm_cm = 31 is arm_cm = 31 below [… .left]. "must" is a key that has to
be there; with a dot, only where its table is there. The examples are invented.

`

// TemplateReference is the page of what page templates may use.
func TemplateReference() string { return page.TemplateReference() }
