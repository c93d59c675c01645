package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What this block asks otherwise than the block before, in their first weeks. Legs that change alike are one line.

// sinceLine is one exercise that is asked for otherwise.
type sinceLine struct {
	exercise, legs, what, why string
	short, shortWhy           string // the same for the first sheet
	sides                     []unit.Side
}

func (d *desk) sinceLines() (lines []sinceLine) {
	if d.p.Since == nil {
		return nil
	}
	for _, c := range d.p.Since.Changes {
		line := sinceLine{exercise: c.Exercise.Title, sides: []unit.Side{c.Side}, what: d.sinceWhat(c), why: nonEmpty("; ", d.sinceWhy(c), d.sinceBecause(c))}
		line.short, line.shortWhy = line.what, d.sinceWhy(c)
		switch {
		case c.Before == nil:
			line.short = d.say("since-new-short")
		case c.Now != nil && c.Now.Weeks[0].Week == 1 && c.Before.Weeks[0].Week > 1:
			line.short = d.say("since-began-short", "week", c.Before.Weeks[0].Week)
		}
		i := slices.IndexFunc(lines, func(have sinceLine) bool {
			return have.exercise == line.exercise && have.what == line.what && have.why == line.why
		})
		if i >= 0 {
			lines[i].sides = append(lines[i].sides, c.Side)
			continue
		}
		lines = append(lines, line)
	}
	for i := range lines {
		var legs []string
		for _, side := range lines[i].sides {
			legs = append(legs, d.leg(side))
		}
		lines[i].legs = nonEmpty(", ", legs...)
	}
	return d.goneTogether(lines)
}

// sinceShort is a line an exercise, with its legs.
func (d *desk) sinceShort() (lines []string) {
	var order []string
	legs := map[string][]string{}
	for _, l := range d.sinceLines() {
		var sides []string
		for _, side := range l.sides {
			sides = append(sides, d.word("side", string(side)))
		}
		key := "since-leg-why"
		if l.shortWhy == "" {
			key = "since-leg"
		}
		if legs[l.exercise] == nil {
			order = append(order, l.exercise)
		}
		legs[l.exercise] = append(legs[l.exercise], d.say(key, "leg", nonEmpty(", ", sides...), "what", l.short, "why", l.shortWhy))
	}
	for _, exercise := range order {
		lines = append(lines, d.say("since-line", "exercise", exercise, "what", nonEmpty("; ", legs[exercise]...)))
	}
	return lines
}

// goneTogether are the lines with what is asked no more of the same legs for one reason in one of them.
func (d *desk) goneTogether(lines []sinceLine) (fewer []sinceLine) {
	gone := d.say("since-gone")
	for _, l := range lines {
		i := slices.IndexFunc(fewer, func(have sinceLine) bool {
			return l.what == gone && have.what == gone && have.why == l.why && have.legs == l.legs
		})
		if i < 0 {
			fewer = append(fewer, l)
			continue
		}
		if !slices.Contains(strings.Split(fewer[i].exercise, "; "), l.exercise) {
			fewer[i].exercise += "; " + l.exercise
		}
	}
	return fewer
}

func (d *desk) sinceTable() Node {
	if d.p.Since == nil {
		return Node{}
	}
	table := d.table("since", d.say("since-caption", "n", d.p.Since.Block.Number, "day", d.w.Day(d.p.Since.Block.Starts)), "exercise", "leg", "changed", "why")
	for _, l := range d.sinceLines() {
		table.row("", l.exercise, l.legs, l.what, l.why)
	}
	if len(table.Rows) == 0 {
		return d.note("since-nothing", "n", d.p.Since.Block.Number)
	}
	return table
}

// sinceWhat is what is otherwise, part by part: before → now.
func (d *desk) sinceWhat(c plan.DoseChange) string {
	switch {
	case c.Before == nil:
		return d.say("since-new", "dose", nonEmpty(", ", d.doseOf(c.Now.Weeks[0]), d.onIn(c.Now)))
	case c.Now == nil:
		return d.say("since-gone")
	case c.Now.Weeks[0].Week > 1:
		return d.say("since-begins", "week", c.Now.Weeks[0].Week)
	case c.Before.Weeks[0].Week > 1:
		return d.say("since-began", "week", c.Before.Weeks[0].Week, "dose", nonEmpty(", ", d.doseOf(c.Now.Weeks[0]), d.onIn(c.Now)))
	}
	var parts []string
	turn := func(key, before, now string) {
		if before != now {
			parts = append(parts, d.say("since-turn", "what", d.word("since", key), "before", orDash(before), "now", orDash(now)))
		}
	}
	was, is := c.Before.Weeks[0], c.Now.Weeks[0]
	turn("load", d.onIn(c.Before), d.onIn(c.Now))
	turn("dose", partsApart(d.sinceParts(was), d.sinceParts(is)), partsApart(d.sinceParts(is), d.sinceParts(was)))
	turn("range", d.reach(was.Range), d.reach(is.Range))
	turn("level", numberOr(c.Before.Level), numberOr(c.Now.Level))
	return nonEmpty("; ", parts...)
}

// sinceBecause is why an exercise was passed over, in the block before or now; of a load, what holds it.
func (d *desk) sinceBecause(c plan.DoseChange) string {
	if c.Before == nil && c.Because != "" {
		return d.say("since-before", "why", d.reason(c.Because))
	}
	return d.reason(c.Because)
}

// sinceParts are the parts of a dose, with the force of a hold and what a cuff asks.
func (d *desk) sinceParts(w plan.WeekDose) []string {
	parts := d.doseParts(w.Dose)
	if w.HoldAt.OK() {
		parts = append(parts, d.say("hold-at", "amount", amount(w.HoldAt)))
	}
	if w.Pressure.OK() {
		parts = append(parts, d.say("since-cuff", "pressure", amount(w.Pressure)))
	}
	return parts
}

// onIn is what the first week asks to put on, set by set where sets differ, or how long to pull a band.
func (d *desk) onIn(pr *plan.Prescription) string {
	if w := pr.Weeks[0]; !w.FindYourWeight && (len(w.Each) > 0 || w.Stretch.OK()) {
		return d.plates(w)
	}
	return d.loadIn(pr)
}

// partsApart are the parts of two doses that are not in both.
func partsApart(a, b []string) string {
	return strings.Join(slices.DeleteFunc(slices.Clone(a), func(part string) bool { return slices.Contains(b, part) }), ", ")
}

// sinceWhy is what the load rests on now and rested on then.
func (d *desk) sinceWhy(c plan.DoseChange) string {
	if c.Before == nil || c.Now == nil || d.loadIn(c.Before) == d.loadIn(c.Now) {
		return ""
	}
	before, now := basis.Input(c.Before.OneRM), basis.Input(c.Now.OneRM)
	if !before.OK() && !now.OK() {
		return ""
	}
	on := c.Now.LiftedOn
	if on.IsZero() {
		on = c.Before.LiftedOn
	}
	return d.say("since-maximum", "before", orDash(tenths(c.Before.OneRM)), "now", orDash(tenths(c.Now.OneRM)), "day", d.w.ShortDay(on))
}

// loadIn is the load of the first week as it is marked on the device, or that it is still to be found; empty without one.
func (d *desk) loadIn(pr *plan.Prescription) string {
	w := pr.Weeks[0]
	if w.FindYourWeight {
		return d.say("since-find")
	}
	if kg, ok := w.Plates.Value(); ok && pr.Device != nil && pr.Device.Pounds {
		return withUnit(resultNumber(float64(kg)/unit.KilogramsPerPound), "lb")
	}
	return amount(w.Plates)
}

func orDash(text string) string {
	if text == "" {
		return "–"
	}
	return text
}

func numberOr(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}
