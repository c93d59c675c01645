package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

type goalJSON struct {
	ID       string        `json:"id"` // the measure
	State    string        `json:"state"`
	Found    any           `json:"found,omitempty"` // a number or a word
	Sense    string        `json:"sense"`
	Wanted   any           `json:"wanted"`
	Unit     string        `json:"unit,omitempty"`
	On       unit.Day      `json:"on,omitzero"`
	By       unit.Day      `json:"by"`
	Until    unit.Day      `json:"waits_until,omitzero"` // of one that waits for a limit
	Lost     unit.Day      `json:"lost,omitzero"`        // of one that was reached in time and is not met any more: since when
	Tell     program.Tell  `json:"tell,omitempty"`
	Source   string        `json:"source,omitempty"`
	Standing unit.Standing `json:"standing,omitempty"`
	Basis    string        `json:"basis,omitempty"`
}

func goalsIn(all []plan.GoalState, t *trail) []goalJSON {
	out := []goalJSON{}
	for _, g := range all {
		one := goalJSON{ID: g.Goal.Measure, State: g.State, Sense: g.Sense, Wanted: jsonNumber(g.Mark.Number), Unit: g.Mark.Unit, On: g.On, By: g.By, Until: g.Until, Lost: g.Lost,
			Tell: g.Goal.Tell, Source: g.Goal.Source, Standing: g.Goal.Standing, Basis: t.id(g.Found)}
		if g.Mark.Grade != "" {
			one.Wanted = g.Mark.Grade
		}
		if n := numberOf(g.Found); n != nil {
			one.Found = n
		} else if word := wordOf(g.Found); word != "" {
			one.Found = word
		}
		out = append(out, one)
	}
	return out
}
