package page

import (
	"paceleaf/generator/plan"
	"paceleaf/generator/words"
)

// cert lists what the plan leaves open of the nineteen lines of a reported exercise program.
func (d *desk) cert() Part {
	lines := OpenLines(d.p, d.w)
	all := len(d.p.CERT())
	if len(lines) == 0 {
		return d.part("cert", d.note("cert-all", "all", all))
	}
	return d.folded("cert", d.say("cert-open", "n", len(lines), "all", all), bullets("", lines...))
}

// OpenLines are the lines of a reported exercise program that a plan leaves open, each with its number and what to write.
func OpenLines(p *plan.Plan, w *words.Words) (open []string) {
	s := sheet{w}
	for _, l := range p.CERT() {
		if !l.Open {
			continue
		}
		says := s.word("cert", l.ID)
		if l.Which != "" {
			says = s.say("cert-which", "line", says, "which", s.reason(l.Which))
		}
		open = append(open, s.say("cert-line", "id", l.ID, "line", says))
	}
	return open
}
