package page

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// found is what the newest tests say of both legs, with what has become of it: a dozen lines to decide by. The letter tells the same without
// lifts, which are a matter of the room.
func (d *desk) found(lifts bool) Node {
	table := Node{Kind: "table", Class: "found", Title: d.say("found-caption", "day", d.w.Day(d.newest())),
		Head: []string{d.say("column-what"), d.leg(d.bothSides()[0]), d.leg(d.bothSides()[1]), d.say("column-compared"), d.say("column-since")}}
	for _, row := range d.foundRows(lifts) {
		table.row("", row...)
	}
	if len(table.Rows) == 0 {
		return d.note("no-tests")
	}
	return table
}

func (d *desk) foundRows(lifts bool) (rows [][]string) {
	f := d.p.Found
	if f == nil {
		return nil
	}
	for _, id := range eachOnce(f.Strength, func(t finding.StrengthTest) string { return t.Test }) {
		rows = append(rows, d.foundStrength(id))
	}
	if lifts {
		for _, id := range eachOnce(f.Lifts, func(t finding.LiftTest) string { return t.Exercise }) {
			rows = append(rows, d.foundLift(id))
		}
	}
	for _, id := range eachOnce(f.Hops, func(t finding.HopTest) string { return t.Test }) {
		rows = append(rows, d.foundHop(id))
	}
	rows = append(rows, d.foundKnee()...)
	for _, id := range eachOnce(f.Scores, func(s finding.Score) string { return s.ID }) {
		s := newestOf(f.Scores, func(s finding.Score) bool { return s.ID == id })
		rows = append(rows, []string{d.titled(d.measuresOf([]string{id})[0], s.On), tenths(s.Score), "", "", d.since(id)})
	}
	return slices.DeleteFunc(rows, func(row []string) bool { return row[1]+row[2] == "" })
}

// newestOf is the last of those that are asked for.
func newestOf[T any](all []T, is func(T) bool) (last T) {
	for _, t := range slices.Backward(all) {
		if is(t) {
			return t
		}
	}
	return last
}

// titled is what was tested, with its day where that is not the newest test day.
func (d *desk) titled(what string, on unit.Day) string { return nonEmpty(", ", what, d.notNewest(on)) }

func (d *desk) foundStrength(id string) []string {
	t := newestOf(d.p.Found.Strength, func(t finding.StrengthTest) bool { return t.Test == id })
	of := func(l finding.Leg) string {
		if l.Torque.OK() {
			return nonEmpty("; ", cutAt(l.Torque, 0.1), cutAt(l.PerKg, 0.01))
		}
		return amount(l.Force)
	}
	compared := nonEmpty("; ", d.bare(id+".lsi", amount(t.LSI)), d.against(amount(t.Preop)))
	return []string{d.titled(d.say("found-strength", "test", id), t.On), of(legOf(d.bothSides()[0], t.Left, t.Right)), of(legOf(d.bothSides()[1], t.Left, t.Right)), compared, d.since(id + ".lsi")}
}

// cutAt is a number cut down to a step, as one reads it; the part below has it whole.
func cutAt[Q unit.Quantity](n basis.Num[Q], step Q) string {
	v, ok := n.Value()
	if !ok {
		return ""
	}
	return withUnit(resultNumber(float64(unit.CutTo(v, step))), v.Unit())
}

func (d *desk) against(preop string) string {
	if preop == "" {
		return ""
	}
	return d.say("found-preop", "ratio", preop)
}

// bare is a ratio with its error, where that is known.
func (d *desk) bare(measure, ratio string) string {
	m := d.p.Found.Measures[measure]
	if ratio == "" || m.SEM == nil {
		return ratio
	}
	return d.say("found-error", "value", ratio, "sem", readTo(*m.SEM, m.Unit))
}

func (d *desk) foundLift(id string) []string {
	t := newestOf(d.p.Found.Lifts, func(t finding.LiftTest) bool { return t.Exercise == id && !t.Both.Moved.OK() })
	return []string{d.titled(d.say("found-lift", "exercise", d.exercise(id)), t.On), tenths(legOf(d.bothSides()[0], t.Left, t.Right).OneRM), tenths(legOf(d.bothSides()[1], t.Left, t.Right).OneRM),
		d.bare(id+".lsi", amount(t.LSI)), d.since(id + ".lsi")}
}

func (d *desk) foundHop(id string) []string {
	t := newestOf(d.p.Found.Hops, func(t finding.HopTest) bool { return t.Test == id })
	name := "hop-" + id + ".lsi"
	return []string{d.titled(d.measuresOf([]string{name})[0], t.On), scoreOf(legOf(d.bothSides()[0], t.Left, t.Right)), scoreOf(legOf(d.bothSides()[1], t.Left, t.Right)), d.bare(name, amount(t.LSI)), d.since(name)}
}

// foundKnee is range, swelling and pain: of the event's knee, and the range of the other, which may have been measured on another day.
func (d *desk) foundKnee() [][]string {
	knees := d.p.Found.Knees
	mine, theirs := d.bothSides()[0], d.bothSides()[1]
	angle := func(title, measure string, of func(finding.KneeAngles) string, compared string) []string {
		newest := func(side unit.Side) (unit.Day, string) {
			value := func(k finding.KneeDay) string { return of(legOf(side, k.Left, k.Right)) }
			k := newestOf(knees, func(k finding.KneeDay) bool { return value(k) != "" })
			return k.On, value(k)
		}
		on, own := newest(mine)
		otherOn, other := newest(theirs)
		if other != "" && own != "" && otherOn != on {
			other = nonEmpty(", ", other, d.nearDay(otherOn))
		}
		if own == "" {
			on = otherOn
		}
		return []string{d.titled(d.say(title), on), own, other, compared, d.since(measure)}
	}
	error := ""
	if m := d.p.Found.Measures["extension"]; m.SEM != nil {
		error = d.say("found-band", "sem", readTo(*m.SEM, m.Unit))
	}
	swollen := newestOf(knees, func(k finding.KneeDay) bool { return k.Effusion != "" })
	hurt := newestOf(knees, func(k finding.KneeDay) bool { return k.Pain.OK() })
	return [][]string{
		angle("found-straight", "extension", d.straightEnd, error),
		angle("found-bend", "flexion", func(a finding.KneeAngles) string { return amount(a.Flexion) }, d.valueOf("flexion.percent-of-other")),
		{d.titled(d.say("found-swelling"), swollen.On), d.swelling(swollen), "", "", ""},
		{d.titled(d.say("found-pain"), hurt.On), nonEmpty(", ", pair(amount(hurt.Pain), amount(hurt.Morning)), d.word("pain", hurt.PainKind)), "", "", d.since("pain")},
	}
}

// valueOf is the newest value of a measure.
func (d *desk) valueOf(measure string) string {
	if m := d.p.Found.Measures[measure]; m.OK {
		return d.outcome(m.Value)
	}
	return ""
}
