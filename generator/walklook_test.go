package generator_test

import (
	"os"
	"path/filepath"
	"testing"

	"paceleaf/generator/page"
	"paceleaf/templates"
)

// TestWalkLook writes the page of every stage of every program that ships into the folder that LOOK names.
func TestWalkLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK names no folder")
	}
	printer, err := page.NewPrinter(templates.FS)
	if err != nil {
		t.Fatal(err)
	}
	for _, id := range shippedPrograms(t) {
		p := shippedProgram(t, id)
		for i, ph := range p.Phases {
			w := at(p, i)
			w.weeks = 4
			house, made := w.plan(t)
			md, err := printer.Markdown(page.Handout(made, house.Words()))
			if err == nil {
				err = os.WriteFile(filepath.Join(dir, id+"-"+ph.ID+".md"), md, 0o644)
			}
			if err != nil {
				t.Error(err)
			}
		}
	}
}
