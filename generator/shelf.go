package generator

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"sync"

	"paceleaf/generator/source"
	"paceleaf/generator/words"
)

// Shelf keeps what has been read of programs and words, for a process that opens many houses over the same shipped files.
// Clinics share what they lay over them to the byte. The zero Shelf is empty; it may be used by many at once.
type Shelf struct {
	programs sync.Map // id and what the clinic lays over it -> *resolved
	words    sync.Map // language and what the clinic lays over it -> *spoken
}

// spoken is the words of a language, read once.
type spoken struct {
	once   sync.Once
	words  *words.Words
	faults source.Faults
}

// laid is a digest of the clinic's own files in a folder that is laid over the shipped one.
func laid(clinic fs.FS, dir string) string {
	sum := sha256.New()
	fs.WalkDir(clinic, dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			return nil // what cannot be read is told by whoever reads it
		}
		data, _ := fs.ReadFile(clinic, name)
		fmt.Fprintf(sum, "%q %q ", name, data)
		return nil
	})
	return string(sum.Sum(nil))
}

// resolved is where a program stands, or will once it has been read.
func (h *House) resolved(id string) *resolved {
	shelf, key := &h.programs, id
	if h.Shelf != nil {
		shelf, key = &h.Shelf.programs, id+" "+h.library.Language+" "+laid(h.Files.Clinic, "programs")
	}
	made, _ := shelf.LoadOrStore(key, &resolved{})
	return made.(*resolved)
}

// readWords reads the words of the clinic's language, or takes them from the shelf.
func (h *House) readWords() (*words.Words, source.Faults) {
	load := func() (*words.Words, source.Faults) {
		return words.Load(source.Over(sub(h.Files.Clinic, "templates"), h.Templates), language(h.Clinic))
	}
	if h.Shelf == nil {
		return load()
	}
	made, _ := h.Shelf.words.LoadOrStore(language(h.Clinic)+" "+laid(h.Files.Clinic, "templates"), &spoken{})
	s := made.(*spoken)
	s.once.Do(func() { s.words, s.faults = load() })
	return s.words, s.faults
}
