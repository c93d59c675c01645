package site

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"github.com/gofrs/flock"
)

// Site is one run over one output folder. Any number of workers may call
// Fresh, Put, Keep and Drop at once.
type Site struct {
	dir  string // as the caller wrote it, for messages
	abs  string // from the root of the disk, with a separator at the end
	root *os.Root
	only *flock.Flock // keeps other runs out

	// run is held shared by workers, alone by Close.
	run    sync.RWMutex
	closed bool

	// mu guards everything below it; no file is touched while it is held.
	mu          sync.Mutex
	groups      map[string]*group
	claims      map[string]claim // by folded path
	folders     map[string]bool  // folders that we made
	emptied     map[string]bool  // folders that lost a file in this run
	tops        map[string]*os.Root
	trouble     []error // told by Close: nothing is wrong with the new pages
	partial     bool
	changed     bool // the manifest may differ
	stampsStale bool
	takeover    bool // a path went from one group to another
	untidy      bool // something of ours lies about that only the journal knows

	journalMu sync.Mutex
	journal   *os.File

	// Set by Open.
	manifestSum [sha256.Size]byte
	born        int64 // when the stamps were written
	lost        bool  // files of ours may lie here that no manifest lists
	foldsCase   bool  // the file system takes A and a for the same
}

// claim says whose a path is. One that is held was spoken for in this run.
type claim struct {
	path  string
	group *group
	held  bool
}

// testOnlyStep lets a test fail or end the process at any step.
var testOnlyStep func(step, path string) error

func at(step, path string) error {
	if testOnlyStep == nil {
		return nil
	}
	return testOnlyStep(step, path)
}

// Open opens an output folder, making it if need be, and keeps other runs out
// until Close. What an earlier run left half done is cleared up here.
func Open(dir string) (*Site, error) {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return nil, fmt.Errorf("%s cannot be made: %w; choose another output folder", dir, reason(err))
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be opened: %w; choose another output folder", dir, reason(err))
	}
	abs, err := filepath.Abs(dir)
	if err != nil {
		root.Close()
		return nil, fmt.Errorf("%s cannot be found: %w; give its full path", dir, err)
	}
	s := &Site{
		dir: dir, abs: abs + string(filepath.Separator), root: root,
		groups: map[string]*group{}, claims: map[string]claim{},
		folders: map[string]bool{}, emptied: map[string]bool{}, tops: map[string]*os.Root{},
	}
	if err := s.ours(); err != nil {
		root.Close()
		return nil, err
	}
	if err := s.lock(); err != nil {
		root.Close()
		return nil, err
	}
	if err := s.load(); err != nil {
		s.closeJournal(true)
		s.unlock()
		root.Close()
		return nil, err
	}
	return s, nil
}

// signs are the files by which we know a folder of ours.
var signs = []string{manifestName, stampsName, journalName}

// ours refuses a folder that somebody else has filled.
func (s *Site) ours() error {
	names, err := s.names()
	if err != nil {
		return err
	}
	if slices.ContainsFunc(names, func(name string) bool { return slices.Contains(signs, name) }) {
		return nil
	}
	for _, name := range names {
		if !harmless(name) {
			return fmt.Errorf("%s holds %s and was not made by paceleaf; name a new or an empty folder", s.dir, name)
		}
	}
	return nil
}

// harmless reports whether a folder with this file still counts as empty: ours
// from before the first manifest, or what a desktop leaves in every folder.
func harmless(name string) bool {
	return name == lockName || strings.HasSuffix(name, tmpEnding) ||
		slices.Contains([]string{".DS_Store", "Thumbs.db", "desktop.ini"}, name)
}

// names lists the output folder itself, not what lies deeper.
func (s *Site) names() ([]string, error) {
	d, err := s.root.Open(".")
	if err == nil {
		defer d.Close()
		var names []string
		if names, err = d.Readdirnames(-1); err == nil || err == io.EOF {
			slices.Sort(names)
			return names, nil
		}
	}
	return nil, fmt.Errorf("%s cannot be listed: %w; choose another output folder", s.dir, reason(err))
}

// load reads what earlier runs wrote, under the lock.
func (s *Site) load() error {
	if err := at("load", ""); err != nil {
		return err
	}
	names, err := s.names()
	if err != nil {
		return err
	}
	before := slices.ContainsFunc(names, func(name string) bool { return slices.Contains(signs, name) })

	err = s.readManifest()
	var newer newerError
	var path *fs.PathError
	switch {
	case err == nil:
		s.readStamps()
	case errors.As(err, &newer):
		return newer
	case errors.Is(err, fs.ErrNotExist) && !before:
		// A new folder. The manifest goes in first, or a run that breaks off
		// would leave a folder that the next one takes for a stranger's.
		if err := s.writeManifest(); err != nil {
			return err
		}
	case errors.As(err, &path) && !errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s cannot be read: %w; make it readable, then build again", s.full(manifestName), reason(err))
	default: // damaged, or removed while our other files are still here
		s.lost, s.changed = true, true
		s.salvage()
	}

	whole, err := s.replay()
	if err != nil {
		return err
	}
	if !whole {
		s.lost = true
	}
	if s.lost {
		s.sweep()
	}
	for _, name := range names {
		if strings.HasSuffix(name, tmpEnding) {
			s.root.Remove(name)
		}
	}
	for _, g := range s.groups {
		sortRecords(g.files)
	}
	_, err = s.root.Lstat(strings.ToUpper(manifestName))
	s.foldsCase = err == nil
	return nil
}

// Partial tells that not every group will be mentioned in this run: those that
// are not stay as they are. Call it also before a Close that comes early.
func (s *Site) Partial() {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.partial = true
}

// Close ends the run. It waits for workers, removes the groups that are gone,
// writes the manifest last and lets other runs in. A run that mentioned no
// group at all removes none. Its errors speak of old files and of the
// manifest; pages that were put are in place.
func (s *Site) Close() error {
	s.run.Lock()
	defer s.run.Unlock()
	if s.closed {
		return nil
	}
	s.closed = true
	s.closeTops()
	s.dropGone()
	s.removeEmptied()
	err := s.save()
	slices.SortFunc(s.trouble, func(a, b error) int { return strings.Compare(a.Error(), b.Error()) })
	return errors.Join(errors.Join(s.trouble...), err, s.unlock(), s.root.Close())
}

// save writes the manifest, then the stamps that belong to it, and only then
// ends the journal: broken off anywhere between, the next run knows.
func (s *Site) save() error {
	if s.changed {
		if err := s.writeManifest(); err != nil {
			return errors.Join(err, s.closeJournal(true))
		}
	}
	if s.stampsStale {
		if err := s.writeStamps(); err != nil {
			return errors.Join(err, s.closeJournal(true))
		}
	}
	return s.closeJournal(s.untidy)
}

// full is a path as the reader knows it, for messages.
func (s *Site) full(path string) string { return filepath.Join(s.dir, filepath.FromSlash(path)) }
