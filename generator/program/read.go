package program

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// Library is the clinic's programs laid over the shipped ones: a folder with programs at its top and phases/, limits/,
// exercises/ and sources.toml beside them.
type Library struct {
	Folder   source.Folder
	Language string // in which the texts are said; empty: as they stand in their files
}

// IDs lists the programs, sorted.
func (l Library) IDs() (ids []string) {
	for _, e := range l.Folder.List(".") {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !e.Dir && e.Name != "sources.toml" && e.Name != "errors.toml" {
			ids = append(ids, id)
		}
	}
	return ids
}

// oneOf says which programs could have been written.
func (l Library) oneOf() string {
	ids := l.IDs()
	if len(ids) == 1 {
		return "write " + ids[0]
	}
	return "write one of " + strings.Join(ids, ", ")
}

// Program reads a program and all that it names. It returns every mistake of every one of those files at once.
func (l Library) Program(id string) (*Program, source.Faults) {
	r := &reader{Library: l, p: &Program{ID: id, Exercises: map[string]*Exercise{}}}
	if !l.Folder.Exists(id + ".toml") {
		return nil, source.Faults{{File: "programs/" + id + ".toml", What: fmt.Sprintf("there is no program %q", id),
			Instead: l.oneOf()}}
	}
	read(r, id+".toml", &r.p.File)
	r.p.Sources = r.bibliography()
	r.p.Errors = r.errors()
	for i, phase := range r.p.File.Phases {
		r.phase(phase, basis.Origin{File: r.p.At.File, Key: fmt.Sprintf("phases[%d]", i)})
	}
	for i, limits := range r.p.File.Limits {
		r.limits(limits, basis.Origin{File: r.p.At.File, Key: fmt.Sprintf("limits[%d]", i)})
	}
	r.p.Notes = r.notesOf()
	r.judge()
	r.translate()
	slices.Sort(r.p.Files)
	r.p.Files = slices.Compact(r.p.Files)
	r.faults.Sort()
	return r.p, r.faults
}

// reader gathers a program and the mistakes of its files.
type reader struct {
	Library
	p      *Program
	faults source.Faults
}

// read fills into from a file of the library and notes the file; a missing file leaves into as it was.
func read[T any](r *reader, name string, into *T) bool {
	data, _, err := r.Folder.Read(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return false
	case err != nil:
		r.faults.Add(source.Unreadable("programs/"+name, err))
		return true
	}
	r.p.Files = append(r.p.Files, name)
	r.faults = append(r.faults, source.TOML("programs/"+name, data, into)...)
	return true
}

// wrong notes a mistake at a key of a file; its line is looked up when it is shown.
func (r *reader) wrong(at basis.Origin, what, instead string) {
	r.faults.Add(source.Fault{File: at.File, Key: at.Key, What: what, Instead: instead})
}

// said reports whether something is wrong with a file already.
func (r *reader) said(file string) bool {
	return slices.ContainsFunc(r.faults, func(f source.Fault) bool { return f.File == file })
}

func (r *reader) phase(id string, named basis.Origin) {
	if id == "" {
		return // the walker has said so
	}
	ph := &Phase{ID: id}
	if !read(r, "phases/"+id+".toml", ph) {
		r.wrong(named, fmt.Sprintf("there is no phase %q", id), r.oneOf("phases", id))
		return
	}
	r.p.Phases = append(r.p.Phases, ph)
	for s := range ph.Slots {
		for i, ex := range ph.Slots[s].Choose {
			r.exercise(ex, ph.Slots[s].At.At(fmt.Sprintf("choose[%d]", i)))
		}
	}
}

func (r *reader) limits(id string, named basis.Origin) {
	var file LimitFile
	if !read(r, "limits/"+id+".toml", &file) {
		r.wrong(named, fmt.Sprintf("there is no limit file %q", id), r.oneOf("limits", id))
		return
	}
	if len(file.Limits)+len(file.Activities) == 0 && !r.said("programs/limits/"+id+".toml") {
		r.wrong(basis.Origin{File: "programs/limits/" + id + ".toml"}, "the file has no [[limit]] and no [[activity]]", "write one, or take the file away")
	}
	r.p.Limits = append(r.p.Limits, file.Limits...)
	r.p.Activities = append(r.p.Activities, file.Activities...)
}

// exercise reads an exercise and its neighbours' titles lie with whoever names them: easier and harder need not be in a slot.
func (r *reader) exercise(id string, named basis.Origin) {
	if id == "" || r.p.Exercises[id] != nil {
		return
	}
	ex := &Exercise{ID: id}
	if !read(r, "exercises/"+id+".toml", ex) {
		r.wrong(named, fmt.Sprintf("there is no exercise %q", id), r.oneOf("exercises", id))
		return
	}
	r.p.Exercises[id] = ex
	r.words(ex)
	for key, neighbour := range map[string]string{"easier": ex.Easier, "harder": ex.Harder} {
		if neighbour != "" {
			r.exercise(neighbour, ex.At.At(key))
		}
	}
}

// listed is how many names of files are listed for one that is not there; of more, the closest are. Chosen: a glance.
const listed = 12

// oneOf lists what could have been written.
func (r *reader) oneOf(dir, written string) string {
	var ids []string
	for _, e := range r.Folder.List(dir) {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML {
			ids = append(ids, id)
		}
	}
	if len(ids) == 0 {
		return fmt.Sprintf("add programs/%s/%s.toml", dir, written)
	}
	if len(ids) <= listed {
		return "write one of " + strings.Join(ids, ", ")
	}
	file := fmt.Sprintf("write the name of a file of programs/%s/, without .toml", dir)
	if near := source.Closest(written, ids, meantShown); len(near) > 0 {
		return "did you mean " + strings.Join(near, " or ") + "? Else " + file
	}
	return file
}

// bibliography reads sources.toml of every layer, the clinic's entries over the shipped ones, key by key.
func (r *reader) bibliography() Bibliography {
	all := Bibliography{}
	if _, _, err := r.Folder.Read("sources.toml"); err != nil && !errors.Is(err, fs.ErrNotExist) {
		r.faults.Add(source.Unreadable("programs/sources.toml", err))
	}
	for _, data := range r.Folder.Layers("sources.toml") {
		var layer map[string]Source
		r.faults = append(r.faults, source.TOML("programs/sources.toml", data, &layer)...)
		for key, s := range layer {
			if _, own := all[key]; !own {
				all[key] = s
			}
		}
		r.p.Files = append(r.p.Files, "sources.toml")
	}
	return all
}
