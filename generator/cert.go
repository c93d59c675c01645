package generator

import (
	"paceleaf/generator/page"
	"paceleaf/generator/plan"
)

// Certified is what a client's plan leaves open of what a report of an exercise program has to say.
type Certified struct {
	Client string   `json:"client"`
	Lines  int      `json:"lines"`  // in all
	Stated []string `json:"stated"` // numbers of the lines that the plan states
	Open   []string `json:"open"`   // each with its number and what to write
}

// CERT weighs the plans of clients against the lines of a reported exercise program; a client without a plan is left out.
func (h *House) CERT(codes []string) []Certified {
	list := []Certified{}
	for _, code := range codes {
		if p := h.Plan(code).Plan; p != nil {
			list = append(list, certified(p, h))
		}
	}
	return list
}

func certified(p *plan.Plan, h *House) Certified {
	lines, stated := p.CERT(), []string{}
	for _, l := range lines {
		if !l.Open {
			stated = append(stated, l.ID)
		}
	}
	return Certified{Client: p.Client.Code, Lines: len(lines), Stated: stated, Open: append([]string{}, page.OpenLines(p, h.words)...)}
}
