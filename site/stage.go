package site

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
)

// write brings the pages to the disk. Everything that is likely to fail (a
// full disk, a folder in the way, a missing right) fails before the first
// rename.
func (p *put) write() error {
	if err := p.look(); err != nil {
		return err
	}
	writes := p.writes()
	if len(writes) == 0 {
		return nil
	}
	if err := p.announce(writes); err != nil {
		return err
	}
	if err := p.makeFolders(); err != nil {
		return err
	}
	for i, pg := range writes {
		if err := p.stage(pg); err != nil {
			p.clear(writes[:i+1])
			return err
		}
	}
	return p.rename(writes)
}

// look finds out for each page whether it is new, changed or the same, and
// whether a stranger's file is in its way.
func (p *put) look() error {
	var wrong []error
	refused := map[string]bool{}
	for i := range p.pages {
		pg := &p.pages[i]
		pg.sum = sha256.Sum256(pg.Data)
		folder := parent(pg.path)
		if _, looked := p.folders[folder]; !looked && !refused[folder] {
			dir, missing, err := p.site.openFolder(folder)
			if err != nil {
				refused[folder] = true
				wrong = append(wrong, err)
				continue
			}
			p.folders[folder] = dir
			for _, m := range missing {
				if !slices.Contains(p.missing, m) {
					p.missing = append(p.missing, m)
				}
			}
		}
		if pg.dir = p.folders[folder]; pg.dir != nil {
			if err := p.compare(pg); err != nil {
				wrong = append(wrong, err)
			}
		}
	}
	return errors.Join(wrong...)
}

func (p *put) compare(pg *page) error {
	full := p.site.full(pg.path)
	fi, err := pg.dir.Lstat(base(pg.path))
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return fmt.Errorf("%s cannot be looked at: %w; make its folder readable", full, reason(err))
	case fi.IsDir():
		return fmt.Errorf("%s is a folder where a page should go; move it away", full)
	case !fi.Mode().IsRegular():
		return fmt.Errorf("%s is a link or device where a page should go; remove it", full)
	}
	pg.stamp = fi.ModTime().UnixNano()
	if fi.Size() == pg.size {
		same, err := holds(pg.dir, base(pg.path), pg.Data)
		if err != nil {
			return fmt.Errorf("%s cannot be read: %w; make it readable or remove it", full, reason(err))
		}
		if same {
			pg.state = isSame
			return nil
		}
	}
	// An empty file may be the trace of a power cut, and holds nobody's work.
	if pg.before.group == nil && !p.site.lost && fi.Size() > 0 {
		return fmt.Errorf("%s was not written by paceleaf; move it away", full)
	}
	pg.state = isChanged
	return nil
}

func (p *put) writes() []*page {
	var writes []*page
	for i := range p.pages {
		if p.pages[i].state != isSame {
			writes = append(writes, &p.pages[i])
		}
	}
	return writes
}

// announce writes to the journal what will be on the disk before it is.
func (p *put) announce(writes []*page) error {
	l := journalLine{Group: p.group.name, Folders: p.missing}
	for _, pg := range writes {
		l.Paths = append(l.Paths, pg.path)
	}
	if err := at("journal", l.Group); err != nil {
		return err
	}
	return p.site.note(l)
}

func (p *put) makeFolders() error {
	for _, folder := range p.missing {
		if err := p.site.makeFolder(folder); err != nil {
			return err
		}
	}
	for i := range p.pages {
		pg := &p.pages[i]
		folder := parent(pg.path)
		if p.folders[folder] == nil {
			dir, _, err := p.site.openFolder(folder)
			if err == nil && dir == nil {
				err = fmt.Errorf("%s was removed while it was being filled; build again", p.site.full(folder))
			}
			if err != nil {
				return err
			}
			p.folders[folder] = dir
		}
		pg.dir = p.folders[folder]
	}
	return nil
}

// stage writes a page under its temporary name, in the folder of its own: only
// there is a rename sure to be one step.
func (p *put) stage(pg *page) error {
	if err := at("stage", pg.path); err != nil {
		return err
	}
	name := base(pg.path) + tmpEnding
	const flags = os.O_WRONLY | os.O_CREATE | os.O_EXCL
	f, err := pg.dir.OpenFile(name, flags, filePerm(pg.path))
	if errors.Is(err, fs.ErrExist) { // a trace of a power cut
		pg.dir.Remove(name)
		f, err = pg.dir.OpenFile(name, flags, filePerm(pg.path))
	}
	if err != nil {
		return p.site.unwritten(pg.path, err)
	}
	_, err = f.Write(pg.Data)
	if fi, serr := f.Stat(); serr == nil {
		pg.stamp = fi.ModTime().UnixNano()
	}
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err != nil {
		return p.site.unwritten(pg.path, err)
	}
	return nil
}

// rename gives the pages their names, one after another. Should one fail all
// the same (on Windows, because somebody has the old page open), those before
// it are put back: each old page keeps a second name until all are done.
func (p *put) rename(writes []*page) error {
	for i, pg := range writes {
		if pg.state == isChanged && i < len(writes)-1 {
			name := base(pg.path)
			pg.dir.Remove(name + keptEnding)
			// Where a disk knows no second names we go without.
			pg.kept = pg.dir.Link(name, name+keptEnding) == nil
		}
		err := at("rename", pg.path)
		if err == nil {
			err = pg.dir.Rename(base(pg.path)+tmpEnding, base(pg.path))
		}
		if err != nil {
			p.putBack(writes[:i])
			p.clear(writes)
			return fmt.Errorf("%s cannot be replaced: %w; close whatever has it open, then build again", p.site.full(pg.path), reason(err))
		}
	}
	for _, pg := range writes {
		if pg.kept && pg.dir.Remove(base(pg.path)+keptEnding) != nil {
			p.site.leaveJournal()
		}
	}
	return nil
}

func (p *put) putBack(done []*page) {
	for _, pg := range done {
		name := base(pg.path)
		switch {
		case pg.state == isNew:
			p.torn = pg.dir.Remove(name) != nil || p.torn
		case pg.kept:
			p.torn = pg.dir.Rename(name+keptEnding, name) != nil || p.torn
		default:
			p.torn = true
		}
	}
}

// clear removes what was staged; what is gone already is no matter.
func (p *put) clear(staged []*page) {
	for _, pg := range staged {
		for _, ending := range []string{tmpEnding, keptEnding} {
			if err := pg.dir.Remove(base(pg.path) + ending); err != nil && !absent(err) {
				p.site.leaveJournal()
			}
		}
	}
}

// leaveJournal lets the next run sweep what could not be removed now.
func (s *Site) leaveJournal() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.untidy = true
}
