// Package source is the only door to files of TOML, Markdown, CSV and JSON, reading and writing them: strict, with
// errors that say file:line, what is wrong and what to write instead, all of a file's at once.
//
// It knows the form of files, not their meaning: what a value may be is said by the tags of the struct that it fills.
package source

import (
	"fmt"
	"slices"
	"strings"
)

// Fault is one mistake in a file, or one thing to ask about.
type Fault struct {
	File    string // relative to the clinic's folder, with slashes
	Line    int    // from 1; 0 where the whole file is meant
	Key     string // index-aware path, such as strength[1].left.peak_n; may be empty
	What    string // what is wrong; lower case, no full stop
	Instead string // what to write instead
	Ask     bool   // not wrong but suspicious: a warning
}

// Error writes file:line: what; what to write instead.
func (f Fault) Error() string {
	place := f.File
	if f.Line > 0 {
		place = fmt.Sprintf("%s:%d", f.File, f.Line)
	}
	if f.Instead == "" {
		return place + ": " + f.What
	}
	return place + ": " + f.What + "; " + f.Instead
}

// Faults are all the mistakes found, in the order of file, line and text.
type Faults []Fault

// Error writes one fault a line.
func (fs Faults) Error() string {
	lines := make([]string, len(fs))
	for i, f := range fs {
		lines[i] = f.Error()
	}
	return strings.Join(lines, "\n")
}

// Sort orders by file, line and text, and drops repeats.
func (fs *Faults) Sort() {
	slices.SortStableFunc(*fs, func(a, b Fault) int {
		if c := strings.Compare(a.File, b.File); c != 0 {
			return c
		}
		if a.Line != b.Line {
			return a.Line - b.Line
		}
		return strings.Compare(a.Error(), b.Error())
	})
	*fs = slices.Compact(*fs)
}

// Add appends a mistake.
func (fs *Faults) Add(f Fault) { *fs = append(*fs, f) }

// Wrong returns only the mistakes, Asked only the questions.
func (fs Faults) Wrong() Faults { return fs.only(false) }
func (fs Faults) Asked() Faults { return fs.only(true) }

func (fs Faults) only(ask bool) (kept Faults) {
	for _, f := range fs {
		if f.Ask == ask {
			kept = append(kept, f)
		}
	}
	return kept
}
