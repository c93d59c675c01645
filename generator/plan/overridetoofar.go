package plan

import (
	"fmt"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// A surgeon's load may lie above the working load, and not above what the leg can be expected to move once (rules 21, 24). What
// asks for less in reserve than the dose is told, not refused.

// crumbOfCount forgives the last bits of a float when repetitions are compared.
const crumbOfCount unit.Count = 1e-9

// tooHeavy refuses a typed load above the estimated maximum.
func (p *planner) tooHeavy(o *client.Override, d *WeekDose, l *loader) {
	if l.max.OK() && d.Moved.Or(0) > l.max.Or(0)+crumb {
		p.wrong(Mistake{At: o.At.At("plates_kg"), What: fmt.Sprintf("%s, %s: with what is put on, %g kg would move, and the estimated maximum for one repetition is %g kg",
			l.e.ID, l.side, shown(d.Moved.Or(0)), shown(l.max.Or(0))), Instead: "see whether number, leg and device are right; a new lift on a test day raises the maximum"})
	}
}

// tooMany tells of a typed load that leaves less in reserve than the dose asks for.
func (p *planner) tooMany(o *client.Override, d *WeekDose, l *loader) {
	if !d.Implied.OK() || d.Dose.Reserve == nil || d.Implied.Or(0) >= unit.Count(*d.Dose.Reserve)-crumbOfCount {
		return
	}
	about := l.e.ID + "." + string(l.side)
	if slices.ContainsFunc(p.plan.Flags, func(f Flag) bool { return f.ID == "override-above-load" && f.About == about }) {
		return
	}
	says := basis.Say("the load of the override can be moved about {a} times, and {b} times with {c} in reserve are asked for",
		float64(unit.CutTo(d.Implied.Or(0)+unit.Count(*d.Dose.Reps), 0.1)), *d.Dose.Reps, *d.Dose.Reserve)
	p.say("override-above-load", about, says)
	p.wrong(Mistake{At: o.At.At("plates_kg"), Ask: true, What: about + ": " + says.String(), Instead: "write fewer reps or less in reserve if it is meant, or a smaller load"})
}

// wrong keeps a mistake or question that only shows while the plan is made; each once, however many weeks it touches.
func (p *planner) wrong(m Mistake) {
	if !slices.ContainsFunc(p.plan.mistakes, func(o Mistake) bool { return o.At == m.At && o.Ask == m.Ask }) {
		p.plan.mistakes = append(p.plan.mistakes, m)
	}
}

// shown is a weight as it is told: cut to a tenth of a kilogram.
func shown(kg unit.Kilograms) float64 { return float64(unit.CutTo(kg, 0.1)) }
