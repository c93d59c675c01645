package generator_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"paceleaf/generator"
	"paceleaf/programs"
	"paceleaf/templates"
)

// TestWordReferenceMayBeTyped: what keys words prints, put into a clinic's own files as it is, is read without a mistake and has
// every sentence that ships; so each printed line may be taken over alone.
func TestWordReferenceMayBeTyped(t *testing.T) {
	page, err := generator.WordReference(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	sections := strings.Split(page, "\n# === ")[1:]
	if len(sections) != 3 {
		t.Fatalf("%d files are printed, want 3: client, library, desk", len(sections))
	}
	clinic := fstest.MapFS{"clinic.toml": {Data: []byte(walkClinic())}}
	for _, s := range sections {
		name, lines, _ := strings.Cut(s, " ===\n")
		shipped, err := templates.FS.ReadFile(strings.TrimPrefix(name, "templates/"))
		if err != nil {
			t.Fatal(err)
		}
		if got, want := strings.Count(lines, "= "), strings.Count(string(shipped), "= "); got != want {
			t.Errorf("%s: %d sentences are printed, %d ship", name, got, want)
		}
		clinic[name] = &fstest.MapFile{Data: []byte(lines)}
	}
	if _, faults := generator.Open(generator.Files{Clinic: clinic, Programs: programs.FS, Templates: templates.FS, Version: "words", Shelf: &shelf}); len(faults) > 0 {
		t.Errorf("typed as printed:\n%v", faults)
	}
	if want := "\nbrief.no-visit = "; !strings.Contains(page, want) {
		t.Errorf("no line begins with %q: the key must be whole", want)
	}
}
