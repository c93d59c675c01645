package site

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// pages is a group's files as path and text, in pairs.
func pages(pairs ...string) []File {
	var files []File
	for i := 0; i < len(pairs); i += 2 {
		files = append(files, File{Path: pairs[i], Data: []byte(pairs[i+1])})
	}
	return files
}

func open(t *testing.T, dir string) *Site {
	t.Helper()
	s, err := Open(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.closeTops(); s.root.Close() })
	return s
}

func mustPut(t *testing.T, s *Site, name, key string, files []File) Written {
	t.Helper()
	w, err := s.Put(name, key, files)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func shut(t *testing.T, s *Site) {
	t.Helper()
	if err := s.Close(); err != nil {
		t.Fatal(err)
	}
}

// run builds groups in one run.
func run(t *testing.T, dir string, groups map[string][]File) {
	t.Helper()
	s := open(t, dir)
	for _, name := range slices.Sorted(maps.Keys(groups)) {
		mustPut(t, s, name, "k", groups[name])
	}
	shut(t, s)
}

// tree is every file below a folder with its text, and every folder.
// The stamps, which differ from run to run, are left out.
func tree(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		rel, _ := filepath.Rel(dir, path)
		rel = filepath.ToSlash(rel)
		switch {
		case err != nil:
			return err
		case rel == "." || rel == stampsName:
		case d.IsDir():
			all[rel+"/"] = ""
		default:
			data, err := os.ReadFile(path)
			all[rel] = string(data)
			return err
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// list is the tree without our own files, as one line.
func list(t *testing.T, dir string) string {
	t.Helper()
	var names []string
	for name, text := range tree(t, dir) {
		if name[0] != '.' && !strings.HasSuffix(name, "/") {
			names = append(names, name+"="+text)
		}
	}
	slices.Sort(names)
	return strings.Join(names, " ")
}

func wantList(t *testing.T, dir, want string) {
	t.Helper()
	if got := list(t, dir); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}

func wantError(t *testing.T, err error, text string) {
	t.Helper()
	switch {
	case err == nil:
		t.Errorf("no error; want %q", text)
	case !strings.Contains(err.Error(), text):
		t.Errorf("got %q\nwant %q", err, text)
	case !strings.Contains(err.Error(), "; "):
		t.Errorf("%q says no remedy", err)
	}
}

func write(t *testing.T, path, text string) {
	t.Helper()
	if err := errors.Join(os.MkdirAll(filepath.Dir(path), 0o755), os.WriteFile(path, []byte(text), 0o644)); err != nil {
		t.Fatal(err)
	}
}

// failAt lets one step on one path fail, once the test says so.
func failAt(t *testing.T, step, path string) {
	testOnlyStep = func(s, p string) error {
		if s == step && p == path {
			return errors.New("injected; none")
		}
		return nil
	}
	t.Cleanup(func() { testOnlyStep = nil })
}
