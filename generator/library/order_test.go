package library

import (
	"slices"
	"testing"

	"paceleaf/generator/program"
)

// TestGentleFirst: what a visitor of the library meets first is what a knee comes to first.
func TestGentleFirst(t *testing.T) {
	all := map[string]*program.Exercise{}
	for _, e := range []program.Exercise{
		{ID: "hop", Title: "A hop", Activity: "jumping"},
		{ID: "top", Title: "B top of a chain", Easier: "middle"},
		{ID: "middle", Title: "C middle", Easier: "foot"},
		{ID: "foot", Title: "D foot of a chain"},
		{ID: "alone", Title: "E alone"},
		{ID: "round", Title: "F in a circle", Easier: "about"},
		{ID: "about", Title: "G in a circle", Easier: "round"},
	} {
		all[e.ID] = &e
	}
	r := &reader{Shelf: &Shelf{Catalog: &program.Catalog{Exercises: all}}}
	got := r.gentleFirst([]string{"hop", "top", "round", "middle", "about", "alone", "foot"})
	if want := []string{"foot", "alone", "middle", "top", "round", "about", "hop"}; !slices.Equal(got, want) {
		t.Errorf("in this order: %v, want %v", got, want)
	}
}
