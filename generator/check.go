package generator

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/source"
	"paceleaf/generator/unit"
)

// Check reads everything and returns all mistakes and questions. today is used only to ask about tests in the future.
func (h *House) Check(today unit.Day) (faults source.Faults) {
	for _, id := range h.library.IDs() {
		faults = append(faults, h.program(id).faults...)
	}
	faults = append(faults, h.unnamed()...)
	faults = append(faults, h.checkLibrary()...)
	faults = append(faults, h.lostKinds()...)
	for _, code := range h.codes {
		done := h.Plan(code)
		faults = append(faults, done.Faults...)
		faults = append(faults, h.future(done, today)...)
		faults = append(faults, h.overdue(done, today)...)
		faults = append(faults, h.noteRemarks(done)...)
		faults = append(faults, h.noStage(done)...)
	}
	faults.Sort()
	return faults
}

// weeksWithoutStage is how long after its event a client may be without a recorded stage before it is asked about: the first
// stage is meant by then. Chosen.
const weeksWithoutStage = 4

// noStage asks about a client who is planned as in the first weeks, for nobody has recorded a stage.
func (h *House) noStage(done Planned) (faults source.Faults) {
	p := done.Plan
	if p == nil || p.Stage.Recorded || p.Stage.Set == nil || p.Event == nil || p.Stage.WeeksSince < weeksWithoutStage {
		return nil
	}
	faults.Add(source.Fault{File: done.Client.At.File, Line: 1, Ask: true,
		What:    fmt.Sprintf("no [[stage]] is recorded, so the plan of week %d is that of the first one, %q", p.Stage.WeeksSince, p.Stage.Set.ID),
		Instead: "record where the client stands: [[stage]] with id, from and by"})
	return faults
}

// CheckPages returns questions about the pages of clients: how they read and how much they ask for.
func (h *House) CheckPages(codes []string) (faults source.Faults) {
	for _, code := range codes {
		if done := h.Plan(code); len(done.Faults.Wrong()) == 0 {
			faults = append(faults, h.Remarks(done)...)
		}
	}
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
			name := dir + "/" + e.Name
			if toml, isWords := strings.CutSuffix(name, ".md"); isWords && h.isOwn(toml+".toml") && !read[toml+".toml"] {
				continue // the exercise itself is asked about
			}
			if !read[name] {
				faults.Add(source.Fault{File: name, Ask: true, What: "no program reads this file", Instead: "name it in a program, a phase or a slot, or take it away"})
			}
		}
	}
	return faults
}

// overdue asks about a measurement that the program wanted by now. It asks while the block runs: one that has ended needs a new block,
// and a client who has left needs nothing.
func (h *House) overdue(done Planned, today unit.Day) (faults source.Faults) {
	if done.Plan == nil || done.Plan.Retest == nil || !today.After(done.Plan.Retest.Due) {
		return nil
	}
	if b := done.Plan.Block; !today.Before(b.Starts.AddWeeks(b.Weeks)) {
		return nil
	}
	r := done.Plan.Retest
	faults.Add(source.Fault{File: done.Client.At.File, Key: "program", Ask: true, What: fmt.Sprintf("a measurement was due on %s: the program asks for one every %d weeks", r.Due, r.EveryWeeks),
		Instead: "begin one by: paceleaf start test " + done.Client.Code})
	return h.located(faults)
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

// About leaves out what stands in files of other clients. Day sheets are of many clients: what stands there is kept.
func About(codes, all []string, faults source.Faults) (about source.Faults) {
	for _, f := range faults {
		of, _, ofClient := strings.Cut(strings.TrimPrefix(f.File, "clients/"), "/")
		if other := ofClient && strings.HasPrefix(f.File, "clients/") && slices.Contains(all, of) && !slices.Contains(codes, of); !other {
			about = append(about, f)
		}
	}
	return about
}
