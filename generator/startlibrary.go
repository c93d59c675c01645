package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"path"
	"regexp"
	"strings"

	"paceleaf/generator/source"
)

// A file of the clinic's own library: begun from nothing, or as a copy of a shipped one that keeps telling what it was copied from.

// LibraryKinds are the kinds of file of a library that start begins, with the folder of each and what lies beside it.
var LibraryKinds = []LibraryKind{
	{Name: "program", Folder: "programs"},
	{Name: "phase", Folder: "programs/phases"},
	{Name: "limit", Folder: "programs/limits"},
	{Name: "exercise", Folder: "programs/exercises", Words: true},
	{Name: "note", Folder: "programs/notes", Words: true},
}

// LibraryKind is one kind of file of a library.
type LibraryKind struct {
	Name   string
	Folder string
	Words  bool // a Markdown file lies beside it
}

// file is the name of a file of the kind.
func (k LibraryKind) file(id, ending string) string { return path.Join(k.Folder, id+ending) }

var libraryID = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// notPrograms are the names of files of programs/ that are no program.
var notPrograms = map[string]bool{"sources": true, "errors": true}

// LibraryID says whether a text may be the id of a file of the library.
func LibraryID(k LibraryKind, text string) error {
	if libraryID.MatchString(text) && !(k.Name == "program" && notPrograms[text]) {
		return nil
	}
	return fmt.Errorf("%q is no id of a %s; write small letters, digits and hyphens, as in my-%s", text, k.Name, k.Name)
}

// StartLibrary are the files of a new program, phase, limit, exercise or note; as a copy of a shipped one where copied is not empty.
func (h *House) StartLibrary(k LibraryKind, id, copied string) ([]Started, error) {
	endings := []string{".toml"}
	if k.Words {
		endings = append(endings, ".md")
	}
	var files []Started
	for _, ending := range endings {
		one, err := h.startedFrom(k, id, copied, ending)
		if err != nil {
			return nil, err
		}
		files = append(files, one)
	}
	return files, nil
}

func (h *House) startedFrom(k LibraryKind, id, copied, ending string) (Started, error) {
	if copied == "" {
		return scaffold(h.Templates, k.Name+ending, k.file(id, ending), map[string]string{"id": id})
	}
	data := h.shipped(k.file(copied, ending))
	if data == nil {
		return Started{}, fmt.Errorf("there is no shipped %s %q; %s", k.Name, copied, h.shippedLike(k, copied))
	}
	if ending == ".toml" {
		depth := strings.Repeat("../", strings.Count(k.Folder, "/")+1)
		head := fmt.Sprintf("#:schema %s%s/%s.json\n# A copy: change what you like. paceleaf check tells when the shipped one changes.\ncopied_from = %q\n",
			depth, SchemaFolder, k.schema(), copyMark(copied, data))
		data = append([]byte(head), data...)
	}
	return Started{Name: k.file(id, ending), Data: data}, nil
}

// schema is the name of the kind of file in the reference.
func (k LibraryKind) schema() string {
	if k.Name == "limit" {
		return "limits"
	}
	return k.Name
}

// shipped is a file as it ships, whatever the clinic has laid over it; nil where none does.
func (h *House) shipped(file string) []byte {
	name, _ := cutFolder(file, "programs")
	data, _, err := source.Over(h.Programs).Read(name)
	if err != nil {
		return nil
	}
	return data
}

// shippedLike says what could have been written for the id of a shipped file.
func (h *House) shippedLike(k LibraryKind, written string) string {
	dir, _ := cutFolder(k.Folder+"/", "programs")
	var ids []string
	for _, e := range source.Over(h.Programs).List(path.Join(".", dir)) {
		if id, isTOML := strings.CutSuffix(e.Name, ".toml"); isTOML && !notPrograms[id] {
			ids = append(ids, id)
		}
	}
	near := source.Closest(written, ids, 3)
	if len(near) == 0 {
		near = ids // nothing is like it: all of them
	}
	return "write one of " + strings.Join(near, ", ")
}

// digestShown is how many hexadecimal digits of a digest a copy keeps; chosen: enough to see a change, short to read.
const digestShown = 8

// copyMark is what a copy says of the shipped file that it was made of: its id and the beginning of its digest.
func copyMark(id string, shipped []byte) string {
	sum := sha256.Sum256(shipped)
	return id + " " + hex.EncodeToString(sum[:])[:digestShown]
}
