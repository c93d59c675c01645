package site

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"slices"
)

// Renew writes files into a folder, each by one rename, and replaces there only
// what Paceleaf has written: a file that holds the mark. All are looked at
// before the first is written.
func Renew(dir string, files map[string][]byte, mark []byte) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("%s cannot be made: %w; choose another folder", dir, reason(err))
	}
	root, err := os.OpenRoot(dir)
	if err != nil {
		return fmt.Errorf("%s cannot be opened: %w; name another folder", dir, reason(err))
	}
	defer root.Close()
	names := slices.Sorted(maps.Keys(files))
	for _, name := range names {
		if err := renewable(root, dir, name, mark); err != nil {
			return err
		}
	}
	for _, name := range names {
		aside := name + tmpEnding
		err := root.WriteFile(aside, files[name], 0o644)
		if err == nil {
			err = root.Rename(aside, name)
		}
		if err != nil {
			return fmt.Errorf("%s cannot be written: %w; free the disk or the folder", path.Join(dir, name), reason(err))
		}
	}
	return nil
}

// renewable lets through a name that is free, and a file with the mark.
func renewable(root *os.Root, dir, name string, mark []byte) error {
	if err := checkAdded(name); err != nil {
		return err
	}
	info, err := root.Lstat(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err == nil && info.Mode().IsRegular() {
		var data []byte
		if data, err = root.ReadFile(name); err == nil && bytes.Contains(data, mark) {
			return nil
		}
	}
	if err != nil {
		return fmt.Errorf("%s cannot be read: %w; choose another folder", path.Join(dir, name), reason(err))
	}
	return fmt.Errorf("%s is there already, and Paceleaf did not write it; choose another folder, or move it away first", path.Join(dir, name))
}
