package site

import (
	"bufio"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"slices"
	"strconv"
)

// The manifest says what we wrote. It is sorted and holds no time, so the same
// pages give the same manifest. One line a group, so that a diff can be read.
//
//	{"format":1,"folders":["hand","hand/tern-04"],"groups":[
//	{"group":"tern-04","key":"…","files":[{"path":"hand/tern-04/handout.html","size":61234,"sha256":"…"}]}
//	]}
//
// A size of -1 stands for a file of which only the path is known: it was being
// written when a run broke off.

const (
	manifestName = ".paceleaf.json"
	formatNumber = 1
	manifestHead = `{"format":1,`
)

// Manifest is the name of the list of all that was written to a folder: a folder that holds it is ours.
const Manifest = manifestName

// unknown is the size of a file of which only the path is known.
const unknown = -1

// record is what we know of one file that we wrote.
type record struct {
	path  string
	size  int64
	sum   [sha256.Size]byte
	stamp int64 // time of last change in ns, 0 if not known
}

// newerError stops a run before it touches what a newer paceleaf wrote.
type newerError struct {
	file   string
	format int
}

func (e newerError) Error() string {
	return fmt.Sprintf("%s has format %d, written by a newer paceleaf than this (format %d); use the newer one, or another output folder",
		e.file, e.format, formatNumber)
}

// readManifest fills folders, groups and claims. Any error but a newerError
// means that the manifest is damaged or absent; nothing is filled then.
func (s *Site) readManifest() error {
	f, err := s.root.Open(manifestName)
	if err != nil {
		return err
	}
	defer f.Close()
	sum := sha256.New()
	if err = s.parseManifest(io.TeeReader(f, sum)); err == nil {
		s.manifestSum = [sha256.Size]byte(sum.Sum(nil))
		return nil
	}
	s.folders, s.groups, s.claims = map[string]bool{}, map[string]*group{}, map[string]claim{}
	// A newer format may be laid out in ways that we take for damage.
	var head struct{ Format int }
	if data, rerr := s.root.ReadFile(manifestName); rerr == nil && json.Unmarshal(data, &head) == nil && head.Format > formatNumber {
		return newerError{s.full(manifestName), head.Format}
	}
	return err
}

// parseManifest reads the very layout that encodeManifest writes, and takes
// any other for damage. With the json module, opening a folder of 10,000
// clients took longer than all the rest of a build that has nothing to do.
func (s *Site) parseManifest(r io.Reader) error {
	lines := newLines(r)
	head := lines.next()
	head.take(manifestHead)
	s.lost = head.has(`"lost":true,`)
	head.take(`"folders":[`)
	for head.list() {
		head.take(`"`)
		folder := head.until(`"`)
		if err := checkPath(folder); err != nil {
			return err
		}
		s.folders[folder] = true
	}
	head.take(`,"groups":[`)
	head.end()
	return errors.Join(lines.rows(head, s.parseGroup), lines.err)
}

func (s *Site) parseGroup(l *line) error {
	l.take(`{"group":"`)
	g := &group{name: l.until(`","key":"`)}
	g.key = l.until(`","files":`)
	l.take(`[`)
	for l.list() {
		rec, err := parseRecord(l)
		if err != nil {
			return err
		}
		if _, twice := s.claims[fold(rec.path)]; twice {
			return fmt.Errorf("%s stands twice", rec.path)
		}
		g.files = append(g.files, rec)
		s.claims[fold(rec.path)] = claim{path: rec.path, group: g}
	}
	l.take(`}`)
	if s.groups[g.name] != nil {
		return fmt.Errorf("group %q stands twice", g.name)
	}
	g.files = slices.Clip(g.files)
	s.groups[g.name] = g
	return errors.Join(checkWord("group", g.name), checkWord("key", g.key))
}

func parseRecord(l *line) (record, error) {
	l.take(`{"path":"`)
	rec := record{path: l.until(`","size":`)}
	rec.size = l.number(`,"sha256":"`)
	sum := l.until(`"}`)
	if rec.size < unknown {
		return rec, fmt.Errorf("%s has a size of %d", rec.path, rec.size)
	}
	if rec.size != unknown {
		if n, err := hex.Decode(rec.sum[:], []byte(sum)); err != nil || n != sha256.Size {
			return rec, fmt.Errorf("%s has no hash", rec.path)
		}
	}
	return rec, checkPath(rec.path)
}

// writeManifest writes the manifest if it differs from the one that was read.
func (s *Site) writeManifest() error {
	sum, commit, err := s.writeAside(manifestName, func(w *bufio.Writer) { s.encodeManifest(w) })
	if err != nil {
		return err
	}
	if sum == s.manifestSum {
		return s.root.Remove(manifestName + tmpEnding)
	}
	if err := commit(); err != nil {
		return err
	}
	s.manifestSum, s.stampsStale = sum, true
	return nil
}

// encodeManifest needs no JSON escapes: checkPath and checkWord let nothing
// through that would want one. The json module would take four times as long.
func (s *Site) encodeManifest(w *bufio.Writer) {
	line := []byte(manifestHead)
	if s.lost {
		line = append(line, `"lost":true,`...)
	}
	line = append(line, `"folders":[`...)
	for i, folder := range slices.Sorted(maps.Keys(s.folders)) {
		line = appendString(line, i, folder)
	}
	line = append(line, `],"groups":[`...)
	w.Write(line)
	for i, name := range slices.Sorted(maps.Keys(s.groups)) {
		line = line[:0]
		if i > 0 {
			line = append(line, ',')
		}
		g := s.groups[name]
		line = append(line, "\n{\"group\":\""...)
		line = append(line, g.name...)
		line = append(line, `","key":"`...)
		line = append(line, g.key...)
		line = append(line, `","files":[`...)
		for j, rec := range g.files {
			line = appendRecord(line, j, rec)
		}
		line = append(line, `]}`...)
		w.Write(line)
	}
	w.WriteString("\n]}\n")
}

func appendString(line []byte, i int, word string) []byte {
	if i > 0 {
		line = append(line, ',')
	}
	line = append(line, '"')
	line = append(line, word...)
	return append(line, '"')
}

func appendRecord(line []byte, i int, rec record) []byte {
	if i > 0 {
		line = append(line, ',')
	}
	line = append(line, `{"path":"`...)
	line = append(line, rec.path...)
	line = append(line, `","size":`...)
	line = strconv.AppendInt(line, rec.size, 10)
	line = append(line, `,"sha256":"`...)
	if rec.size != unknown {
		line = hex.AppendEncode(line, rec.sum[:])
	}
	return append(line, `"}`...)
}

// writeAside writes a file of ours under its temporary name; commit gives it
// its own.
func (s *Site) writeAside(name string, encode func(*bufio.Writer)) (sum [sha256.Size]byte, commit func() error, err error) {
	if err := at("stage", name); err != nil {
		return sum, nil, err
	}
	f, err := s.root.OpenFile(name+tmpEnding, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return sum, nil, s.unwritten(name, err)
	}
	h := sha256.New()
	w := bufio.NewWriterSize(io.MultiWriter(f, h), 1<<16)
	encode(w)
	err = w.Flush()
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err != nil {
		s.root.Remove(name + tmpEnding)
		return sum, nil, s.unwritten(name, err)
	}
	return [sha256.Size]byte(h.Sum(nil)), func() error {
		if err := at("rename", name); err != nil {
			return err
		}
		if err := s.root.Rename(name+tmpEnding, name); err != nil {
			return s.unwritten(name, err)
		}
		return nil
	}, nil
}

func (s *Site) unwritten(name string, err error) error {
	instead := "free the disk or the folder, then build again"
	if errors.Is(err, fs.ErrPermission) {
		instead = "make it writable, then build again"
	}
	return fmt.Errorf("%s cannot be written: %w; %s", s.full(name), reason(err), instead)
}
