package generator_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/BurntSushi/toml"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"paceleaf/generator"
	"paceleaf/generator/unit"
	"paceleaf/programs"
	"paceleaf/templates"
)

// The schemas are held by a validator that knows nothing of us.

// compiled are the schemas of all kinds of file. Compiling holds each against the meta-schema of its edition.
func compiled(t testing.TB) map[string]*jsonschema.Schema {
	t.Helper()
	all := map[string]*jsonschema.Schema{}
	for _, k := range generator.FileKinds() {
		s, err := compile(k.Schema)
		if err != nil {
			t.Fatalf("%s: %v", k.Name, err)
		}
		all[k.Name] = s
	}
	return all
}

func compile(text []byte) (*jsonschema.Schema, error) {
	c := jsonschema.NewCompiler()
	c.AssertFormat()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		return nil, err
	}
	if err := c.AddResource("mem:schema.json", doc); err != nil {
		return nil, err
	}
	return c.Compile("mem:schema.json")
}

// TestSchemasAreOfTheirEdition: each schema is accepted by the meta-schema of draft 2020-12, asked for by its own name.
func TestSchemasAreOfTheirEdition(t *testing.T) {
	meta, err := jsonschema.NewCompiler().Compile("https://json-schema.org/draft/2020-12/schema")
	if err != nil {
		t.Fatal(err)
	}
	for _, k := range generator.FileKinds() {
		doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(k.Schema))
		if err != nil {
			t.Fatalf("%s: %v", k.Name, err)
		}
		if says := doc.(map[string]any)["$schema"]; says != "https://json-schema.org/draft/2020-12/schema" {
			t.Errorf("%s says that it is of %v", k.Name, says)
		}
		if err := meta.Validate(doc); err != nil {
			t.Errorf("%s: %v", k.Name, err)
		}
		if !bytes.Contains(k.Schema, []byte(generator.SchemaMark)) {
			t.Errorf("%s has no mark: paceleaf keys could not write it again", k.Name)
		}
	}
	if _, err := compile([]byte(`{"type": "texts"}`)); err == nil {
		t.Error("a schema with an unknown type was compiled: the validator does not hold it against the meta-schema")
	}
}

// jsonTypes turns what TOML decodes to into what JSON has, as an editor does: a day becomes a text.
func jsonTypes(v any) any {
	switch v := v.(type) {
	case time.Time:
		return v.Format("2006-01-02")
	case map[string]any:
		for k := range v {
			v[k] = jsonTypes(v[k])
		}
	case []any:
		for i := range v {
			v[i] = jsonTypes(v[i])
		}
	case []map[string]any:
		for i := range v {
			jsonTypes(v[i])
		}
	}
	return v
}

// asDocument is a TOML file as a validator takes it.
func asDocument(t testing.TB, data []byte) any {
	t.Helper()
	decoded := map[string]any{}
	if err := toml.Unmarshal(data, &decoded); err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(jsonTypes(decoded))
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// kindOfFile finds the kind of a file by its path in a clinic; "" where it is of none.
func kindOfFile(name string) string {
	var found string
	for _, k := range generator.FileKinds() {
		pattern := regexp.MustCompile(`CODE|DAY|NUMBER|ID|LANGUAGE`).ReplaceAllString(regexp.QuoteMeta(k.Path), `[^/]+`)
		switch {
		case k.Path == name:
			return k.Name
		case regexp.MustCompile("^" + pattern + "$").MatchString(name):
			found = k.Name
		}
	}
	return found
}

// everyFile are all files of the demo clinic and all programs that ship, by their path in a clinic.
func everyFile(t testing.TB) map[string][]byte {
	t.Helper()
	files, err := generator.Demo(templates.FS, unit.Day{})
	if err != nil {
		t.Fatal(err)
	}
	err = fs.WalkDir(programs.FS, ".", func(name string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() {
			files[path.Join("programs", name)], err = fs.ReadFile(programs.FS, name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"words/en-GB/plain.toml", "words/en-GB/glossary.toml"} {
		if files["templates/"+name], err = fs.ReadFile(templates.FS, name); err != nil {
			t.Fatal(err)
		}
	}
	return files
}

// TestSchemasTakeEveryFile: what ships is accepted, each kind by its own schema and by no other kind's by accident of an
// empty schema: a file of another kind is refused.
func TestSchemasTakeEveryFile(t *testing.T) {
	schemas, seen := compiled(t), map[string]int{}
	for name, data := range everyFile(t) {
		kind := kindOfFile(name)
		if kind == "" {
			continue
		}
		seen[kind]++
		doc := any(nil)
		if path.Ext(name) == ".json" {
			doc, _ = jsonschema.UnmarshalJSON(bytes.NewReader(data))
		} else {
			doc = asDocument(t, data)
		}
		if err := schemas[kind].Validate(doc); err != nil {
			t.Errorf("%s is refused by %s.json: %v", name, kind, err)
		}
		for other, schema := range schemas {
			if other != kind && schema.Validate(doc) == nil {
				t.Errorf("%s is taken by %s.json", name, other)
			}
		}
	}
	for _, k := range []string{"clinic", "client", "test", "block", "program", "phase", "limits", "exercise", "errors", "sources", "plain", "glossary"} {
		if seen[k] == 0 {
			t.Errorf("no file of kind %s was looked at", k)
		}
	}
}

// TestSchemasTakeScaffolds: of the files that start begins, a schema refuses nothing but what is still to be filled in.
func TestSchemasTakeScaffolds(t *testing.T) {
	schemas := compiled(t)
	for name, data := range scaffolds(t) {
		kind := kindOfFile(name)
		line, _, _ := strings.Cut(string(data), "\n")
		up := strings.Repeat("../", strings.Count(name, "/"))
		if up == "" {
			up = "./"
		}
		if want := "#:schema " + up + generator.SchemaFolder + "/" + kind + ".json"; line != want {
			t.Errorf("%s begins with %q, want %q", name, line, want)
		}
		doc := asDocument(t, data)
		for _, at := range refusedAt(schemas[kind].Validate(doc)) {
			if value := valueAt(doc, at); value != "?" {
				t.Errorf("%s: %s = %v is refused by %s.json", name, strings.Join(at, "."), value, kind)
			}
		}
		gaps := strings.Count(string(data), `= "?"`)
		if refused := len(refusedAt(schemas[kind].Validate(doc))); gaps > 0 && refused == 0 {
			t.Errorf("%s has %d gaps, and %s.json sees none", name, gaps, kind)
		}
	}
}

// scaffolds are the files that the verbs begin.
func scaffolds(t *testing.T) map[string][]byte {
	t.Helper()
	clinic, err := fs.Sub(templates.FS, "demo/saltmarsh")
	if err != nil {
		t.Fatal(err)
	}
	house, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "test", Shelf: &shelf})
	if house == nil {
		t.Fatal(faults)
	}
	done := house.Plan("tern-04")
	on := unit.Day{Year: 2026, Month: 5, Date: 4}
	all := map[string][]byte{}
	take := func(s generator.Started, err error) {
		if err != nil {
			t.Fatal(err)
		}
		all[s.Name] = s.Data
	}
	take(generator.StartClinic(templates.FS))
	take(house.StartClient("wren-01", ""))
	take(house.StartTest(done, on))
	take(house.StartBlock(done.Client, on))
	take(house.StartHold(done.Client, unit.Day{Year: 2026, Month: 4, Date: 15}, "", "swelling"))
	return all
}

// refusedAt are the places that a validator refuses, the innermost of each complaint.
func refusedAt(err error) (places [][]string) {
	var v *jsonschema.ValidationError
	if !errors.As(err, &v) {
		return nil
	}
	if len(v.Causes) == 0 {
		return [][]string{v.InstanceLocation}
	}
	for _, cause := range v.Causes {
		places = append(places, refusedAt(cause)...)
	}
	return places
}

func valueAt(doc any, at []string) any {
	for _, step := range at {
		switch inner := doc.(type) {
		case map[string]any:
			doc = inner[step]
		case []any:
			var i int
			fmt.Sscan(step, &i)
			doc = inner[i]
		}
	}
	return doc
}
