package source

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
)

// Folder is a folder laid over others: of two files of one name the first layer's is read, and names of all layers stand
// side by side. A clinic's own programs lie so over the shipped ones.
type Folder struct {
	layers []fs.FS
}

// Entry is a name in a folder.
type Entry struct {
	Name  string
	Dir   bool
	Layer int // from 0, the first
}

// Over lays folders over one another, the first on top. A nil layer is empty.
func Over(layers ...fs.FS) Folder { return Folder{layers} }

// List returns the names in a directory, sorted; none where there is no such directory. Hidden files and what editors leave
// behind are not listed. See Trouble for what could not be listed.
func (f Folder) List(dir string) []Entry {
	found, _ := f.list(dir)
	return found
}

// Trouble says why the list of a directory is not whole: too many names, or no permission. A directory that does not exist
// is no trouble.
func (f Folder) Trouble(dir string) error {
	_, err := f.list(dir)
	return err
}

func (f Folder) list(dir string) ([]Entry, error) {
	if err := allowed(dir); err != nil {
		return nil, err
	}
	found := map[string]Entry{}
	var trouble error
	for layer, fsys := range f.layers {
		names, err := namesIn(fsys, dir)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			trouble = err
		}
		for _, e := range names {
			if _, above := found[e.Name()]; !above && !leftover(e.Name()) {
				found[e.Name()] = Entry{e.Name(), isDir(fsys, dir, e), layer}
			}
		}
	}
	return slices.SortedFunc(maps.Values(found), func(a, b Entry) int { return strings.Compare(a.Name, b.Name) }), trouble
}

// namesIn reads a directory, but never more of it than the limit.
func namesIn(fsys fs.FS, dir string) ([]fs.DirEntry, error) {
	if fsys == nil {
		return nil, nil
	}
	d, err := fsys.Open(dir)
	if err != nil {
		return nil, plainError(dir, err)
	}
	defer d.Close()
	lister, ok := d.(fs.ReadDirFile)
	if !ok {
		return nil, fmt.Errorf("%s is no folder", dir)
	}
	names, err := lister.ReadDir(maxEntries + 1)
	switch {
	case err != nil && !errors.Is(err, io.EOF):
		return nil, plainError(dir, err)
	case len(names) > maxEntries:
		return nil, fmt.Errorf("%s holds more than %d files", dir, maxEntries)
	}
	return names, nil
}

// isDir follows a link to what it names.
func isDir(fsys fs.FS, dir string, e fs.DirEntry) bool {
	if e.Type()&fs.ModeSymlink == 0 {
		return e.IsDir()
	}
	info, err := fs.Stat(fsys, path.Join(dir, e.Name()))
	return err == nil && info.IsDir()
}

// leftover is a name that no person meant to be read.
func leftover(name string) bool {
	switch strings.ToLower(name) {
	case "thumbs.db", "desktop.ini":
		return true
	}
	return strings.HasPrefix(name, ".") || strings.HasSuffix(name, "~") || strings.HasSuffix(name, ".swp") || strings.HasSuffix(name, ".bak")
}

// Read returns a file of the first layer that has it, and which one that is. A file that cannot be read is an error even
// where a lower layer has one of that name: the wrong one must never be taken in silence.
func (f Folder) Read(name string) (data []byte, layer int, err error) {
	if err := allowed(name); err != nil {
		return nil, 0, err
	}
	for layer, fsys := range f.layers {
		if fsys == nil {
			continue
		}
		data, err := readLimited(fsys, name)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		return data, layer, err
	}
	return nil, 0, fmt.Errorf("%s: %w", name, fs.ErrNotExist)
}

// Layers returns the file of every layer that has it, the first on top: for files that are laid over one another by key.
// It stops above a layer that cannot be read; Read and Trouble say why.
func (f Folder) Layers(name string) (files [][]byte) {
	if allowed(name) != nil {
		return nil
	}
	for _, fsys := range f.layers {
		if fsys == nil {
			continue
		}
		data, err := readLimited(fsys, name)
		switch {
		case errors.Is(err, fs.ErrNotExist):
		case err != nil:
			return files
		default:
			files = append(files, data)
		}
	}
	return files
}

func readLimited(fsys fs.FS, name string) ([]byte, error) {
	file, err := fsys.Open(name)
	if err != nil {
		return nil, plainError(name, err)
	}
	defer file.Close()
	if info, err := file.Stat(); err == nil && info.IsDir() {
		return nil, fmt.Errorf("%s is a folder, not a file", name)
	}
	data, err := io.ReadAll(io.LimitReader(file, maxBytes+1))
	switch {
	case err != nil:
		return nil, plainError(name, err)
	case len(data) > maxBytes:
		return nil, fmt.Errorf("%s is longer than 1 MiB", name)
	}
	return data, nil
}

// plainError names the file and the reason, not the call that failed.
func plainError(name string, err error) error {
	var pe *fs.PathError
	if errors.As(err, &pe) {
		err = pe.Err
	}
	return fmt.Errorf("%s: %w", name, err)
}

// Exists reports whether a layer has the name, as a file or a directory.
func (f Folder) Exists(name string) bool {
	if allowed(name) != nil {
		return false
	}
	for _, fsys := range f.layers {
		if fsys == nil {
			continue
		}
		if _, err := fs.Stat(fsys, name); err == nil {
			return true
		}
	}
	return false
}

// allowed refuses names that lead out of the folder, or that mean different things on different machines.
func allowed(name string) error {
	if !fs.ValidPath(name) || strings.Contains(name, `\`) {
		return fmt.Errorf("%q is no name inside the folder", clipped(name))
	}
	return nil
}
