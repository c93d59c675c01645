package program

import (
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// Loose judges every phase and every limit file of the library by itself, whether or not a program names it: a half-written one is
// told before anybody uses it. Which activities there are is for each program to say, so none is asked for.
func (l Library) Loose() source.Faults {
	r := &reader{Library: l, p: &Program{Exercises: map[string]*Exercise{}}}
	r.p.Sources = r.bibliography()
	for _, id := range l.ids("phases") {
		r.phase(id, basis.Origin{File: "programs/phases/" + id + ".toml"})
	}
	for _, id := range l.ids("limits") {
		r.limits(id, basis.Origin{File: "programs/limits/" + id + ".toml"})
	}
	r.p.Notes = r.notes()
	for _, ph := range r.p.Phases {
		r.judgePhase(ph)
		r.reachable(ph.Enter, "phase "+ph.ID+" is never reached")
		r.unused(ph)
		r.told(ph.Notes, ph.At)
	}
	for i := range r.p.Limits {
		r.judgeLimit(&r.p.Limits[i])
	}
	for i := range r.p.Activities {
		r.judgeActivity(&r.p.Activities[i])
	}
	r.faults.Sort()
	return r.faults
}

// ids are the files of a folder of the library.
func (l Library) ids(dir string) (ids []string) {
	for _, e := range l.Folder.List(dir) {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !e.Dir {
			ids = append(ids, id)
		}
	}
	return ids
}
