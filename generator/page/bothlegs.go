package page

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// bothLegs is what the tests say of both legs, test by test, the newest first: absolute values beside every ratio. The
// sums of what is decided by stand here; those of earlier tests at the end of the page.
func (d *desk) bothLegs() Part {
	f := d.p.Found
	if f == nil || len(f.Strength)+len(f.Lifts)+len(f.Hops)+len(f.Knees)+len(f.Order) == 0 {
		return d.part("both-legs", d.note("no-tests"))
	}
	nodes := []Node{d.measures(f)}
	nodes = append(nodes, d.strengths(f.Strength)...)
	nodes = append(nodes, d.lifts(f.Lifts)...)
	nodes = append(nodes, d.hops(f.Hops)...)
	nodes = append(nodes, d.otherTests(f)...)
	if len(f.Knees) > 0 {
		nodes = append(nodes, d.knees(f.Knees))
	}
	nodes = append(nodes, group("sums", d.say("sums-title"), 3, bullets("sum", d.measureSums(f)...)))
	return d.part("both-legs", nodes...)
}

// measures are the newest values, each with its error band and its doubts.
func (d *desk) measures(f *finding.Findings) Node {
	table := d.table("measures", d.say("measures-caption"), "id", "found", "on", "error", "why")
	for _, name := range f.Order {
		m := f.Measures[name]
		value := ""
		if m.OK {
			value = d.outcome(m.Value)
		}
		table.row("", name, value, d.w.Day(m.On), d.errorOf(m), d.reason(append([]basis.Said{m.Reason}, m.Doubts...)...))
	}
	return table
}

func (d *desk) errorOf(m finding.Measure) string {
	if !m.OK || m.Unit == "" && m.Grade != "" {
		return ""
	}
	if m.SEM == nil {
		return d.say("error-not-known")
	}
	return d.say("error", "sem", withUnit(resultNumber(*m.SEM), m.Unit), "source", m.SEMSource)
}

// measureSums are the sums of what criteria and newest values were found to be, inputs below.
func (d *desk) measureSums(f *finding.Findings) (lines []string) {
	for _, c := range allCriteria(d.p) {
		lines = append(lines, sums(&d.tests, c.Found)...)
	}
	for _, name := range f.Order {
		lines = append(lines, sums(&d.tests, f.Measures[name].Value)...)
	}
	return lines
}

// earlier are the sums of every other number in the tables of tests.
func (d *desk) earlier() Part {
	return d.part("earlier", bullets("sum", sums(&d.tests, testSteps(d.p.Found)...)...))
}

// strengths is one table for each test of force.
func (d *desk) strengths(all []finding.StrengthTest) (tables []Node) {
	for _, id := range eachOnce(all, func(t finding.StrengthTest) string { return t.Test }) {
		table := d.table("strength", d.say("strength-caption", "test", id), "on", "leg", "force", "torque", "per-kg", "spread", "symmetry", "deficit", "preop", "conditions")
		for _, t := range slices.Backward(all) {
			if t.Test == id {
				d.strength(&table, t)
			}
		}
		tables = append(tables, table)
	}
	return tables
}

func (d *desk) strength(table *Node, t finding.StrengthTest) {
	for i, side := range d.sides() {
		l := legOf(side, t.Left, t.Right)
		ratio, deficit, preop := "", "", ""
		if i == 0 {
			ratio, deficit, preop = d.amountOr(t.LSI), amount(t.Deficit), d.amountOr(t.Preop)
		}
		force := nonEmpty("; ", d.amountOr(l.Force), d.reason(l.NotTested), d.stopped(l.StoppedForPain))
		if l.NotTested != "" || l.StoppedForPain {
			force = nonEmpty("; ", amount(l.Force), d.reason(l.NotTested), d.stopped(l.StoppedForPain))
		}
		table.row("", d.w.Day(t.On), d.leg(side), force, amount(l.Torque), amount(l.PerKg), amount(l.Spread), ratio, deficit, preop, d.conditions(t))
	}
}

func (d *desk) conditions(t finding.StrengthTest) string {
	return nonEmpty(", ", t.Gauge, d.reason(basis.Said(t.Mode)), amount(t.Angle), d.word("score", t.Score))
}

func (d *desk) stopped(forPain bool) string {
	if forPain {
		return d.say("stopped-for-pain")
	}
	return ""
}

// lifts is one table for each exercise that was lifted.
func (d *desk) lifts(all []finding.LiftTest) (tables []Node) {
	for _, id := range eachOnce(all, func(t finding.LiftTest) string { return t.Exercise }) {
		table := d.table("lifts", d.say("lifts-caption", "exercise", d.exercise(id)), "on", "leg", "moved", "reps", "maximum", "symmetry", "range", "device", "why")
		for _, t := range slices.Backward(all) {
			if t.Exercise == id {
				d.lift(&table, t)
			}
		}
		tables = append(tables, table)
	}
	return tables
}

func (d *desk) lift(table *Node, t finding.LiftTest) {
	for i, side := range append(d.sides(), unit.Both) {
		l := legOf(side, t.Left, t.Right)
		if side == unit.Both {
			l = t.Both
		}
		if !lifted(l, side, t) {
			continue
		}
		ratio := ""
		if i == 0 {
			ratio = d.amountOr(t.LSI)
		}
		table.row("", d.w.Day(t.On), d.leg(side), amount(l.Moved), d.repetitions(l), d.withSpan(l.OneRM, l.Span), ratio, d.reach(t.Range), nonEmpty(", ", t.Place, t.Device),
			nonEmpty("; ", d.reason(l.NotTested), d.stopped(l.StoppedForPain), d.reason(l.Doubts...)))
	}
}

// lifted reports whether a set has a line of its own: a test of single legs has none for both together, nor the other way round.
func lifted(l finding.LiftLeg, side unit.Side, t finding.LiftTest) bool {
	other := t.Both.Moved.OK()
	if side == unit.Both {
		other = t.Left.Moved.OK() || t.Right.Moved.OK()
	}
	return l.Moved.OK() || l.StoppedForPain || !other
}

func (d *desk) repetitions(l finding.LiftLeg) string {
	if !l.Reps.OK() {
		return ""
	}
	return d.say("reps-and-reserve", "reps", amount(l.Reps), "reserve", d.amountOr(l.Reserve))
}

// hops is one table for each hop test.
func (d *desk) hops(all []finding.HopTest) (tables []Node) {
	for _, id := range eachOnce(all, func(t finding.HopTest) string { return t.Test }) {
		table := d.table("hops", d.say("hops-caption", "test", id), "on", "leg", "score", "of-height", "symmetry", "conditions", "why")
		for _, t := range slices.Backward(all) {
			if t.Test != id {
				continue
			}
			for i, side := range d.sides() {
				l := legOf(side, t.Left, t.Right)
				ratio := ""
				if i == 0 {
					ratio = d.amountOr(t.LSI)
				}
				table.row("", d.w.Day(t.On), d.leg(side), nonEmpty(", ", amount(l.Distance), amount(l.Time), amount(l.Count)), amount(l.OfHeight), ratio, d.word("score", t.Score),
					nonEmpty("; ", d.reason(l.NotTested), d.stopped(l.StoppedForPain)))
			}
		}
		tables = append(tables, table)
	}
	return tables
}

// knees is range, swelling and pain, day by day.
func (d *desk) knees(all []finding.KneeDay) Node {
	table := d.table("knees", d.say("knees-caption"), "on", "pain", "morning", "kind", "swelling", "stands", "mass", "lag")
	first, second := d.sides()[0], d.sides()[1]
	for _, head := range []string{"column-straight", "column-bend"} {
		table.Head = append(table.Head, d.say(head, "leg", d.leg(first)), d.say(head, "leg", d.leg(second)))
	}
	for _, k := range slices.Backward(all) {
		a, b := legOf(first, k.Left, k.Right), legOf(second, k.Left, k.Right)
		table.row("", d.w.Day(k.On), amount(k.Pain), amount(k.Morning), d.word("pain", k.PainKind), d.swelling(k), standsAt(k.EffusionAt, nil),
			amount(k.Mass), amount(k.QuadsLag), amount(a.Straight), amount(b.Straight), amount(a.Flexion), amount(b.Flexion))
	}
	return table
}

// swelling is the grade, and whether it may be trusted.
func (d *desk) swelling(k finding.KneeDay) string {
	if k.Effusion == "" {
		return ""
	}
	grade := d.word("grade", string(k.Effusion))
	if !k.EffusionValid {
		grade = d.say("swelling-not-valid", "grade", grade)
	}
	return grade
}

// legOf picks the value of a side.
func legOf[T any](side unit.Side, left, right T) T {
	if side == unit.Right {
		return right
	}
	return left
}

// eachOnce are the names in a list, each once, in order of their first appearance from the end: what was tested last comes first.
func eachOnce[T any](all []T, name func(T) string) (found []string) {
	for _, t := range slices.Backward(all) {
		if n := name(t); !slices.Contains(found, n) {
			found = append(found, n)
		}
	}
	return found
}

// exercise is the title of an exercise of the program, or its id.
func (d *desk) exercise(id string) string {
	if e := d.p.Program.Exercises[id]; e != nil {
		return e.Title
	}
	return id
}
