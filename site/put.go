package site

import (
	"cmp"
	"errors"
	"fmt"
	"os"
	"slices"
)

// File is one finished page. Data is not kept after Put returns.
type File struct {
	Path string // below the output folder, with /
	Data []byte
}

// Written counts what a Put did.
type Written struct{ New, Changed, Same, Removed int }

// Put writes all files of a group, or none. A file that already has these
// bytes is not touched. Files that the group had before and has no more are
// removed. If anything fails, the group's earlier files stay as they were.
func (s *Site) Put(name, key string, files []File) (Written, error) {
	s.run.RLock()
	defer s.run.RUnlock()
	if err := s.mention(name); err != nil {
		return Written{}, err
	}
	p := &put{site: s, key: key, folders: map[string]*os.Root{}}
	defer p.closeFolders()
	if err := p.check(name, files); err != nil {
		s.Keep(name)
		return Written{}, err
	}
	if err := p.reserve(name); err != nil {
		return Written{}, err
	}
	if err := p.write(); err != nil {
		p.release()
		return Written{}, err
	}
	return p.settle(), nil
}

// put is one group on its way to the disk.
type put struct {
	site    *Site
	key     string
	group   *group
	pages   []page
	missing []string // folders to be made
	folders map[string]*os.Root
	torn    bool // an earlier page is lost, so the group is neither old nor new
}

type page struct {
	File
	record
	before claim // whose the path was
	dir    *os.Root
	state  pageState
	kept   bool // the old page has a second name for now
}

type pageState int

const (
	isNew pageState = iota
	isChanged
	isSame
)

// check judges names before anything is touched; all mistakes at once.
func (p *put) check(name string, files []File) error {
	var wrong []error
	if name == "" {
		wrong = append(wrong, errors.New("a group has no name; give it the client's code"))
	}
	wrong = append(wrong, checkWord("group", name), checkWord("key", p.key))
	p.pages = make([]page, len(files))
	seen := make(map[string]string, len(files))
	for i, file := range files {
		wrong = append(wrong, checkPath(file.Path))
		if other, twice := seen[fold(file.Path)]; twice {
			wrong = append(wrong, twiceIn(name, other, file.Path))
		}
		seen[fold(file.Path)] = file.Path
		p.pages[i] = page{File: file, record: record{path: file.Path, size: int64(len(file.Data))}}
	}
	slices.SortFunc(p.pages, func(a, b page) int { return cmp.Compare(a.path, b.path) })
	return errors.Join(wrong...)
}

func twiceIn(name, one, other string) error {
	if one == other {
		return fmt.Errorf("group %q has %s twice; give each page its own name", name, one)
	}
	return fmt.Errorf("group %q has %s and %s, one file on some disks; give them names that differ in more than case", name, one, other)
}

// reserve claims the paths. A path of a group that was not yet spoken for in
// this run may be taken over: that group must be built again anyway, or is gone.
func (p *put) reserve(name string) error {
	s := p.site
	s.mu.Lock()
	defer s.mu.Unlock()
	g := s.groups[name]
	if g != nil && (g.putting || g.written) {
		return fmt.Errorf("group %q is written twice in one run; give each client its own code", name)
	}
	var wrong []error
	for _, pg := range p.pages {
		if c := s.claims[fold(pg.path)]; c.held && c.group != g {
			wrong = append(wrong, fmt.Errorf("%s belongs to %q, so %q cannot write %s; give one of them another name", c.path, c.group.name, name, pg.path))
		}
	}
	if wrong != nil {
		if g != nil {
			s.hold(g)
		}
		return errors.Join(wrong...)
	}
	if g == nil {
		g = &group{name: name, seen: true}
		s.groups[name] = g
	}
	g.putting, p.group = true, g
	for i := range p.pages {
		pg := &p.pages[i]
		pg.before = s.claims[fold(pg.path)]
		s.claims[fold(pg.path)] = claim{path: pg.path, group: g, held: true}
		s.takeover = s.takeover || pg.before.group != nil && pg.before.group != g
	}
	return nil
}

// release gives the claims back after a failure; the group keeps what it had.
func (p *put) release() {
	s, g := p.site, p.group
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, pg := range p.pages {
		if pg.before.group == nil {
			delete(s.claims, fold(pg.path))
		} else {
			s.claims[fold(pg.path)] = pg.before
		}
	}
	for _, folder := range p.missing {
		s.emptied[folder] = true
	}
	g.putting, g.dropped = false, false
	if p.torn {
		g.key, s.changed = "", true
	}
	if len(g.files) == 0 {
		delete(s.groups, g.name)
		return
	}
	s.hold(g)
}

// settle removes what the group has no more, and records what it has.
func (p *put) settle() Written {
	s, g := p.site, p.group
	files := make([]record, len(p.pages))
	var w Written
	for i, pg := range p.pages {
		files[i] = pg.record
		switch pg.state {
		case isNew:
			w.New++
		case isChanged:
			w.Changed++
		case isSame:
			w.Same++
		}
	}
	var stale []record
	for _, old := range g.files {
		if _, wanted := find(files, old.path); !wanted {
			stale = append(stale, old)
		}
	}
	removed, left := s.removeAll(g, stale)
	w.Removed = removed
	if left != nil { // try again next time
		files = append(files, left...)
		sortRecords(files)
		p.key = ""
	}

	s.mu.Lock()
	defer s.mu.Unlock()
	if g.key != p.key || !slices.EqualFunc(g.files, files, alike) {
		s.changed = true
	}
	s.stampsStale = s.stampsStale || !slices.Equal(g.files, files)
	g.key, g.files = p.key, files
	g.putting, g.written, g.dropped = false, true, false
	return w
}

func find(files []record, path string) (int, bool) {
	return slices.BinarySearchFunc(files, path, func(r record, p string) int { return cmp.Compare(r.path, p) })
}

// alike compares what the manifest says of two files.
func alike(a, b record) bool { return a.path == b.path && a.size == b.size && a.sum == b.sum }

func (p *put) closeFolders() {
	for _, dir := range p.folders {
		if dir != nil {
			dir.Close()
		}
	}
}
