package plan

import "paceleaf/generator/finding"

// ErrorOf is what the program knows of the error of a value, for a chart that draws its band. It decides nothing: near and real
// change have bands of their own.
func (p *Plan) ErrorOf(m finding.Measure) TestError {
	if p.Program == nil {
		return TestError{}
	}
	return errorOf(p.Program.Errors, m)
}
