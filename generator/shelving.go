package generator

import (
	"cmp"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"

	"paceleaf/generator/library"
	"paceleaf/generator/page"
	"paceleaf/generator/program"
	"paceleaf/site"
)

// shelving is the library on its way to the site: page after page is drawn, written and forgotten.
type shelving struct {
	*builder
	shelf   *library.Shelf
	printer *page.LibraryPrinter
	fronts  []library.Page // that the whole library shares

	keysMu sync.Mutex
	keys   map[string]string // of each group
	files  []string          // of the library, below it
}

// folio is the pages of one group: an exercise with its pictures, both texts of a note, a program.
type folio struct {
	group    string
	pages    []library.Page
	exercise *program.Exercise
}

// folios sorts the pages into their groups.
func (s *shelving) folios() (all []*folio) {
	byGroup := map[string]*folio{}
	for _, p := range s.shelf.Pages() {
		dir, name := path.Split(strings.TrimSuffix(p.Path, ".html"))
		if dir == "" {
			s.fronts = append(s.fronts, p)
			continue
		}
		id := name
		if dir == "notes/" {
			id = strings.TrimSuffix(name, "-colleagues")
		}
		group := libraryGroup + "/" + dir + id
		if byGroup[group] == nil {
			byGroup[group] = &folio{group: group}
			all = append(all, byGroup[group])
		}
		f := byGroup[group]
		f.pages = append(f.pages, p)
		if dir == "exercises/" {
			f.exercise = s.shelf.Catalog.Exercises[id]
		}
	}
	return all
}

// all writes every group but the front, many at once.
func (s *shelving) all(workers int) error {
	work := make(chan *folio)
	var failed error
	var working sync.WaitGroup
	for range cmp.Or(workers, runtime.GOMAXPROCS(0)) {
		working.Go(func() {
			for f := range work {
				if err := s.put(f); err != nil {
					s.keysMu.Lock()
					failed = cmp.Or(failed, err)
					s.keysMu.Unlock()
				}
			}
		})
	}
	for _, f := range s.folios() {
		work <- f
	}
	close(work)
	working.Wait()
	return failed
}

// put writes one group, unless it is what it was.
func (s *shelving) put(f *folio) error {
	var pictures []library.Picture
	if f.exercise != nil {
		pictures = s.shelf.Pictures(f.exercise)
	}
	key, err := s.viewKey(s.printer.Dress(), f.pages, pictures)
	if err != nil {
		return err
	}
	s.note(f, key, pictures)
	if s.out.Fresh(f.group, key) {
		return nil
	}
	files, err := s.printed(f.pages)
	for _, p := range pictures {
		if err != nil {
			return err
		}
		var svg []byte
		svg, err = p.SVG()
		files = append(files, libraryFile(p.Path, svg))
	}
	if err != nil {
		return err
	}
	return s.write(f.group, key, files)
}

// note remembers the key of a group and its files, for the front.
func (s *shelving) note(f *folio, key string, pictures []library.Picture) {
	s.keysMu.Lock()
	defer s.keysMu.Unlock()
	s.keys[f.group] = key
	for _, p := range f.pages {
		s.files = append(s.files, p.Path)
	}
	for _, p := range pictures {
		s.files = append(s.files, p.Path)
	}
}

func (s *shelving) printed(pages []library.Page) (files []site.File, err error) {
	for _, p := range pages {
		html, err := s.printer.Page(p.View, p.Frame)
		if err != nil {
			return nil, err
		}
		files = append(files, libraryFile(p.Path, html))
	}
	return files, nil
}

func (s *shelving) write(group, key string, files []site.File) error {
	written, err := s.out.Put(group, key, files)
	s.mu.Lock()
	defer s.mu.Unlock()
	s.report.Library = s.report.Library.Plus(written)
	return err
}

// front writes what the whole library shares, last: its worker names every file, under a name that changes with any of them.
func (s *shelving) front(whole string, groups []string) error {
	files, err := s.printed(s.fronts)
	if err != nil {
		return err
	}
	kept, err := s.viewKey(s.printer.Dress(), s.fronts, s.keys)
	if err != nil {
		return err
	}
	manifest, err := s.shelf.Manifest()
	if err != nil {
		return err
	}
	first := []string{"manifest.webmanifest", "icon-192.png"}
	for _, p := range s.fronts {
		if p.Path != "figures.html" { // a sheet for reviewers, with every picture on it
			first = append(first, p.Path)
		}
	}
	files = append(files, libraryFile("manifest.webmanifest", manifest), libraryFile("sw.js", s.printer.Worker(kept, first, s.files)))
	for name, size := range map[string]int{"icon-192.png": 192, "icon-512.png": 512} {
		icon, err := library.Icon(size)
		if err != nil {
			return err
		}
		files = append(files, libraryFile(name, icon))
	}
	slices.SortFunc(files, func(a, b site.File) int { return cmp.Compare(a.Path, b.Path) })
	return s.write(libraryGroup, s.remembered(whole, groups), files)
}

// remembered is the front's key with the keys of all other groups behind it; without it where one of them has none.
func (s *shelving) remembered(whole string, groups []string) string {
	var keys strings.Builder
	for _, name := range groups {
		keys.WriteString(s.keys[name])
	}
	if whole == "" || keys.Len() != pageKey*len(groups) || len(s.keys) != len(groups) {
		return ""
	}
	noted := site.Noted(whole, []byte(keys.String()))
	if len(noted) > site.LongestKey {
		return "" // too many pages to remember: each is asked by itself
	}
	return noted
}
