package plan

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// What the surgeon should be asked. Where nobody has said or read what holds, the strictest row does (rules 6), and a question
// goes with it: what was done, how the leg may be walked on, and the weeks of a procedure of which nothing was read.

// unknownEnding marks a further procedure of which the kind is not known.
const unknownEnding = "-unknown"

// flagSurgeon puts the questions on the worksheet, for as long as the answer could change this block or a later one.
func (p *planner) flagSurgeon() {
	if p.event.Kind != client.Operation {
		return
	}
	for _, also := range p.event.Also {
		switch {
		case !p.bears(also):
		case strings.HasSuffix(also, unknownEnding):
			p.flag("ask-surgeon", also, "nobody has written what was done ({a}), so the strictest rows hold; ask the surgeon, and write the answer in also or as a limit", also)
		case !p.wasRead(also):
			p.flag("ask-surgeon", also, "no source was read for {a}, its rows are our own; ask the surgeon for the weeks, and write them as limits", also)
		}
	}
	if unsaid := p.unsaid(); len(unsaid) > 0 {
		p.flag("ask-surgeon", "walking and brace", "nobody has written the surgeon's word on {a}, so the program's rows hold; ask, and write it as a limit", basis.Enumerated(unsaid...))
	}
}

// limitsOf are the limits that a further procedure brings to this client.
func (p *planner) limitsOf(also string) (list []*program.Limit) {
	for i := range p.program.Limits {
		l := &p.program.Limits[i]
		if slices.Contains(l.When.Also, also) && chosen(p.program, l) && applies(l.When, p.client, p.event, p.event.Date) {
			list = append(list, l)
		}
	}
	return list
}

// bears reports whether a limit of the procedure still holds on the block's first day or later.
func (p *planner) bears(also string) bool {
	return slices.ContainsFunc(p.limitsOf(also), func(l *program.Limit) bool {
		return l.LiftsWeek == nil || p.event.Date.AddWeeks(*l.LiftsWeek).After(p.block.Starts)
	})
}

// wasRead reports whether any row of the procedure was read, in its source or in a work that reports it.
func (p *planner) wasRead(also string) bool {
	read := []unit.Standing{unit.Published, unit.SecondHand}
	return slices.ContainsFunc(p.limitsOf(also), func(l *program.Limit) bool {
		return l.Source != "" || slices.Contains(read, l.Standing) || slices.ContainsFunc(l.Steps, func(s program.Step) bool { return slices.Contains(read, s.Standing) })
	})
}

// unsaid are the kinds of walking that only the program speaks of on the block's first day.
func (p *planner) unsaid() (kinds []basis.Said) {
	for _, k := range []unit.Kind{unit.WeightBearing, unit.Brace} {
		var program, person bool
		for _, w := range p.plan.Limits {
			if w.Kind == k && w.Side == p.event.Side && !w.From.After(p.block.Starts) && (w.Lifts.IsZero() || w.Lifts.After(p.block.Starts)) {
				program = program || w.SetBy == "program"
				person = person || w.SetBy != "program"
			}
		}
		if program && !person {
			kinds = append(kinds, basis.Said(k))
		}
	}
	return kinds
}

// askSurgeon asks about procedures of unknown kind, in one line a client: the page is stricter than it may have to be.
func askSurgeon(p *Plan) []Mistake {
	var unknown []string
	for _, f := range p.Flags {
		if f.ID == "ask-surgeon" && strings.HasSuffix(f.About, unknownEnding) {
			unknown = append(unknown, f.About)
		}
	}
	if len(unknown) == 0 {
		return nil
	}
	return []Mistake{{At: p.Event.At.At("also"), Ask: true, What: fmt.Sprintf("%s: nobody has written what was done, so the strictest limits hold", strings.Join(unknown, ", ")),
		Instead: "ask the surgeon, and write the answer here or as a [[limit]]"}}
}
