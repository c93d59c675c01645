package generator

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/source"
)

// A kind that an exercise does not name is a limit that does not hold it back. So a clinic's own exercise that came from a
// shipped one is asked about each kind of limit that it has lost.

var (
	kindsLine = regexp.MustCompile(`(?m)^kinds\s*=\s*\[([^\]]*)\]`)
	quotedID  = regexp.MustCompile(`"([a-z-]+)"`)
)

// lostKinds asks about the clinic's own exercises that name fewer kinds than the shipped one they were copied from, or whose
// place they take.
func (h *House) lostKinds() (faults source.Faults) {
	for _, k := range LibraryKinds {
		if k.Name != "exercise" {
			continue
		}
		for _, id := range h.ownFiles(k) {
			file := k.file(id, ".toml")
			data, _, err := h.folder.Read(file)
			if err != nil {
				continue
			}
			mark, _ := copiedFrom(data)
			of, _, _ := strings.Cut(mark, " ")
			of = cmp.Or(of, id)
			shipped := h.shipped(k.file(of, ".toml"))
			if lost := without(kindsIn(shipped), kindsIn(data)); len(lost) > 0 {
				faults.Add(source.Fault{File: file, Line: source.Lines(data).Line("kinds"), Ask: true,
					What:    fmt.Sprintf("the shipped %q names %s in kinds, and this file does not: no such limit will hold it back", of, strings.Join(lost, ", ")),
					Instead: "add what the exercise still does; leave out only what it no longer does"})
			}
		}
	}
	return faults
}

// kindsIn are the kinds that the text of an exercise names.
func kindsIn(data []byte) (kinds []string) {
	if m := kindsLine.FindSubmatch(data); m != nil {
		for _, q := range quotedID.FindAllSubmatch(m[1], -1) {
			kinds = append(kinds, string(q[1]))
		}
	}
	return kinds
}

// without is what stands in all and not in some.
func without(all, some []string) (rest []string) {
	for _, a := range all {
		if !slices.Contains(some, a) {
			rest = append(rest, a)
		}
	}
	return rest
}
