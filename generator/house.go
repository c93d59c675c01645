// Package generator is the conductor: it takes a clinic's files and gives pages, one file a verb. It knows no rule of the
// trade and no number; it reads no clock, and it writes nothing but through the site it is given.
package generator

import (
	"fmt"
	"io/fs"
	"slices"
	"sync"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
	"paceleaf/generator/words"
	"paceleaf/site"
)

// Files are the three folders that pages are made of: the clinic's own, and what ships with Paceleaf.
type Files struct {
	Clinic         fs.FS
	Programs       fs.FS // shipped; the clinic's programs/ is laid over it
	Templates      fs.FS // shipped; the clinic's templates/ is laid over it
	Version        string
	Shelf          *Shelf   // what ships and has been read; nil: it is read for this house alone
	Today          unit.Day // what the overview calls overdue; zero: nothing. No other page depends on it
	WithoutLibrary bool     // build leaves the library as it is: for tests that look at clients' pages
}

// House is what all clients of a clinic share, read once. It may be used by many at once.
type House struct {
	Files
	folder  source.Folder
	Clinic  *client.Clinic
	words   *words.Words
	sheets  *client.Sheets
	codes   []string
	library program.Library
	shared  string // hash of what every page depends on

	programs sync.Map // id -> *resolved
}

// resolved is a program read once, with its mistakes and the hash of its files.
type resolved struct {
	once    sync.Once
	program *program.Program
	faults  source.Faults
	hash    string
}

// Open reads what all clients share. A mistake in it stops everything: then the house is nil.
func Open(files Files) (*House, source.Faults) {
	h := &House{Files: files, folder: source.Over(files.Clinic)}
	h.library = program.Library{Folder: source.Over(sub(files.Clinic, "programs"), files.Programs)}
	var faults source.Faults
	h.Clinic, faults = client.ReadClinic(h.folder)
	if h.Clinic == nil {
		return nil, faults
	}
	if lang := language(h.Clinic); lang != words.Shipped {
		h.library.Language = lang
	}
	add := func(more source.Faults) { faults = append(faults, more...) }
	add(h.strangers())
	var more source.Faults
	h.words, more = h.readWords()
	add(more)
	add(h.ownTemplates())
	h.sheets, more = client.ReadSheets(h.folder)
	add(more)
	h.codes, more = client.Codes(h.folder)
	add(more)
	if h.sheets != nil {
		add(h.sheets.Strangers(h.codes))
	}
	faults = h.located(faults)
	if len(faults.Wrong()) > 0 {
		return nil, faults
	}
	h.shared = h.hashShared()
	return h, faults
}

func language(c *client.Clinic) string {
	if c.Language == "" {
		return words.Shipped
	}
	return c.Language
}

// sub is a folder of a file system; an empty one where it is missing.
func sub(of fs.FS, dir string) fs.FS {
	s, err := fs.Sub(of, dir)
	if err != nil {
		return noFiles{}
	}
	return s
}

type noFiles struct{}

func (noFiles) Open(name string) (fs.File, error) {
	return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
}

// known are the names that a clinic's folder may hold; out is known and never read.
var known = map[string]bool{"clinic.toml": true, "clients": true, "days": true, "programs": true, "templates": true, "out": true}

// strangers are names at the top of the folder that mean nothing: misspelt, they would be passed over in silence.
func (h *House) strangers() (faults source.Faults) {
	for _, e := range h.folder.List(".") {
		if !known[e.Name] && !passedOver(e.Name) && !h.ours(e) {
			faults.Add(source.Fault{File: e.Name, What: "a file or folder of this name is not known here",
				Instead: "a clinic's folder holds clinic.toml, clients/, days/, programs/, templates/ and out/"})
		}
	}
	return append(faults, h.strangersBelow()...)
}

// ours reports whether a folder is one that build --out has written: it holds our own list of pages.
func (h *House) ours(e source.Entry) bool { return e.Dir && h.folder.Exists(e.Name+"/"+site.Manifest) }

// passedOver are names that people keep beside their work and that mean nothing to us.
func passedOver(name string) bool {
	switch name {
	case "README.md", "README.txt", "LICENSE":
		return true
	}
	return false
}

// Codes lists the clients, sorted.
func (h *House) Codes() []string { return h.codes }

// program reads a program once.
func (h *House) program(id string) *resolved {
	r := h.resolved(id)
	r.once.Do(func() {
		r.program, r.faults = h.library.Program(id)
		if r.program != nil {
			r.faults = append(r.faults, asFaults(plan.Unmeasured(r.program))...)
		}
		r.faults = h.located(r.faults)
		if r.program != nil {
			r.hash = h.hashProgram(r.program.Files)
		}
	})
	return r
}

// Planned is one client read and planned.
type Planned struct {
	Client *client.Client
	Plan   *plan.Plan    // nil where something is wrong, or where there is no block yet
	Faults source.Faults // mistakes and questions, located
}

// Plan reads one client and plans its newest block.
func (h *House) Plan(code string) Planned {
	c, faults := client.Read(h.folder, code, h.Clinic, h.sheets)
	done := Planned{Client: c}
	if len(faults.Wrong()) > 0 {
		done.Faults = h.located(faults)
		return done
	}
	r := h.program(c.Program)
	if r.program == nil {
		faults.Add(source.Fault{File: c.At.File, Key: "program", What: r.faults[0].What, Instead: r.faults[0].Instead})
	} else if wrong := r.faults.Wrong(); len(wrong) > 0 {
		faults.Add(source.Fault{File: c.At.File, Key: "program", What: fmt.Sprintf("program %s has mistakes of its own (below)", c.Program), Instead: "mend those first"})
		faults = append(faults, wrong...)
	} else {
		var mistakes []plan.Mistake
		done.Plan, mistakes = plan.Compute(h.Clinic, r.program, c)
		faults = append(faults, asFaults(mistakes)...)
		if done.Plan != nil {
			faults = append(faults, c.Suspicious(done.Plan.Event.Side)...)
			done.Plan.Tool = h.Version
		}
	}
	done.Faults = h.located(faults)
	return done
}

func asFaults(mistakes []plan.Mistake) (faults source.Faults) {
	for _, m := range mistakes {
		faults.Add(source.Fault{File: m.At.File, Line: m.At.Line, Key: m.At.Key, What: m.What, Instead: m.Instead, Ask: m.Ask})
	}
	return faults
}

// located gives each fault its line, from its key; what reads the same is told once.
func (h *House) located(faults source.Faults) source.Faults {
	faults = faults.Locate(h.read)
	faults.Sort()
	return slices.CompactFunc(faults, func(a, b source.Fault) bool { return a.Ask == b.Ask && a.Error() == b.Error() })
}

// read returns the bytes of a file named in a fault: the clinic's own, else the shipped one.
func (h *House) read(file string) []byte {
	if data, _, err := h.folder.Read(file); err == nil {
		return data
	}
	if name, ok := cutFolder(file, "programs"); ok {
		if data, _, err := h.library.Folder.Read(name); err == nil {
			return data
		}
	}
	return nil
}

// Line returns the line of a typed value.
func (h *House) Line(at basis.Origin) int {
	if at.Line > 0 {
		return at.Line
	}
	data := h.read(at.File)
	if data == nil {
		return 0
	}
	return source.Lines(data).Line(at.Key)
}

// Words are the sentences of the clinic's language.
func (h *House) Words() *words.Words { return h.words }
