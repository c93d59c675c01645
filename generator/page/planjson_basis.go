package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// stepJSON is one step behind a number. Its id is the key of the map; a typed value without an id has its place for a name.
type stepJSON struct {
	By      string        `json:"by,omitempty"`
	Sum     string        `json:"sum,omitempty"` // $1, $2, … are the inputs of from, in order
	From    []string      `json:"from,omitempty"`
	Value   *jsonNumber   `json:"value,omitempty"`
	Unit    string        `json:"unit,omitempty"`
	Before  *jsonNumber   `json:"before,omitempty"`
	Text    string        `json:"text,omitempty"`
	Typed   string        `json:"typed,omitempty"`
	At      *basis.Origin `json:"at,omitempty"`
	On      unit.Day      `json:"on,omitzero"`
	Reason  string        `json:"reason,omitempty"`
	Refused bool          `json:"refused,omitempty"` // there is no value; reason says why
	Source  string        `json:"source,omitempty"`
}

// basisIn writes the named steps; line looks up the line of a typed value and may be nil.
func basisIn(t *trail, names []string, line func(basis.Origin) int) map[string]stepJSON {
	out := make(map[string]stepJSON, len(names))
	for _, name := range names {
		out[name] = stepIn(t.steps[name], t, line)
	}
	return out
}

func stepIn(s *basis.Step, t *trail, line func(basis.Origin) int) stepJSON {
	out := stepJSON{By: s.By.Name.String(), Sum: s.By.Sum, Value: numberOf(s), Unit: s.Unit, Text: wordOf(s), Typed: s.Typed,
		At: placeOf(s.At), On: s.On, Reason: s.Reason.String(), Refused: s.Refuse, Source: s.By.Source.String()}
	if s.Cut && !s.Refuse {
		out.Before = jsonNumberOf(s.Before)
	}
	if out.At != nil && out.At.Line == 0 && line != nil {
		out.At.Line = line(s.At)
	}
	for _, from := range s.From {
		out.From = append(out.From, t.id(from))
	}
	return out
}
