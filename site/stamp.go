package site

import (
	"bufio"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"slices"
	"strconv"
	"time"
)

// A stamp is the time at which a file was last changed, as the file system
// tells it. It saves reading a page to learn that it is still ours. Stamps
// differ from run to run, so they stand beside the manifest, not in it.
//
//	{"format":1,"of":"hash of the manifest","stamps":[
//	{"path":"hand/tern-04/handout.html","ns":1764081852123456789}
//	]}
//
// Two rules keep a stamp honest. Stamps count only under the manifest that
// they were written for ("of"). And a file changed in the same tick of the
// clock in which the stamps were written could have been changed again without
// a trace, so a stamp not older than the stamps' own file proves nothing.

const stampsName = ".paceleaf-stamps.json"

// readStamps gives each recorded file its stamp. Without stamps everything
// still works: pages are read and hashed instead.
func (s *Site) readStamps() {
	f, err := s.root.Open(stampsName)
	if err != nil {
		return
	}
	defer f.Close()
	fi, err := f.Stat()
	if err != nil {
		return
	}
	of, err := parseStamps(f, func(path string, ns int64) error {
		if c := s.claims[fold(path)]; c.group != nil {
			c.group.record(path).stamp = ns
		}
		return nil
	})
	if err == nil && of == hex.EncodeToString(s.manifestSum[:]) {
		s.born = fi.ModTime().UnixNano()
	}
}

// salvage lists the files that we wrote by their stamps, after the manifest
// was lost. It knows no groups, so they all fall to the group without a name:
// a page that is put again leaves it, what remains is removed at Close.
func (s *Site) salvage() {
	f, err := s.root.Open(stampsName)
	if err != nil {
		return
	}
	defer f.Close()
	parseStamps(f, func(path string, _ int64) error {
		if err := checkPath(path); err != nil {
			return err
		}
		s.adopt("", path)
		for folder := parent(path); folder != ""; folder = parent(folder) {
			s.folders[folder] = true
		}
		return nil
	})
}

func parseStamps(r io.Reader, do func(path string, ns int64) error) (of string, err error) {
	lines := newLines(r)
	head := lines.next()
	head.take(`{"format":1,"of":"`)
	of = head.until(`","stamps":[`)
	head.end()
	err = lines.rows(head, func(l *line) error {
		l.take(`{"path":"`)
		path := l.until(`","ns":`)
		ns := l.number(`}`)
		if l.bad {
			return errLayout
		}
		return do(path, ns)
	})
	return of, errors.Join(err, lines.err)
}

func (s *Site) writeStamps() error {
	s.awaitTick()
	_, commit, err := s.writeAside(stampsName, func(w *bufio.Writer) {
		line := fmt.Appendf(nil, `{"format":1,"of":"%x","stamps":[`, s.manifestSum)
		w.Write(line)
		comma := ""
		for _, name := range slices.Sorted(maps.Keys(s.groups)) {
			for _, rec := range s.groups[name].files {
				line = append(line[:0], comma...)
				line = append(line, "\n{\"path\":\""...)
				line = append(line, rec.path...)
				line = append(line, `","ns":`...)
				line = strconv.AppendInt(line, rec.stamp, 10)
				line = append(line, '}')
				w.Write(line)
				comma = ","
			}
		}
		w.WriteString("\n]}\n")
	})
	if err != nil {
		return err
	}
	return commit()
}

// longestTick is how long we wait for the file system's clock: a kernel's tick
// is 1 to 10 ms. A clock of whole seconds is not waited for; the pages written
// in its last second are then read once in the next run. Chosen.
const longestTick = 20 * time.Millisecond

// awaitTick waits until the file system's clock is past the newest page. Then
// no stamp is in doubt, and the next run reads no page.
func (s *Site) awaitTick() {
	newest := int64(0)
	for _, g := range s.groups {
		for _, rec := range g.files {
			newest = max(newest, rec.stamp)
		}
	}
	f, err := s.root.OpenFile(stampsName+tmpEnding, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return
	}
	defer f.Close()
	for waited := time.Duration(0); waited < longestTick; waited += time.Millisecond {
		if _, err := f.WriteAt([]byte("{"), 0); err != nil {
			return
		}
		if fi, err := f.Stat(); err != nil || fi.ModTime().UnixNano() > newest {
			return
		}
		time.Sleep(time.Millisecond)
	}
}

// same reports whether a file is still as we wrote it, and its stamp of now.
func (s *Site) same(rec record) (stamp int64, same bool) {
	// One call to the system, where os.Root takes one for each folder on the
	// way. It only looks; whatever is read or written goes through os.Root.
	fi, err := os.Lstat(s.abs + rec.path)
	if err != nil || !fi.Mode().IsRegular() || fi.Size() != rec.size {
		return 0, false
	}
	stamp = fi.ModTime().UnixNano()
	if rec.stamp == stamp && stamp < s.born {
		return stamp, true
	}
	sum, err := s.sumOf(rec.path)
	return stamp, err == nil && sum == rec.sum
}
