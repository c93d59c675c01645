package plan

import (
	"slices"

	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Worn is how the brace of a leg is set over a stretch of days: the ruling of all that is said of it, for two windows may rule
// together and an instruction may lift within the block.
type Worn struct {
	Side  unit.Side
	Allow unit.Allowance
	From  unit.Day
	Until unit.Day // the first day after it
}

// worn lists the braces of a block, leg by leg, from each day on which a word on them begins or lifts.
func (k knees) worn(b *client.Block) (list []Worn) {
	end := b.Starts.AddWeeks(b.Weeks)
	for _, side := range k.sides() {
		days := append([]unit.Day{b.Starts}, k.of[side].turns(unit.Brace, b.Starts)...)
		days = append(slices.DeleteFunc(days, func(d unit.Day) bool { return !d.Before(end) }), end)
		for i, until := range days[1:] {
			if allow := k.of[side].rule(unit.Brace, []unit.Kind{unit.Brace}, days[i]).allow; !allow.Free() {
				list = append(list, Worn{Side: side, Allow: allow, From: days[i], Until: until})
			}
		}
	}
	return list
}

// Braced is how the brace of a leg is set on a day of the block; of both legs together the stricter of the two.
func (p *Plan) Braced(side unit.Side, on unit.Day) (set unit.Allowance, worn bool) {
	for _, w := range p.Worn {
		if (w.Side == side || side == unit.Both || w.Side == unit.Both) && !on.Before(w.From) && on.Before(w.Until) {
			set, worn = stricter(set, w.Allow), true
		}
	}
	return set, worn
}
