package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"syscall"
)

// What lies below these two speaks of a person's health: nobody but the owner
// of the account may read it. (Windows has no such bits; there the folder's
// own rights count.)
var private = []string{"hand", "desk"}

func isPrivate(path string) bool {
	first, _, _ := strings.Cut(path, "/")
	return slices.Contains(private, first)
}

func folderPerm(path string) fs.FileMode {
	if isPrivate(path) {
		return 0o700
	}
	return 0o755
}

func filePerm(path string) fs.FileMode {
	if isPrivate(path) {
		return 0o600
	}
	return 0o644
}

// openFolder opens the folder of a page. If it does not exist yet, it gives
// the names of the folders that have to be made, from the top. A link on the
// way is refused even if it stays inside: two clients would share a folder.
func (s *Site) openFolder(path string) (dir *os.Root, missing []string, err error) {
	if path == "" {
		dir, err = s.root.OpenRoot(".")
		return dir, nil, s.unopened(path, err)
	}
	steps := steps(path)
	top, err := s.top(steps[0])
	if err != nil {
		return nil, nil, err
	}
	if top == nil {
		return nil, steps, nil
	}
	for i, step := range steps[1:] {
		there, err := s.lookFolder(top, below(step), step)
		if err != nil {
			return nil, nil, err
		}
		if !there {
			return nil, steps[i+1:], nil
		}
	}
	dir, err = top.OpenRoot(below(path))
	return dir, nil, s.unopened(path, err)
}

// steps gives a/b/c as a, a/b, a/b/c.
func steps(path string) []string {
	var all []string
	for ; path != ""; path = parent(path) {
		all = append(all, path)
	}
	slices.Reverse(all)
	return all
}

// below is a path without its first folder.
func below(path string) string {
	if _, rest, deeper := strings.Cut(path, "/"); deeper {
		return rest
	}
	return "."
}

// top gives a folder at the top of the output, nil if it does not exist. It
// stays open until Close, which spares half of the calls for a new client.
func (s *Site) top(name string) (*os.Root, error) {
	s.mu.Lock()
	top := s.tops[name]
	s.mu.Unlock()
	if top != nil {
		return top, nil
	}
	if there, err := s.lookFolder(s.root, name, name); !there {
		return nil, err
	}
	top, err := s.root.OpenRoot(name)
	if err != nil {
		return nil, s.unopened(name, err)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if first := s.tops[name]; first != nil { // another worker was quicker
		top.Close()
		return first, nil
	}
	s.tops[name] = top
	return top, nil
}

func (s *Site) closeTops() {
	for _, top := range s.tops {
		top.Close()
	}
	clear(s.tops)
}

// lookFolder reports whether there is a folder, and refuses all else.
func (s *Site) lookFolder(dir *os.Root, name, path string) (there bool, err error) {
	fi, err := dir.Lstat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return false, nil
	case err != nil:
		return false, s.unopened(path, err)
	case fi.Mode()&fs.ModeSymlink != 0:
		return false, fmt.Errorf("%s is a link and pages are not written through links; remove it", s.full(path))
	case !fi.IsDir():
		return false, fmt.Errorf("%s is a file where a folder should be; move it away", s.full(path))
	}
	return true, nil
}

func (s *Site) unopened(path string, err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("%s cannot be opened: %w; make it readable or remove it", s.full(path), reason(err))
}

// makeFolder makes one folder. Another worker may be quicker; then it is its.
func (s *Site) makeFolder(path string) error {
	if err := at("mkdir", path); err != nil {
		return err
	}
	dir, name := s.root, path
	if strings.Contains(path, "/") {
		top, err := s.top(steps(path)[0])
		if err != nil {
			return err
		}
		if top == nil {
			return s.unwritten(path, fs.ErrNotExist)
		}
		dir, name = top, below(path)
	}
	err := dir.Mkdir(name, folderPerm(path))
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err != nil {
		return s.unwritten(path, err)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.folders[path], s.changed = true, true
	return nil
}

// removeEmptied removes folders that we made and that hold nothing any more.
// A folder with a foreign file in it does not go: the system refuses. Only
// Close calls this, so no worker can be about to write there.
func (s *Site) removeEmptied() {
	for folder := range s.emptied {
		for ; folder != "" && s.folders[folder]; folder = parent(folder) {
			if at("rmdir", folder) != nil {
				break
			}
			fi, err := s.root.Lstat(folder)
			if err == nil && fi.IsDir() && s.root.Remove(folder) != nil {
				break
			}
			delete(s.folders, folder)
			s.changed = true
		}
	}
}

// absent reports whether a file is not there, be it that its folder is gone or
// that a file has taken the folder's place.
func absent(err error) bool {
	return errors.Is(err, fs.ErrNotExist) || errors.Is(err, syscall.ENOTDIR)
}
