package client

import (
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// ReadClinic reads clinic.toml.
func ReadClinic(folder source.Folder) (*Clinic, source.Faults) {
	const name = "clinic.toml"
	data, _, err := folder.Read(name)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, source.Faults{source.Unreadable(name, err)}
	}
	if err != nil {
		return nil, source.Faults{{File: name, What: "there is no clinic.toml here", Instead: "go to the clinic's folder, name it by --clinic, or begin one by: paceleaf start clinic"}}
	}
	c := &Clinic{}
	faults := source.TOML(name, data, c)
	if c.Paceleaf > Format {
		return nil, source.Faults{{File: name, Line: source.Lines(data).Line("paceleaf"), Instead: "use a newer Paceleaf",
			What: fmt.Sprintf("this folder is of format %d; this version reads format %d", c.Paceleaf, Format)}}
	}
	faults = append(faults, c.judge()...)
	for i := range c.Places {
		for j := range c.Places[i].Devices {
			d := &c.Places[i].Devices[j]
			d.Pounds = d.inPounds()
		}
	}
	faults.Sort()
	return c, faults
}

// inPounds reports whether a device is marked in pounds: its first weight that is typed says so.
func (d *Device) inPounds() bool {
	for _, n := range append([]basis.Num[unit.Kilograms]{d.Step, d.Lightest, d.Heaviest}, d.Plates...) {
		if n.OK() {
			return strings.HasSuffix(n.Step().Typed, " lb")
		}
	}
	return false
}

// Codes lists the clients of a clinic, sorted, with faults for names that are no codes.
func Codes(folder source.Folder) (codes []string, faults source.Faults) {
	if err := folder.Trouble("clients"); err != nil {
		faults.Add(source.Unreadable("clients", err))
	}
	for _, e := range folder.List("clients") {
		switch {
		case !e.Dir:
			faults.Add(source.Fault{File: "clients/" + e.Name, What: "a file stands where only clients' folders may stand", Instead: "move it into a client's folder, or away"})
		case !kebab(e.Name):
			faults.Add(source.Fault{File: "clients/" + e.Name, What: fmt.Sprintf("%q is no code of a client", e.Name), Instead: "write small letters, digits and hyphens, as in tern-04; no names"})
		default:
			codes = append(codes, e.Name)
		}
	}
	return codes, faults
}

// Read reads one client whole: its folder and its rows of the day sheets. All mistakes are returned at once; the
// client may be used only where there are none.
func Read(folder source.Folder, code string, clinic *Clinic, sheets *Sheets) (*Client, source.Faults) {
	r := &reader{folder: folder, dir: "clients/" + code, clinic: clinic, c: &Client{Code: code}, told: map[string]bool{}}
	if !fill(r, "client.toml", &r.c.Person) {
		r.faults.Add(source.Fault{File: r.dir + "/client.toml", What: "this file is missing", Instead: "begin it by: paceleaf start client " + code})
	}
	for _, e := range folder.List(r.dir) {
		r.entry(e)
	}
	if data, there := r.read("note.md"); there {
		r.c.Note = string(data)
	}
	r.sheets(sheets)
	slices.SortFunc(r.c.Tests, func(a, b TestDay) int { return a.On.Compare(b.On) })
	slices.SortFunc(r.c.Holds, func(a, b Hold) int { return a.From.Compare(b.From) })
	slices.SortFunc(r.c.Blocks, func(a, b Block) int { return a.Number - b.Number })
	r.judge()
	slices.Sort(r.c.Files)
	r.c.Files = slices.Compact(r.c.Files)
	r.faults.Sort()
	return r.c, r.faults
}

// reader gathers one client and the mistakes of its files.
type reader struct {
	folder source.Folder
	dir    string
	clinic *Clinic
	c      *Client
	faults source.Faults
	told   map[string]bool // tests whose missing conditions have been told
}

func (r *reader) wrong(at basis.Origin, what, instead string) {
	r.faults.Add(source.Fault{File: at.File, Line: at.Line, Key: at.Key, What: what, Instead: instead})
}

func (r *reader) ask(at basis.Origin, what, instead string) {
	r.faults.Add(source.Fault{File: at.File, Line: at.Line, Key: at.Key, What: what, Instead: instead, Ask: true})
}

// fill reads a file of the client's folder into a value; false where it is missing.
func fill[T any](r *reader, name string, into *T) bool {
	data, there := r.read(name)
	if data != nil {
		r.faults = append(r.faults, source.TOML(r.dir+"/"+name, data, into)...)
	}
	return there
}

// read returns the bytes of a file of the client's folder, and whether it is there; one that is there and cannot be read
// is a mistake.
func (r *reader) read(name string) (data []byte, there bool) {
	name = r.dir + "/" + name
	data, _, err := r.folder.Read(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, false
	case err != nil:
		r.faults.Add(source.Unreadable(name, err))
		return nil, true
	}
	r.c.Files = append(r.c.Files, name)
	return data, true
}

// entry reads what a name in the client's folder stands for; an unknown name is a mistake.
func (r *reader) entry(e source.Entry) {
	switch {
	case e.Name == "client.toml", e.Name == "note.md":
	case e.Dir && e.Name == "tests":
		r.each("tests", r.testDay)
	case e.Dir && e.Name == "blocks":
		r.each("blocks", r.block)
	case e.Dir && e.Name == "holds":
		r.each("holds", r.hold)
	case e.Dir && e.Name == "logs":
		r.each("logs", r.log)
	default:
		r.wrong(basis.Origin{File: r.dir + "/" + e.Name}, "a file or folder of this name is not known",
			"a client's folder holds client.toml, note.md, tests/, blocks/, holds/ and logs/")
	}
}

func (r *reader) each(dir string, read func(name, full string)) {
	if err := r.folder.Trouble(r.dir + "/" + dir); err != nil {
		r.faults.Add(source.Unreadable(r.dir+"/"+dir, err))
	}
	for _, e := range r.folder.List(r.dir + "/" + dir) {
		full := r.dir + "/" + dir + "/" + e.Name
		if e.Dir {
			r.wrong(basis.Origin{File: full}, "a folder stands where only files may stand", "move its files up, or away")
			continue
		}
		read(e.Name, full)
	}
}

func (r *reader) testDay(name, full string) {
	stem, isTOML := strings.CutSuffix(name, ".toml")
	on, err := unit.ParseDay(stem)
	if !isTOML || err != nil {
		r.wrong(basis.Origin{File: full}, "this name is no test day", misnamed(name, ".toml", "tests/2026-04-06.toml"))
		return
	}
	day := TestDay{On: on}
	fill(r, "tests/"+name, &day)
	r.c.Tests = append(r.c.Tests, day)
}

func (r *reader) block(name, full string) {
	stem, isTOML := strings.CutSuffix(name, ".toml")
	n, err := strconv.Atoi(stem)
	if !isTOML || err != nil || n < 1 || n > 999 || strconv.Itoa(n) != stem {
		r.wrong(basis.Origin{File: full}, "this name is no block", "name the file by its number, as in blocks/3.toml")
		return
	}
	block := Block{Number: n}
	fill(r, "blocks/"+name, &block)
	r.c.Blocks = append(r.c.Blocks, block)
}

// sheets takes the client's rows from the clinic's day sheets. A day may stand in a file or in a sheet, not in both.
func (r *reader) sheets(sheets *Sheets) {
	if sheets == nil {
		return
	}
	for _, row := range sheets.rows[r.c.Code] {
		for _, have := range r.c.Tests {
			if have.On == row.on {
				r.wrong(basis.Origin{File: row.file, Line: row.line}, fmt.Sprintf("%s has this day already in %s", r.c.Code, have.At.File), "keep one of the two")
			}
		}
		day, faults := sheets.day(row, r.c)
		r.faults = append(r.faults, faults...)
		r.c.Tests = append(r.c.Tests, day)
		r.c.Files = append(r.c.Files, row.file)
	}
}

// IsCode reports whether a text may be a client's code.
func IsCode(s string) bool { return kebab(s) }

// kebab reports whether s is an id: small letters, digits and single hyphens.
func kebab(s string) bool {
	if s == "" || strings.HasPrefix(s, "-") || strings.HasSuffix(s, "-") || strings.Contains(s, "--") {
		return false
	}
	for _, c := range s {
		if (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-' {
			return false
		}
	}
	return true
}
