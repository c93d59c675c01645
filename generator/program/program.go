// Package program is what an author wrote: programs, phases, criteria, limits, exercises, doses, the bibliography.
//
// It reads them, resolves ids into what they name, and judges them alone. It knows no client and no day.
package program

// Program is a program with all that it names resolved.
type Program struct {
	ID string // the file's name
	File
	Phases    []*Phase
	Limits    []Limit // of its limit files, in order; Limit.At says which file
	Exercises map[string]*Exercise
	Notes     []*Note // about its exercises
	Sources   Bibliography
	Errors    Errors
	Files     []string // every file that it was read from, sorted: its closure
}

// Phase returns the phase of that id, and its place in order; nil, -1 where there is none.
func (p *Program) Phase(id string) (*Phase, int) {
	for i, ph := range p.Phases {
		if ph.ID == id {
			return ph, i
		}
	}
	return nil, -1
}

// Slot returns the slot of that id; nil where there is none.
func (p *Phase) Slot(id string) *Slot {
	for i := range p.Slots {
		if p.Slots[i].ID == id {
			return &p.Slots[i]
		}
	}
	return nil
}
