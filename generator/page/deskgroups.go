package page

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
)

// groups is what groups of people showed about a new injury, folded. It is never the chance of one person, and no page of a client
// has it.
func (d *desk) groups() Part {
	g := d.p.Groups
	if g == nil {
		return Part{}
	}
	nodes := []Node{d.note("groups-source"), paragraph("alert", d.say("groups-caution"))}
	switch {
	case g.NotLike != "":
		nodes = append(nodes, d.note("groups-not-like", "why", d.reason(g.NotLike)))
	case !g.Show:
		nodes = append(nodes, d.note("groups-hidden"))
	default:
		nodes = append(nodes, d.rates(g))
	}
	return d.onScreen("groups", d.say("groups-fold"), nodes...)
}

func (d *desk) rates(g *plan.Groups) Node {
	table := d.table("rates", d.say("rates-caption"), "what", "found", "interval", "standing")
	rate := func(key string, value, interval, standing string) {
		table.row("", d.word("rate", key), value, interval, d.word("standing", standing))
	}
	interval := ""
	if g.Low.OK() && g.High.OK() {
		interval = d.say("span", "from", amount(g.Low), "to", amount(g.High))
	}
	rate("multiplied", d.amountOr(g.Rate), interval, "from memory")
	rate("linear", d.amountOr(g.Linear), "", "from memory")
	rate("early", d.amountOr(g.Early), d.say("interval-not-read"), "published")
	return table
}

// groupSteps are the numbers of a comparison of groups; none where they are not shown.
func groupSteps(g *plan.Groups) []*basis.Step {
	if g == nil || !g.Show {
		return nil
	}
	return present([]*basis.Step{g.Rate.Step(), g.Low.Step(), g.High.Step(), g.Linear.Step(), g.Early.Step()})
}
