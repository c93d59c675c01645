package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"paceleaf/generator/library"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/generator/source"
	"paceleaf/generator/words"
	"paceleaf/site"
)

// libraryGroup holds what the whole library shares: index, sources, figures, and what a telephone keeps it by. The groups of
// its other pages begin with this name.
const libraryGroup = "library"

// BuildLibrary makes the public library alone: pages without a person. What has mistakes keeps its earlier page.
func (h *House) BuildLibrary(out *site.Site, workers int) (Report, error) {
	b := &builder{House: h, out: out}
	out.KeepBut(libraryGroup)
	err := b.library(workers)
	b.report.Faults.Sort()
	return b.report, err
}

// library makes the library's pages, unless nothing that they are made of has changed.
func (b *builder) library(workers int) error {
	whole := b.libraryKey()
	groups := b.libraryGroups()
	if b.WithoutLibrary {
		for _, name := range append(groups, libraryGroup) {
			b.out.Keep(name)
		}
		return nil
	}
	if b.libraryFresh(whole, groups) {
		return nil
	}
	shelf, bad, faults := b.House.shelf()
	b.report.Faults = append(b.report.Faults, faults...)
	printer, err := b.libraryPrinter()
	if err != nil {
		b.out.Partial()
		return err
	}
	s := &shelving{builder: b, shelf: shelf, printer: printer, keys: map[string]string{}}
	for _, name := range groups {
		if bad[name] {
			b.out.Keep(name)
		}
	}
	if err := s.all(workers); err != nil {
		b.out.Partial()
		return err
	}
	if len(faults) > 0 {
		whole = "" // looked at again until it is mended
	}
	return s.front(whole, groups)
}

// libraryKey hashes all that the library is made of.
func (h *House) libraryKey() string {
	sum := sha256.New()
	fmt.Fprintln(sum, h.shared)
	for _, templates := range []fs.FS{sub(h.Files.Clinic, "templates"), h.Templates} {
		hashFolder(sum, templates, "library")
	}
	for _, programs := range []fs.FS{sub(h.Files.Clinic, "programs"), h.Programs} {
		fmt.Fprintf(sum, "%x\n", laid(programs, "."))
	}
	return hex.EncodeToString(sum.Sum(nil))
}

// libraryGroups are the groups of the library besides its front, by the files that make them: nothing need be read for them.
func (h *House) libraryGroups() (groups []string) {
	for _, dir := range []string{"exercises", "notes"} {
		for _, e := range h.library.Folder.List(dir) {
			if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !e.Dir {
				groups = append(groups, libraryGroup+"/"+dir+"/"+id)
			}
		}
	}
	for _, id := range h.library.IDs() {
		groups = append(groups, libraryGroup+"/programs/"+id)
	}
	return groups
}

// pageKey is how long the key of a page of the library is: the front remembers all of them.
const pageKey = 16

// libraryFresh reports whether the library is still what its files make.
func (b *builder) libraryFresh(whole string, groups []string) bool {
	if !b.out.Fresh(libraryGroup, whole) {
		return false
	}
	keys := string(b.out.Note(libraryGroup))
	if len(keys) != pageKey*len(groups) {
		return false
	}
	for i, name := range groups {
		if !b.out.Fresh(name, keys[i*pageKey:(i+1)*pageKey]) {
			return false
		}
	}
	return true
}

// shelf reads all that the library shows. bad are the groups whose files have mistakes.
func (h *House) shelf() (*library.Shelf, map[string]bool, source.Faults) {
	var reading sync.WaitGroup
	for _, id := range h.library.IDs() {
		reading.Go(func() { h.program(id) })
	}
	catalog, faults := h.library.Catalog()
	reading.Wait()
	bad := map[string]bool{}
	for _, f := range faults.Wrong() {
		if name, ok := cutFolder(f.File, "programs"); ok {
			bad[libraryGroup+"/"+strings.TrimSuffix(strings.TrimSuffix(name, ".toml"), ".md")] = true
		}
	}
	terms, unread := h.glossary()
	faults = append(faults, unread...)
	s := &library.Shelf{Clinic: h.Clinic.Name, Catalog: catalog, Words: h.words, Glossary: terms}
	for _, id := range h.library.IDs() {
		r := h.program(id)
		faults = append(faults, r.faults...)
		if r.program == nil || len(r.faults.Wrong()) > 0 {
			bad[libraryGroup+"/programs/"+id] = true
			continue
		}
		s.Programs = append(s.Programs, r.program)
	}
	for id := range catalog.Exercises {
		if bad[libraryGroup+"/exercises/"+id] {
			delete(catalog.Exercises, id)
		}
	}
	catalog.Notes = slices.DeleteFunc(catalog.Notes, func(n *program.Note) bool { return bad[libraryGroup+"/notes/"+n.ID] })
	return s, bad, h.located(faults)
}

// glossary are the words that clients meet, as the clinic's language explains them.
func (h *House) glossary() (terms []library.Term, faults source.Faults) {
	read, faults := words.LoadGlossary(source.Over(sub(h.Files.Clinic, "templates"), h.Templates), language(h.Clinic))
	for _, t := range read.Terms {
		terms = append(terms, library.Term{ID: t.ID, Word: t.Word, Says: t.Says, Also: t.Also})
	}
	return terms, faults
}

// libraryPrinter reads the library's templates, the clinic's own over the shipped, and wears the clinic's colours.
func (h *House) libraryPrinter() (*page.LibraryPrinter, error) {
	printer, err := page.NewLibraryPrinter(sub(h.Files.Clinic, "templates"), h.Templates)
	if err != nil {
		return nil, err
	}
	printer.Wear(page.Look{Light: h.Clinic.Colours.Named(), Dark: h.Clinic.Colours.Dark.Named()})
	return printer, nil
}

// libraryFile is a file of the library below the site.
func libraryFile(path string, data []byte) site.File {
	return site.File{Path: "library/" + path, Data: data}
}

// viewKey hashes what a page is made of: its view is pure data, its pictures too, so they need not be drawn for it.
func (h *House) viewKey(made ...any) (string, error) {
	data, err := json.Marshal(append([]any{h.shared}, made...))
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])[:pageKey], err
}
