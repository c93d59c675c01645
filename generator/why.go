package generator

import "paceleaf/generator/page"

// Why says where a number of a client's plan comes from, down to file and line; without an id it lists all numbers. For
// an id that is not known it names the nearest, and ok is false.
func (h *House) Why(done Planned, id string) (text string, ok bool) {
	return page.WhyText(done.Plan, id, h.Line)
}

// WhyJSON is Why for machines; without an id it is plan.json.
func (h *House) WhyJSON(done Planned, id string) (data []byte, ok bool) {
	return page.WhyJSON(done.Plan, id, h.Line)
}
