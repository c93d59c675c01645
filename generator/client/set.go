package client

import (
	"cmp"
	"fmt"
	"regexp"
	"strconv"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// Set is one set of a lift. It is written short, "60 kg x 8+2" (what is put on or pinned, repetitions done + in
// reserve), or with keys.
type Set struct {
	At             basis.Origin
	Plates         basis.Num[unit.Kilograms] `key:"plates" doc:"what is put on or pinned" range:"0 600" show:"60"`
	Moved          basis.Num[unit.Kilograms] `key:"moved" doc:"all that is moved, carriage and bar too" range:"0 800" show:"105"`
	Stretched      basis.Num[unit.Metres]    `key:"stretched" doc:"of a measured band: how long it was pulled" range:"0.05 10" show:"150"`
	Reps           basis.Num[unit.Count]     `key:"reps" doc:"repetitions done" range:"1 100" show:"8"`
	Reserve        basis.Num[unit.Count]     `key:"reserve" doc:"repetitions that would still have been possible; 0 is to failure" range:"0 20" show:"2"`
	NotTested      basis.Said                `key:"not_tested" doc:"why not" show:"the press was taken"`
	StoppedForPain bool                      `key:"stopped_for_pain" doc:"tried and stopped: no load is made of it"`
}

var short = regexp.MustCompile(`^\s*(\d+(?:\.\d+)?)\s*(kg|lb)?\s*[x×]\s*(\d+)(?:\s*\+\s*(\d+))?\s*$`)

// FromShort reads the short writing; at is the place of the text. A missing reserve is refused: "to failure" must be
// said, as +0, for it decides the load.
func (s *Set) FromShort(text string, at basis.Origin) error {
	m := short.FindStringSubmatch(text)
	switch {
	case m == nil:
		return fmt.Errorf("%q is no set; write load x repetitions + in reserve, as in \"60 kg x 8+0\"", text)
	case m[4] == "":
		return fmt.Errorf("%q does not say how many more were possible; write \"%s %s x %s+0\" for a set to failure", text, m[1], cmp.Or(m[2], "kg"), m[3])
	}
	load, _ := strconv.ParseFloat(m[1], 64)
	mass := unit.Kilograms(load)
	if m[2] == "lb" {
		mass = unit.Kilograms(load * unit.KilogramsPerPound)
	}
	if m[2] == "" {
		m[2] = "kg"
	}
	reps, _ := strconv.Atoi(m[3])
	reserve, _ := strconv.Atoi(m[4])
	s.At = at
	s.Plates = basis.Typed(mass, m[1]+" "+m[2], at)
	s.Reps = basis.Typed(unit.Count(reps), m[3], at)
	s.Reserve = basis.Typed(unit.Count(reserve), m[4], at)
	return nil
}

// Done reports whether the set has a load and repetitions.
func (s Set) Done() bool { return s.loaded() && s.Reps.OK() }

// loaded reports whether the set has a load of any kind.
func (s Set) loaded() bool { return s.Plates.OK() || s.Moved.OK() || s.Stretched.OK() }
