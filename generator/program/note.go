package program

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Note is one file of programs/notes/, a note of reasons: why the tool does what it does where people disagree, with its two
// texts in the Markdown file beside it.
type Note struct {
	ID            string // the file's name
	At            basis.Origin
	Title         string      `key:"title,required" doc:"what the note is about; both texts bear it" show:"Waiting nine months" said:"client"`
	Kinds         []unit.Kind `key:"kinds,declared" doc:"limits that it gives the reason of; [] if none, but the key must be there" show:"[\"contact\"]"`
	Short         string      `key:"short" doc:"one or two sentences for the client's page, where a program or a phase names the note" show:"Your thigh may hide in a squat. So we train it alone too." said:"client"`
	Exercises     []string    `key:"exercises" doc:"ids of the exercises that it is about" show:"[\"squat\", \"leg-press-single\"]"`
	Sources       []string    `key:"sources,required" doc:"keys of the bibliography that the text for colleagues cites" show:"[\"kngf-2014\", \"reid-2007\"]"`
	CopiedFrom    string      `key:"copied_from" doc:"the shipped file that this one started as, and its digest then; check tells when that one changes" show:"thigh-alone 1a2b3c4d"`
	ForYou        string      `said:"client"` // "For you": the client's text, Markdown
	ForColleagues string      `said:"desk"`   // "For colleagues": with sources in brackets, Markdown
}

// The headings of the Markdown file beside a note, both there and nothing else.
const (
	headForYou        = "For you"
	headForColleagues = "For colleagues"
)

// About reports whether the note is about an exercise.
func (n *Note) About(exercise string) bool { return slices.Contains(n.Exercises, exercise) }

// Notes reads every note of the library, in the order of their ids.
func (l Library) Notes() ([]*Note, source.Faults) {
	r := &reader{Library: l, p: &Program{}}
	notes := r.notes()
	r.faults.Sort()
	return notes, r.faults
}

// notes reads the notes; what each cites is held against the bibliography by whoever has one.
func (r *reader) notes() (notes []*Note) {
	for _, e := range r.Folder.List("notes") {
		id, isTOML := strings.CutSuffix(e.Name, ".toml")
		if !isTOML || e.Dir {
			continue
		}
		n := &Note{ID: id}
		if read(r, "notes/"+e.Name, n) {
			r.noteTexts(n)
			notes = append(notes, n)
		}
	}
	return notes
}

// noteTexts reads the two texts of a note.
func (r *reader) noteTexts(n *Note) {
	name := "notes/" + n.ID + ".md"
	file := "programs/" + name
	data, _, err := r.Folder.Read(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		r.faults.Add(source.Fault{File: file, What: "the note has no text", Instead: fmt.Sprintf("add this file with ## %s and ## %s", headForYou, headForColleagues)})
		return
	case err != nil:
		r.faults.Add(source.Unreadable(file, err))
		return
	}
	r.p.Files = append(r.p.Files, name)
	r.gaps(file, data)
	sections, faults := source.Sections(file, data)
	r.faults = append(r.faults, faults...)
	for _, s := range sections {
		switch s.Title {
		case headForYou:
			n.ForYou = s.Body
		case headForColleagues:
			n.ForColleagues = s.Body
		default:
			r.faults.Add(source.Fault{File: file, Line: s.Line, What: fmt.Sprintf("heading %q is not known", s.Title),
				Instead: fmt.Sprintf("write ## %s and ## %s", headForYou, headForColleagues)})
		}
	}
	for title, text := range map[string]string{headForYou: n.ForYou, headForColleagues: n.ForColleagues} {
		if strings.TrimSpace(text) == "" {
			r.faults.Add(source.Fault{File: file, What: fmt.Sprintf("the note lacks the text %q", title), Instead: "write it under ## " + title})
		}
	}
}

// notesOf are the notes about an exercise that the program knows, and those that it tells the client about. A half-written note
// is a mistake of the program only where the program names it: check tells of the others.
func (r *reader) notesOf() (own []*Note) {
	alone := &reader{Library: r.Library, p: &Program{Sources: r.p.Sources}}
	all := alone.notes()
	wrong := map[string]bool{}
	for _, n := range all {
		alone.citations(n)
	}
	for _, f := range alone.faults {
		id := strings.TrimSuffix(strings.TrimSuffix(strings.TrimPrefix(f.File, "programs/notes/"), ".toml"), ".md")
		wrong[id] = wrong[id] || !f.Ask
		if r.tellsOf(id) {
			r.faults.Add(f)
		}
	}
	for _, n := range all {
		about := slices.ContainsFunc(n.Exercises, func(id string) bool { return r.p.Exercises[id] != nil })
		if r.tellsOf(n.ID) || about && !wrong[n.ID] {
			own = append(own, n)
		}
	}
	r.p.Files = append(r.p.Files, alone.p.Files...)
	return own
}

// tellsOf reports whether the program or one of its phases names a note.
func (r *reader) tellsOf(id string) bool {
	return slices.Contains(r.p.File.Notes, id) || slices.ContainsFunc(r.p.Phases, func(ph *Phase) bool { return slices.Contains(ph.Notes, id) })
}

// citations asks that what a note cites stands in the bibliography.
func (r *reader) citations(n *Note) {
	for i, key := range n.Sources {
		r.cited(key, n.At.At(fmt.Sprintf("sources[%d]", i)))
	}
}

// Note returns the note of that id; nil where there is none.
func (p *Program) Note(id string) *Note {
	for _, n := range p.Notes {
		if n.ID == id {
			return n
		}
	}
	return nil
}
