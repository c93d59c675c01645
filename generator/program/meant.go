package program

import (
	"maps"
	"slices"
	"strings"

	"paceleaf/generator/source"
)

// meantShown is how many exercises are offered for one that a program does not have; chosen: a glance.
const meantShown = 3

// Meant says what to write for the id of an exercise that the program does not have.
func (p *Program) Meant(written string) string {
	near := source.Closest(written, slices.Sorted(maps.Keys(p.Exercises)), meantShown)
	if len(near) == 0 {
		return "write the id of an exercise of the program: the name of its page in out/library/exercises, without .html"
	}
	return "did you mean " + strings.Join(near, " or ") + "?"
}
