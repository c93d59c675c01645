package generator

import (
	"fmt"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Check reads everything and returns all mistakes and questions. today is used only to ask about tests in the future.
func (h *House) Check(today unit.Day) (faults source.Faults) {
	for _, id := range h.library.IDs() {
		faults = append(faults, h.program(id).faults...)
	}
	faults = append(faults, h.unnamed()...)
	for _, code := range h.codes {
		done := h.Plan(code)
		faults = append(faults, done.Faults...)
		faults = append(faults, h.future(done, today)...)
	}
	faults.Sort()
	return faults
}

// unnamed asks about the clinic's own phases, limits and exercises that no program reads: misspelt, the shipped file would
// hold in their place.
func (h *House) unnamed() (faults source.Faults) {
	read := map[string]bool{}
	for _, id := range h.library.IDs() {
		if p := h.program(id).program; p != nil {
			for _, name := range p.Files {
				read["programs/"+name] = true
			}
		}
	}
	for _, dir := range []string{"programs/phases", "programs/limits", "programs/exercises"} {
		for _, e := range h.folder.List(dir) {
			if name := dir + "/" + e.Name; !read[name] {
				faults.Add(source.Fault{File: name, Ask: true, What: "no program reads this file", Instead: "name it in a program, a phase or a slot, or take it away"})
			}
		}
	}
	return faults
}

// future asks about tests that are dated after today.
func (h *House) future(done Planned, today unit.Day) (faults source.Faults) {
	for i := range done.Client.Tests {
		if d := &done.Client.Tests[i]; d.On.After(today) {
			faults.Add(source.Fault{File: d.At.File, Line: d.At.Line, Ask: true, What: fmt.Sprintf("the test day %s lies in the future", d.On), Instead: "see whether the year is right"})
		}
	}
	return faults
}
