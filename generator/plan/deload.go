package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Lighter weeks that the author of a phase has planned. They take off and never add; the growth of the weeks after goes on.

var byLighterWeek = basis.Rule{Name: "a lighter week", Sum: "$1 × $2 ÷ 100", Source: "the program"}

// lighterWeek is the planned lighter week that a week of the block is; nil where it is none.
func (p *planner) lighterWeek(week int) *program.Deload {
	return p.phase.DeloadIn(p.weeks[week-1].PhaseWeek)
}

// lightened is what a lighter week leaves of a load; the load itself in any other.
func (l *loader) lightened(load basis.Num[unit.Kilograms], week int) basis.Num[unit.Kilograms] {
	d := l.lighterWeek(week)
	if d == nil || d.LoadPercent == 0 || d.LoadPercent == 100 || !load.OK() {
		return load
	}
	share := basis.Given(l.weekID(week, "lighter-share"), byDose, d.LoadPercent, "share of the load in a lighter week")
	return basis.Of2(l.weekID(week, "lighter"), byLighterWeek, func(x unit.Kilograms, share unit.Percent) unit.Kilograms {
		return unit.Kilograms(float64(x) * float64(share) / 100)
	}, load, share)
}

// putLightened is what is put on in a week. A machine that cannot be set so low keeps the week's own load: then only the sets are less.
func (l *loader) putLightened(load basis.Num[unit.Kilograms], week int) (on, asked basis.Num[unit.Kilograms]) {
	lighter := l.lightened(load, week)
	if on = l.put(week, lighter); on.OK() {
		return on, lighter
	}
	return l.put(week, load), load
}
