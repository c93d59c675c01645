package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
)

// Add and Fill write into a folder that a person keeps: Add one new file, Fill
// many, but only into an empty folder. Neither changes a file that is there.

// Add adds one file below a folder, by one rename. A file that is there already
// is an error.
func Add(dir, name string, data []byte) error {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return fmt.Errorf("%s cannot be opened: %w; name another folder", dir, reason(err))
	}
	defer root.Close()
	return add(root, dir, name, data)
}

func add(root *os.Root, dir, name string, data []byte) error {
	if err := checkAdded(name); err != nil {
		return err
	}
	if _, err := root.Lstat(name); err == nil {
		return fmt.Errorf("%s is there already; change it by hand, or move it away first", path.Join(dir, name))
	}
	if err := root.MkdirAll(path.Dir(name), 0o755); err != nil {
		return fmt.Errorf("%s cannot be made: %w; free the folder", path.Join(dir, path.Dir(name)), reason(err))
	}
	aside := name + tmpEnding
	if err := root.WriteFile(aside, data, 0o644); err != nil {
		return fmt.Errorf("%s cannot be written: %w; free the disk or the folder", path.Join(dir, name), reason(err))
	}
	// a link refuses to take the place of a file that came in the meantime
	err := root.Link(aside, name)
	if err != nil && !errors.Is(err, fs.ErrExist) {
		return root.Rename(aside, name) // a disk without links
	}
	if gone := root.Remove(aside); err == nil {
		err = gone
	}
	return err
}

// checkAdded lets through clean relative names; the names of a person's files
// are freer than those of pages.
func checkAdded(name string) error {
	if !fs.ValidPath(name) || strings.ContainsAny(name, `\:`) {
		return fmt.Errorf("%q is no name of a file here; write a relative name with /", name)
	}
	return nil
}

// telling is the name that says best what a folder holds: one that a person sees.
func telling(entries []fs.DirEntry) string {
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			return e.Name()
		}
	}
	return entries[0].Name()
}

// Fill writes files into a folder that is empty or not there yet.
func Fill(dir string, files map[string][]byte) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("%s cannot be made: %w; choose another folder", dir, reason(err))
	}
	entries, err := os.ReadDir(dir)
	if err != nil {
		return fmt.Errorf("%s cannot be read: %w; choose another folder", dir, reason(err))
	}
	if len(entries) > 0 {
		return fmt.Errorf("%s is not empty (%s is in it); choose an empty folder or a new name", dir, telling(entries))
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return fmt.Errorf("%s cannot be opened: %w; choose another folder", dir, reason(err))
	}
	defer root.Close()
	names := make([]string, 0, len(files))
	for name := range files {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		if err := add(root, dir, name, files[name]); err != nil {
			return err
		}
	}
	return nil
}
