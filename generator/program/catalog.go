package program

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// Owner says whose a file of the library is: Paceleaf's, the clinic's own, or the clinic's in the place of Paceleaf's.
type Owner string

const (
	Shipped Owner = "shipped"
	Own     Owner = "own"
	Instead Owner = "instead"
)

// Owner tells whose a file is, such as exercises/squat.toml. The first layer of the folder is the clinic's, the last one ships.
func (l Library) Owner(name string) Owner {
	_, layer, err := l.Folder.Read(name)
	switch {
	case err != nil || layer > 0:
		return Shipped
	case len(l.Folder.Layers(name)) > 1:
		return Instead
	}
	return Own
}

// Catalog is what a library holds besides programs: every exercise, whether or not a program names it, every note, the
// bibliography.
type Catalog struct {
	Exercises map[string]*Exercise
	Notes     []*Note // by id
	Sources   Bibliography
	Owners    map[string]Owner // whose a file is, such as exercises/squat.toml; who is not named here is Paceleaf
}

// Catalog reads the whole library but its programs, with every mistake of those files at once. An exercise or a note with a
// mistake is in it too; the faults name it by its file.
func (l Library) Catalog() (*Catalog, source.Faults) {
	r := &reader{Library: l, p: &Program{Exercises: map[string]*Exercise{}}}
	r.p.Sources = r.bibliography()
	for _, e := range l.Folder.List("exercises") {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !e.Dir {
			r.exercise(id, basis.Origin{File: "programs/exercises/" + e.Name})
		}
	}
	for _, ex := range r.p.Exercises {
		r.p.Activities = []Activity{{ID: ex.Activity}} // which activities there are is for each program to say
		r.judgeExercise(ex)
	}
	notes := r.notes()
	for _, n := range notes {
		r.citations(n)
	}
	r.translateCatalog(&notes)
	r.faults.Sort()
	return &Catalog{Exercises: r.p.Exercises, Notes: notes, Sources: r.p.Sources, Owners: l.owners()}, r.faults
}

// owners are the files of the clinic among those that have pages.
func (l Library) owners() map[string]Owner {
	owners := map[string]Owner{}
	for _, dir := range []string{".", "exercises", "notes"} {
		for _, e := range l.Folder.List(dir) {
			name := strings.TrimPrefix(dir+"/"+e.Name, "./")
			if whose := l.Owner(name); !e.Dir && whose != Shipped {
				owners[name] = whose
			}
		}
	}
	return owners
}
