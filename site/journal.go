package site

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
)

// The manifest is written last, so a run that breaks off leaves pages that no
// manifest knows. The journal knows them: one line a group, written before the
// first of its files is. A run that ends well removes it; a run that finds one
// takes over its paths under an empty key, so that those groups are built
// again, and sweeps away what was half written.

const journalName = ".paceleaf-journal"

type journalLine struct {
	Group   string   `json:"group"`
	Paths   []string `json:"paths"`
	Folders []string `json:"folders,omitempty"`
}

// note writes one line before its files are written.
func (s *Site) note(l journalLine) error {
	data, err := json.Marshal(l)
	if err != nil {
		return err
	}
	s.journalMu.Lock()
	defer s.journalMu.Unlock()
	if s.journal == nil {
		f, err := s.root.OpenFile(journalName, os.O_WRONLY|os.O_CREATE|os.O_APPEND, 0o600)
		if err != nil {
			return s.unwritten(journalName, err)
		}
		s.journal = f
	}
	// The line end comes first too: an earlier run may have died in mid-line.
	if _, err := s.journal.Write(append(append([]byte{'\n'}, data...), '\n')); err != nil {
		return s.unwritten(journalName, err)
	}
	return nil
}

// replay takes over what a broken run wrote. whole is false if part of the
// journal cannot be read.
func (s *Site) replay() (whole bool, err error) {
	f, err := s.root.Open(journalName)
	if errors.Is(err, fs.ErrNotExist) {
		return true, nil
	}
	if err != nil {
		return false, fmt.Errorf("%s cannot be read: %w; make it readable, then build again", s.full(journalName), reason(err))
	}
	defer f.Close()
	s.stampsStale, s.changed = true, true
	whole = true
	lines := bufio.NewReader(f)
	for {
		text, err := lines.ReadBytes('\n')
		if l := (journalLine{}); len(text) > 1 {
			if json.Unmarshal(text, &l) == nil && l.sound() {
				s.retake(l)
			} else {
				whole = false
			}
		}
		if err == io.EOF {
			return whole, nil
		}
		if err != nil {
			return false, nil
		}
	}
}

func (l journalLine) sound() bool {
	for _, path := range append(l.Folders, l.Paths...) {
		if checkPath(path) != nil {
			return false
		}
	}
	return checkWord("group", l.Group) == nil
}

func (s *Site) retake(l journalLine) {
	for _, folder := range l.Folders {
		s.folders[folder] = true
	}
	for _, path := range l.Paths {
		s.adopt(l.Group, path)
		s.root.Remove(path + tmpEnding)
		s.root.Remove(path + keptEnding)
	}
}

// adopt gives a group a path of which nothing else is known, and makes the
// group and any former owner not fresh.
func (s *Site) adopt(name, path string) {
	g := s.groups[name]
	if g == nil {
		g = &group{name: name}
		s.groups[name] = g
	}
	g.key = ""
	old := s.claims[fold(path)]
	if old.group == g && old.path == path {
		return
	}
	if old.group != nil {
		old.group.key = ""
		old.group.remove(old.path)
	}
	g.files = append(g.files, record{path: path, size: unknown}) // load sorts
	s.claims[fold(path)] = claim{path: path, group: g}
}

// sweep removes temporary files wherever they lie. It walks the whole folder,
// so it is only called when the journal cannot say where they are.
func (s *Site) sweep() {
	fs.WalkDir(s.root.FS(), ".", func(path string, d fs.DirEntry, err error) error {
		if err == nil && d.Type().IsRegular() && strings.HasSuffix(path, tmpEnding) {
			s.root.Remove(path)
		}
		return nil
	})
}

// closeJournal ends the journal of a run; keep leaves it for the next run.
func (s *Site) closeJournal(keep bool) error {
	if s.journal != nil {
		s.journal.Close()
		s.journal = nil
	}
	if keep {
		return nil
	}
	if err := at("remove", journalName); err != nil {
		return err
	}
	if err := s.root.Remove(journalName); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s cannot be removed: %w; remove it by hand", s.full(journalName), reason(err))
	}
	return nil
}
