package generator

import (
	"strings"

	"paceleaf/generator/source"
)

// Faults are the mistakes and questions found in a clinic's files, each with file, line and remedy.
type Faults = source.Faults

// faultsFormat is the number of the format of check --json. Its fields keep their names and meanings; a new field may come.
const faultsFormat = 2

// jsonFault is a fault as editors read it.
type jsonFault struct {
	File     string `json:"file"`             // in the clinic's folder, with /
	Line     int    `json:"line"`             // from 1; 0: of the whole file
	Column   int    `json:"column,omitempty"` // from 1, of the key on that line; left out where it is not known
	Severity string `json:"severity"`         // mistake, question
	Says     string `json:"says"`             // what is wrong
	Write    string `json:"write"`            // what to write instead
}

type faultsJSON struct {
	Format int         `json:"format"`
	Faults []jsonFault `json:"faults"`
	CERT   []Certified `json:"cert,omitempty"`
}

// FaultsJSON writes faults for editors. read gives the bytes of a file that a fault names, nil where there is none.
func FaultsJSON(faults Faults, read func(file string) []byte, cert []Certified) []byte {
	out := faultsJSON{Format: faultsFormat, Faults: make([]jsonFault, len(faults)), CERT: cert}
	for i, f := range faults {
		severity := "mistake"
		if f.Ask {
			severity = "question"
		}
		out.Faults[i] = jsonFault{f.File, f.Line, column(f, read), severity, f.What, f.Instead}
	}
	return source.WriteJSON(out)
}

// column is where on its line the key of a fault begins, from 1; 0 where the fault has no key or the key does not stand there.
func column(f source.Fault, read func(string) []byte) int {
	key := f.Key[strings.LastIndexByte(f.Key, '.')+1:]
	key, _, _ = strings.Cut(key, "[")
	if read == nil || key == "" || f.Line < 1 {
		return 0
	}
	lines := strings.Split(string(read(f.File)), "\n")
	if f.Line > len(lines) {
		return 0
	}
	at := strings.Index(lines[f.Line-1], key)
	if at < 0 {
		return 0
	}
	return len([]rune(lines[f.Line-1][:at])) + 1
}

// Text returns the bytes of a file that a fault names: the clinic's own, else the shipped one; nil where there is none.
func (h *House) Text(file string) []byte { return h.read(file) }
