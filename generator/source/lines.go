package source

import (
	"bytes"
	"strings"
)

// Index knows the line of every key of a TOML file. The library keeps positions by path without the index of a list, so it
// names the last [[list]] table where the first is meant, and it keeps none of unknown keys: hence our own.
type Index struct {
	lines   map[string]int  // by path
	implied map[string]bool // tables that stand only as a part of another key; a header of their own moves them
	last    int             // the line of the last key outside brackets: where a text begins that never ends
	keys    [][]string      // in the order of the file, as the library gives them: the oracle of the tests
}

// Lines reads the keys of a file and where they stand. Of a file that is not TOML it finds what it can.
func Lines(data []byte) Index {
	s := scanner{data: bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")), line: 1, lists: map[string]int{},
		ix: Index{lines: map[string]int{}, implied: map[string]bool{}}}
	s.file()
	return s.ix
}

// Line returns the line of the key at path; of a path that is not there, the line of what would hold it; else 1.
func (ix Index) Line(path string) int {
	for ; path != ""; path = above(path) {
		if line, ok := ix.lines[path]; ok {
			return line
		}
	}
	return 1
}

// Locate fills the line of faults that know only their key: mistakes of meaning, found after the file was read. Only TOML
// files have such keys. read returns the bytes of a file, or nil.
func (fs Faults) Locate(read func(file string) []byte) Faults {
	found := make(Faults, len(fs))
	copy(found, fs)
	indexes := map[string]Index{}
	for i, f := range found {
		if f.Line > 0 || f.Key == "" || !strings.HasSuffix(f.File, ".toml") {
			continue
		}
		ix, known := indexes[f.File]
		if !known {
			data := read(f.File)
			if data == nil {
				continue
			}
			ix = Lines(data)
			indexes[f.File] = ix
		}
		found[i].Line = ix.Line(f.Key)
	}
	return found
}

// located fills the lines of the faults of one file; without a key the file's first line is meant.
func (fs Faults) located(ix Index) Faults {
	for i, f := range fs {
		if f.Line == 0 {
			fs[i].Line = ix.Line(f.Key)
		}
	}
	return fs
}
