package plan

import (
	"cmp"

	"paceleaf/generator/finding"
	"paceleaf/generator/formula"
	"paceleaf/generator/program"
)

// Ways: how the loads of an exercise are reckoned. The program names an equation for all of its exercises, an exercise may name
// another for itself; the maximum and the share of it are told by the same one.

// wayOf is the way of an exercise of a program.
func wayOf(p *program.Program, e *program.Exercise) finding.Way {
	return finding.Way{Equation: formula.Equation(cmp.Or(e.OneRM, p.File.OneRM)), Body: formula.BodyExercise(e.MovesBody)}
}

// waysOf are the ways of all exercises of a program.
func waysOf(p *program.Program) finding.Ways {
	ways := finding.Ways{}
	for id, e := range p.Exercises {
		ways[id] = wayOf(p, e)
	}
	return ways
}

// body is the part of the client's body that an exercise moves; nil where it moves none.
func (p *Plan) body(e *program.Exercise) *finding.Body {
	return finding.BodyOf(formula.BodyExercise(e.MovesBody), p.Client.Sex, p.Found.NewestMass())
}
