package page

import (
	"strings"
	"testing"
)

// TestTemplateReference: each field and function that a template is given is described, and nothing else is.
func TestTemplateReference(t *testing.T) {
	known := map[string]bool{}
	for _, s := range shown {
		for i := range s.of.NumField() {
			key := s.name + "." + s.of.Field(i).Name
			known[key] = true
			if fieldSays[key] == "" {
				t.Errorf("%s is given to templates and not described", key)
			}
		}
	}
	for key := range fieldSays {
		if !known[key] {
			t.Errorf("%s is described, and no template is given it", key)
		}
	}
	given := map[string]bool{"inline": true, "line": true, "number": true}
	for name := range sprigs() {
		given[name] = true
	}
	for name := range given {
		if functionSays[name] == "" {
			t.Errorf("function %s is given to templates and not described", name)
		}
	}
	for name := range functionSays {
		if !given[name] {
			t.Errorf("function %s is described, and templates do not have it", name)
		}
	}
	page := TemplateReference()
	for _, name := range functions() {
		if !strings.Contains(page, "| `"+name+"` |") {
			t.Errorf("the page does not list %s", name)
		}
	}
}
