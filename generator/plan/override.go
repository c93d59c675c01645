package plan

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Overrides: a deviation names block, exercise, leg, what it sets and why; the worksheet prints what it changed.

// overridesOf are the overrides of an exercise and leg.
func (p *planner) overridesOf(e *program.Exercise, side unit.Side) (list []*client.Override) {
	for i := range p.block.Overrides {
		o := &p.block.Overrides[i]
		if o.Exercise == e.ID && (o.Side == "" || o.Side == side) {
			list = append(list, o)
		}
	}
	return list
}

func (p *planner) leftOut(e *program.Exercise, side unit.Side) bool {
	for _, o := range p.overridesOf(e, side) {
		if o.Leave {
			p.applied(o, side, "left out")
			return true
		}
	}
	return false
}

// override changes dose and range of a week; a range may only be tightened.
func (p *planner) override(d *WeekDose, e *program.Exercise, side unit.Side) (passOver basis.Said) {
	for _, o := range p.overridesOf(e, side) {
		for _, f := range []struct {
			what string
			have **int
			say  *int
		}{{"sets", &d.Dose.Sets, o.Sets}, {"reps", &d.Dose.Reps, o.Reps}, {"reserve", &d.Dose.Reserve, o.Reserve}} {
			if f.say != nil && f.what == "reserve" && p.allOut(*f.say, d, e, side) {
				p.applied(o, side, basis.Say("reserve {a} refused: all-out effort is closed", *f.say))
				continue
			}
			if f.say != nil {
				p.applied(o, side, basis.Say("{a} {b} → {c}", basis.Said(f.what), number(*f.have), *f.say))
				*f.have = f.say
			}
			if f.say != nil && f.what == "reps" {
				d.Dose.RepsTo = nil // so many, no more
			}
		}
		if o.Range != nil && d.Range != nil {
			met := d.Range.Meet(*o.Range)
			if met.Empty() {
				p.applied(o, side, basis.Say("range {a} → none", degrees(*d.Range)))
				return "the range of the override and the one allowed have nothing in common"
			}
			p.applied(o, side, basis.Say("range {a} → {b}", degrees(*d.Range), degrees(met)))
			d.Range = &met
		}
	}
	return ""
}

// allOut reports whether a reserve asks for maximal effort of a knee to which it is closed on a day of the week.
func (p *planner) allOut(reserve int, d *WeekDose, e *program.Exercise, side unit.Side) bool {
	if unit.Count(reserve) >= toFailureBelow {
		return false
	}
	for _, s := range p.knees.sides() {
		if side != s && side != unit.Both && !e.LoadsBoth {
			continue
		}
		for _, day := range daysFrom(d.Starts, 7) {
			if p.knees.of[s].rule(unit.MaximalEffort, []unit.Kind{unit.MaximalEffort}, day).allow.Closed() {
				return true
			}
		}
	}
	return false
}

func number(n *int) basis.Said {
	if n == nil {
		return "none"
	}
	return basis.Say("{a}", *n)
}

func degrees(r unit.Reach) basis.Said {
	return basis.Say("{a} to {b}°", float64(r.Straightest), float64(r.MostBent))
}

// byOverride marks a load that the therapist typed over the computed one.
var byOverride = basis.Rule{Name: "typed by the therapist, no more than computed", Sum: "min($1, $2)"}

// overrideLoad puts a typed load in the place of the computed one: never above it, unless the reason is the surgeon's,
// and never above the estimated maximum, whoever says so.
func (p *planner) overrideLoad(d *WeekDose, l *loader) {
	for _, o := range p.overridesOf(l.e, l.side) {
		typed, ok := o.Plates.Value()
		if !ok || l.device == nil || !weighs(l.device) {
			continue
		}
		word, _, _ := strings.Cut(o.Reason, ":")
		typedNum := o.Plates.Named(l.weekID(d.Week, "typed-load"))
		if !d.Plates.OK() {
			p.applied(o, l.side, basis.Say("week {a}: {b} kg is not used, no lift stands behind it", d.Week, float64(typed)))
			continue // no load without a lift of that exercise on that device (rules 24)
		}
		before := basis.Say("{a} kg", float64(d.Plates.Or(0)))
		if strings.TrimSpace(word) != "surgeon" {
			typedNum = basis.Of2(l.weekID(d.Week, "overridden-load"), byOverride, func(a, b unit.Kilograms) unit.Kilograms { return min(a, b) }, typedNum, d.Plates)
		}
		d.Plates = cutToDevice(l.weekID(d.Week, "load-set"), typedNum, l.place, l.device)
		if !d.Plates.OK() {
			d.FindYourWeight, d.Why = true, d.Plates.Why()
			d.Plates, d.Moved, d.PerSide = basis.Num[unit.Kilograms]{}, basis.Num[unit.Kilograms]{}, nil
			d.Share, d.Implied = basis.Num[unit.Percent]{}, basis.Num[unit.Count]{}
			p.applied(o, l.side, basis.Say("week {a}: {b}", d.Week, d.Why))
			continue
		}
		d.FindYourWeight, d.Why = false, ""
		d.Moved = finding.Moved(l.weekID(d.Week, "moved-overridden"), d.Plates, l.place, l.device, l.body)
		d.PerSide = perSide(d.Plates.Or(0), l.device)
		l.capEach(d)
		p.tooHeavy(o, d, l)
		if l.max.OK() && d.Dose.Reps != nil && len(d.Each) == 0 {
			l.afterCut(d)
			p.tooMany(o, d, l)
		}
		p.applied(o, l.side, basis.Say("week {a} load {b} → {c} kg", d.Week, before, float64(d.Plates.Or(typed))))
	}
}

// applied notes once what an override changed.
func (p *planner) applied(o *client.Override, side unit.Side, what basis.Said) {
	line := basis.Say("{a}, {b}", what, side)
	for i := range p.plan.Overrides {
		a := &p.plan.Overrides[i]
		if a.Override != o {
			continue
		}
		a.Applied = true
		if !slices.Contains(a.Changed, line) {
			a.Changed = append(a.Changed, line)
		}
	}
}
