package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"io/fs"
	"regexp"
	"strings"
)

// Keys say whether a client's pages are still what its files make: the hash of its files and day-sheet rows, of its
// program's files, of clinic.toml, words and templates, and of the version of the tool.

// hashShared hashes what every page depends on.
func (h *House) hashShared() string {
	sum := sha256.New()
	fmt.Fprintln(sum, h.Version)
	data, _, _ := h.folder.Read("clinic.toml")
	sum.Write(data)
	for _, templates := range []fs.FS{sub(h.Files.Clinic, "templates"), h.Templates} {
		for _, dir := range []string{".", "parts", "style", "script", "words/" + language(h.Clinic), "words/en-GB"} {
			hashFolder(sum, templates, dir)
		}
	}
	return hex.EncodeToString(sum.Sum(nil))
}

// hashFolder hashes the names in one folder and the bytes of its files, in the order of their names.
func hashFolder(sum hash.Hash, of fs.FS, dir string) {
	entries, err := fs.ReadDir(of, dir)
	if err != nil {
		return
	}
	for _, e := range entries {
		if e.IsDir() {
			fmt.Fprintln(sum, dir, e.Name(), "/")
			continue
		}
		data, _ := fs.ReadFile(of, strings.TrimPrefix(dir+"/"+e.Name(), "./"))
		fmt.Fprintln(sum, dir, e.Name(), len(data))
		sum.Write(data)
	}
}

// hashProgram hashes the files of a program, every layer of them.
func (h *House) hashProgram(files []string) string {
	sum := sha256.New()
	for _, name := range files {
		for _, data := range h.library.Folder.Layers(name) {
			fmt.Fprintln(sum, name, len(data))
			sum.Write(data)
		}
	}
	return hex.EncodeToString(sum.Sum(nil))
}

// programLine finds the program that a client names without reading the whole file.
var programLine = regexp.MustCompile(`(?m)^\s*program\s*=\s*"([a-z0-9-]+)"`)

// key hashes one client. A client whose program cannot be told from its file has no key and is always built.
func (h *House) key(code string) string {
	sum := sha256.New()
	io.WriteString(sum, h.shared)
	dir := "clients/" + code
	data, _, err := h.folder.Read(dir + "/client.toml")
	named := programLine.FindSubmatch(data)
	if err != nil || named == nil {
		return ""
	}
	r := h.program(string(named[1]))
	if r.program == nil {
		return ""
	}
	io.WriteString(sum, r.hash)
	for _, part := range []string{dir, dir + "/tests", dir + "/blocks", dir + "/holds", dir + "/logs"} {
		hashFolder(sum, h.Files.Clinic, part)
	}
	h.sheets.Hash(code, sum)
	return hex.EncodeToString(sum.Sum(nil))
}

func cutFolder(file, dir string) (name string, ok bool) {
	return strings.CutPrefix(file, dir+"/")
}
