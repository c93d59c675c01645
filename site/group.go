package site

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
)

// group is the files of one client, or of the overview.
type group struct {
	name, key string

	// files is sorted by path. Workers replace it, never change it in place:
	// another may be reading it.
	files []record

	seen    bool // mentioned in this run, so not gone
	putting bool // a worker is at it
	written bool // put in this run
	dropped bool
}

func sortRecords(files []record) {
	slices.SortFunc(files, func(a, b record) int { return cmp.Compare(a.path, b.path) })
}

// record finds a file of the group, or gives one that nobody looks at.
func (g *group) record(path string) *record {
	i, found := slices.BinarySearchFunc(g.files, path, func(r record, p string) int { return cmp.Compare(r.path, p) })
	if !found {
		return &record{}
	}
	return &g.files[i]
}

func (g *group) remove(path string) {
	g.files = slices.DeleteFunc(slices.Clone(g.files), func(r record) bool { return r.path == path })
}

// Fresh reports whether a group was last written under this key and all its
// files are still as we wrote them. Size and time of change tell; only where
// the time leaves a doubt is the file read. Whoever gets false calls Put, or
// Keep; the group's old files stay until then.
func (s *Site) Fresh(name, key string) bool {
	s.run.RLock()
	defer s.run.RUnlock()

	s.mu.Lock()
	g := s.groups[name]
	if g == nil || s.closed {
		s.mu.Unlock()
		return false
	}
	g.seen = true
	files := g.files
	stood, _, _ := strings.Cut(g.key, noteMark)
	fresh := key != "" && stood == key && !g.putting && !g.dropped && s.owns(g, files)
	written := g.written
	s.mu.Unlock()
	if !fresh || written {
		return fresh
	}

	restamped, fresh := s.allSame(files)

	s.mu.Lock()
	defer s.mu.Unlock()
	// Another group may have taken a path while we looked.
	if !fresh || g.putting || g.written || !s.owns(g, files) {
		return false
	}
	if restamped != nil {
		g.files, s.stampsStale = restamped, true
	}
	s.hold(g)
	return true
}

// allSame looks at every file. It gives a list with new stamps if one of the
// old ones was in doubt.
func (s *Site) allSame(files []record) (restamped []record, same bool) {
	for i, rec := range files {
		stamp, same := s.same(rec)
		if !same {
			return nil, false
		}
		if stamp != rec.stamp || stamp >= s.born {
			if restamped == nil {
				restamped = slices.Clone(files)
			}
			restamped[i].stamp = stamp
		}
	}
	return restamped, true
}

// owns reports whether no other group has taken one of these files. mu is held.
func (s *Site) owns(g *group, files []record) bool {
	for _, rec := range files {
		if c := s.claims[fold(rec.path)]; c.group != g || c.path != rec.path {
			return false
		}
	}
	return true
}

// hold speaks for all paths that are still the group's. mu is held.
func (s *Site) hold(g *group) {
	for _, rec := range g.files {
		if c := s.claims[fold(rec.path)]; c.group == g && !c.held {
			c.held = true
			s.claims[fold(rec.path)] = c
		}
	}
}

// Keep leaves a group as it is: what a therapist typed for it is wrong this
// time, so its earlier pages remain. A group that has none gets none.
func (s *Site) Keep(name string) {
	s.run.RLock()
	defer s.run.RUnlock()
	s.mu.Lock()
	defer s.mu.Unlock()
	if g := s.groups[name]; g != nil {
		g.seen, g.dropped = true, false
		s.hold(g)
	}
}

// KeepBut leaves all groups as they are but those whose names begin with prefix: a run that makes only these must say no more
// of the others.
func (s *Site) KeepBut(prefix string) {
	s.run.RLock()
	defer s.run.RUnlock()
	s.mu.Lock()
	defer s.mu.Unlock()
	for name, g := range s.groups {
		if !strings.HasPrefix(name, prefix) {
			g.seen, g.dropped = true, false
			s.hold(g)
		}
	}
}

// Drop removes a group's files at Close, also in a partial run.
func (s *Site) Drop(name string) {
	s.run.RLock()
	defer s.run.RUnlock()
	s.mu.Lock()
	defer s.mu.Unlock()
	if g := s.groups[name]; g != nil {
		g.dropped = true
	}
}

// dropGone removes the groups that were dropped or not mentioned.
func (s *Site) dropGone() {
	mentioned := false
	for _, g := range s.groups {
		mentioned = mentioned || g.seen
	}
	complete := mentioned && !s.partial
	for _, g := range s.groups {
		if s.takeover {
			s.yield(g)
		}
		if g.dropped || complete && !g.seen {
			s.dropGroup(g)
		}
	}
	if complete && s.lost {
		s.lost, s.changed = false, true
	}
}

// yield forgets the files that another group has taken over.
func (s *Site) yield(g *group) {
	if s.owns(g, g.files) {
		return
	}
	kept := make([]record, 0, len(g.files))
	for _, rec := range g.files {
		if c := s.claims[fold(rec.path)]; c.group == g && c.path == rec.path {
			kept = append(kept, rec)
		}
	}
	g.files, g.key, s.changed = kept, "", true
}

func (s *Site) dropGroup(g *group) {
	_, left := s.removeAll(g, g.files)
	s.changed = true
	g.key, g.files = "", left
	if len(left) == 0 {
		delete(s.groups, g.name)
	}
}

// removeAll removes files of a group that it no longer wants, and gives back
// those that could not be removed.
func (s *Site) removeAll(g *group, stale []record) (removed int, left []record) {
	for _, rec := range stale {
		s.mu.Lock()
		c := s.claims[fold(rec.path)]
		ours := c.group == g && c.path == rec.path
		// Spelt otherwise, another page has this place. Where A and a are one
		// file, removing the old would remove the new.
		taken := c.group != nil && !ours && (c.path == rec.path || s.foldsCase)
		s.mu.Unlock()
		if taken {
			continue
		}
		gone, err := s.removeFile(rec.path)
		if err != nil {
			left = append(left, rec)
		}
		if gone {
			removed++
		}
		s.mu.Lock()
		if err != nil {
			s.trouble = append(s.trouble, err)
		} else if ours {
			delete(s.claims, fold(rec.path))
		}
		s.emptied[parent(rec.path)] = true
		s.mu.Unlock()
	}
	return removed, left
}

// removeFile removes a file of ours, also one that was changed since. A folder
// or link that stands in its place is not ours, and stays.
func (s *Site) removeFile(path string) (gone bool, err error) {
	if err := at("remove", path); err != nil {
		return false, err
	}
	fi, err := s.root.Lstat(path)
	if absent(err) || err == nil && !fi.Mode().IsRegular() {
		return false, nil
	}
	if err == nil {
		err = s.root.Remove(path)
	}
	if err != nil && !absent(err) {
		return false, fmt.Errorf("%s is out of date and cannot be removed: %w; remove it by hand", s.full(path), reason(err))
	}
	return true, nil
}

// mention notes that a group is not gone, whatever becomes of it.
func (s *Site) mention(name string) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.closed {
		return errors.New("the output folder is closed; open it again")
	}
	if g := s.groups[name]; g != nil {
		g.seen = true
	}
	return nil
}
