package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

type (
	changeJSON struct {
		ID       string       `json:"id"`
		BeforeOn unit.Day     `json:"before_on,omitzero"`
		On       unit.Day     `json:"on,omitzero"`
		Change   *jsonNumber  `json:"change,omitempty"`
		MDC95    *jsonNumber  `json:"mdc95,omitempty"`
		Unit     string       `json:"unit,omitempty"`
		Verdict  plan.Verdict `json:"verdict"` // real change, within error, not known
		Because  string       `json:"because,omitempty"`
	}
	trendJSON struct {
		ID        string        `json:"id"`
		Mark      jsonNumber    `json:"mark"`
		Unit      string        `json:"unit,omitempty"`
		For       []waitingJSON `json:"for"`
		First     unit.Day      `json:"first,omitzero"` // the span of 80 %; absent where no day is told
		Last      unit.Day      `json:"last,omitzero"`
		CouldBe   unit.Day      `json:"could_be,omitzero"`
		NotBefore unit.Day      `json:"not_before,omitzero"`
		Refused   string        `json:"refused,omitempty"`
		Doubts    []string      `json:"doubts,omitempty"`
	}
)

type waitingJSON struct {
	ID        string   `json:"id"`
	NotBefore unit.Day `json:"not_before,omitzero"`
}

func changesIn(all []plan.Change) []changeJSON {
	out := []changeJSON{}
	for _, c := range all {
		out = append(out, changeJSON{ID: c.Measure, BeforeOn: c.Before.On, On: c.Now.On, Change: numberOf(c.Delta), MDC95: numberOf(c.Error.MDC95), Unit: c.Now.Unit,
			Verdict: c.Verdict, Because: c.Because.String()})
	}
	return out
}

func trendsIn(all []plan.Trend) []trendJSON {
	out := []trendJSON{}
	for _, t := range all {
		var waits []waitingJSON
		for _, w := range t.For {
			waits = append(waits, waitingJSON(w))
		}
		out = append(out, trendJSON{ID: t.Measure, Mark: jsonNumber(t.Mark.Number), Unit: t.Mark.Unit, For: waits, First: t.First, Last: t.Last, CouldBe: t.CouldBe,
			NotBefore: t.NotBefore, Refused: t.Refused.String(), Doubts: inEnglish(t.Doubts)})
	}
	return out
}
