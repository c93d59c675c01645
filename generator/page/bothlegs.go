package page

import (
	"cmp"
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// bothLegs is what the tests say of both legs, drawn and in numbers, test by test, the newest first: absolute values beside every ratio.
// What is neither force nor the knee itself is folded, for its newest values stand on the first sheet; sums stand at the end of the page.
func (d *desk) bothLegs() Part {
	f := d.p.Found
	if f == nil || len(f.Strength)+len(f.Lifts)+len(f.Hops)+len(f.Knees)+len(f.Order) == 0 {
		return d.part("both-legs", d.note("no-tests"))
	}
	first, second := d.bothSides()[0], d.bothSides()[1]
	nodes := append(d.charts(), d.note("pairs-note", "first", d.leg(first), "second", d.leg(second)))
	nodes = append(nodes, d.strengths(f.Strength)...)
	if len(f.Knees) > 0 {
		nodes = append(nodes, d.knees(f.Knees))
	}
	others := append(append(d.lifts(f.Lifts), d.hops(f.Hops)...), d.otherTests(f)...)
	nodes = append(nodes, fold("sums", d.say("other-tests"), others...))
	return d.folded("both-legs", d.say("both-legs-line", "n", d.testDays(f)), nodes...)
}

// testDays is how many days of tests there are.
func (d *desk) testDays(f *finding.Findings) int {
	days := map[unit.Day]bool{}
	for _, k := range f.Knees {
		days[k.On] = true
	}
	for _, t := range f.Strength {
		days[t.On] = true
	}
	return len(days)
}

// pair is what both legs gave, the event's own first; empty where neither gave anything.
func pair(first, second string) string {
	if first == "" && second == "" {
		return ""
	}
	return cmp.Or(first, "–") + " / " + cmp.Or(second, "–")
}

// strengths is one table for each test of force.
func (d *desk) strengths(all []finding.StrengthTest) (tables []Node) {
	for _, id := range eachOnce(all, func(t finding.StrengthTest) string { return t.Test }) {
		table := d.table("strength", d.say("strength-caption", "test", id), "on", "force", "torque", "per-kg", "spread", "symmetry", "preop", "conditions", "why")
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
	a, b := legOf(d.bothSides()[0], t.Left, t.Right), legOf(d.bothSides()[1], t.Left, t.Right)
	table.row("", d.nearDay(t.On), pair(amount(a.Force), amount(b.Force)), pair(amount(a.Torque), amount(b.Torque)), pair(amount(a.PerKg), amount(b.PerKg)),
		pair(amount(a.Spread), amount(b.Spread)), amount(t.LSI), amount(t.Preop), d.conditions(t),
		nonEmpty("; ", d.missingOf(0, a.NotTested, a.StoppedForPain), d.missingOf(1, b.NotTested, b.StoppedForPain), d.whyNone(t.LSI, a.NotTested, b.NotTested), d.whyNone(t.Preop)))
}

// missingOf is why a leg gave nothing, with its name.
func (d *desk) missingOf(leg int, why basis.Said, forPain bool) string {
	says := nonEmpty(", ", d.reason(why), d.stopped(forPain))
	if says == "" {
		return ""
	}
	return d.say("of-leg", "leg", d.word("side", string(d.bothSides()[leg])), "what", says)
}

// whyNone is why there is no number, where that has not been said.
func (d *desk) whyNone(n basis.Input, said ...basis.Said) string {
	if n.OK() || slices.ContainsFunc(said, func(s basis.Said) bool { return s != "" }) {
		return ""
	}
	return d.reason(n.Why())
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

// lift is one line for both legs, or one for a set that both legs made together.
func (d *desk) lift(table *Node, t finding.LiftTest) {
	a, b := legOf(d.bothSides()[0], t.Left, t.Right), legOf(d.bothSides()[1], t.Left, t.Right)
	where := []string{d.reach(t.Range), nonEmpty(", ", t.Place, t.Device)}
	if lifted(a, d.bothSides()[0], t) || lifted(b, d.bothSides()[1], t) {
		table.row("", d.nearDay(t.On), d.say("each-leg"), pair(amount(a.Moved), amount(b.Moved)), pair(d.repetitions(a), d.repetitions(b)), pair(d.withSpan(a.OneRM, a.Span), d.withSpan(b.OneRM, b.Span)),
			d.amountOr(t.LSI), where[0], where[1], nonEmpty("; ", d.liftWhy(0, a), d.liftWhy(1, b)))
	}
	if l := t.Both; lifted(l, unit.Both, t) {
		table.row("", d.nearDay(t.On), d.leg(unit.Both), amount(l.Moved), d.repetitions(l), d.withSpan(l.OneRM, l.Span), "", where[0], where[1],
			nonEmpty("; ", d.reason(l.NotTested), d.stopped(l.StoppedForPain), d.reason(l.Doubts...)))
	}
}

func (d *desk) liftWhy(leg int, l finding.LiftLeg) string {
	return d.missingOf(leg, basis.Listed(append([]basis.Said{l.NotTested}, l.Doubts...)...), l.StoppedForPain)
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
		table := d.table("hops", d.say("hops-caption", "test", id), "on", "score", "of-height", "symmetry", "conditions", "why")
		for _, t := range slices.Backward(all) {
			if t.Test != id {
				continue
			}
			a, b := legOf(d.bothSides()[0], t.Left, t.Right), legOf(d.bothSides()[1], t.Left, t.Right)
			table.row("", d.nearDay(t.On), pair(scoreOf(a), scoreOf(b)), pair(amount(a.OfHeight), amount(b.OfHeight)), amount(t.LSI), d.word("score", t.Score),
				nonEmpty("; ", d.missingOf(0, a.NotTested, a.StoppedForPain), d.missingOf(1, b.NotTested, b.StoppedForPain), d.whyNone(t.LSI, a.NotTested, b.NotTested)))
		}
		tables = append(tables, table)
	}
	return tables
}

func scoreOf(l finding.HopLeg) string {
	return nonEmpty(", ", amount(l.Distance), amount(l.Time), amount(l.Count))
}

// knees is range, swelling and pain, day by day.
func (d *desk) knees(all []finding.KneeDay) Node {
	table := d.table("knees", d.say("knees-caption"), "on", "pain", "morning", "kind", "swelling", "straight", "bend", "lag", "mass")
	for _, k := range slices.Backward(all) {
		a, b := legOf(d.bothSides()[0], k.Left, k.Right), legOf(d.bothSides()[1], k.Left, k.Right)
		table.row("", d.nearDay(k.On), amount(k.Pain), amount(k.Morning), d.word("pain", k.PainKind), d.swelling(k), pair(amount(a.Straight), amount(b.Straight)),
			pair(amount(a.Flexion), amount(b.Flexion)), amount(k.QuadsLag), amount(k.Mass))
	}
	return table
}

// swelling is the grade, and whether it may be trusted.
func (d *desk) swelling(k finding.KneeDay) string {
	if k.Effusion == "" {
		return ""
	}
	grade := d.word("grade", string(k.Effusion))
	switch {
	case k.EffusionHidden == unit.Grade3:
		return d.say("swelling-not-valid", "grade", grade)
	case k.EffusionBy != "":
		return d.say("swelling-by", "grade", grade, "method", d.word("effusion-method", string(k.EffusionBy)))
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
