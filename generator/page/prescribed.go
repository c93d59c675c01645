package page

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// prescribed is each exercise with its legs: what to do week by week and what that rests on; then the choices that were passed over. The
// sums stand at the end of the page.
func (d *desk) prescribed() Part {
	if len(d.p.Prescriptions) == 0 {
		return d.part("prescribed", append([]Node{d.note("nothing-prescribed")}, d.passedOver())...)
	}
	nodes := append([]Node{d.note("week-note")}, d.lighterWeeks()...)
	nodes = append(nodes, d.sessionLengths())
	each := d.byExercise()
	isometric := false
	for _, legs := range each {
		nodes = append(nodes, d.prescription(legs))
		isometric = isometric || slices.ContainsFunc(legs, func(pr plan.Prescription) bool { return pr.FromIsometric != nil })
	}
	if isometric {
		nodes = append(nodes, d.note("isometric-note"))
	}
	return d.folded("prescribed", d.say("prescribed-line", "n", len(each)), append(nodes, d.passedOver())...)
}

// byExercise are the prescriptions of each exercise, in the order of the plan.
func (d *desk) byExercise() (each [][]plan.Prescription) {
	at := map[string]int{}
	for _, pr := range d.p.Prescriptions {
		i, known := at[pr.Exercise.ID]
		if !known {
			i = len(each)
			at[pr.Exercise.ID] = i
			each = append(each, nil)
		}
		each[i] = append(each[i], pr)
	}
	return each
}

func (d *desk) prescription(legs []plan.Prescription) Node {
	e := legs[0].Exercise
	said := func(key string, of func(plan.Prescription) string) Fact { return d.labelled(key, d.ofLegs(legs, of)) }
	table, shared := d.weeks(legs)
	facts := append(shared,
		said("slot", func(pr plan.Prescription) string { return d.slot(pr.Slot) }),
		said("sessions", func(pr plan.Prescription) string { return strings.Join(pr.Sessions, ", ") }),
		said("device", func(pr plan.Prescription) string { return nonEmpty("; ", d.device(pr), d.setup(pr)) }),
		said("level", d.level), said("tested", d.tested), said("maximum", d.maximum), said("body-moves", d.bodyMoves), said("step", d.step), said("tonnage", d.planned),
		said("mechanics", func(pr plan.Prescription) string { return d.mechanics(pr.Mechanics) }),
		said("from-isometric", func(pr plan.Prescription) string { return d.fromIsometric(pr.FromIsometric) }),
		said("cuff", d.cuffed), said("current", d.stimulated),
		d.labelled("cautions", strings.Join(e.Cautions, "; ")), d.labelled("not-for", strings.Join(e.NotFor, "; ")))
	return group("prescription", e.Title, 3, table, factual("prescription-facts", facts...))
}

// ofLegs is what is said of each leg: once where all legs say the same.
func (d *desk) ofLegs(legs []plan.Prescription, of func(plan.Prescription) string) string {
	var parts []string
	first, same := of(legs[0]), true
	for _, pr := range legs {
		says := of(pr)
		same = same && says == first
		if says != "" {
			parts = append(parts, d.say("of-leg", "leg", d.word("side", string(pr.Side)), "what", says))
		}
	}
	if same {
		return first
	}
	return strings.Join(parts, "; ")
}

// sessionLengths is about how long each session takes.
func (d *desk) sessionLengths() Node {
	var all []string
	for _, id := range slices.Sorted(maps.Keys(d.p.Minutes)) {
		all = append(all, d.say("session-minutes", "session", id, "n", d.p.Minutes[id]))
	}
	if len(all) == 0 {
		return Node{}
	}
	return d.note("session-lengths", "which", strings.Join(all, ", "))
}

// level is the rung of a ladder to begin on.
func (d *desk) level(pr plan.Prescription) string {
	if pr.Level == 0 {
		return ""
	}
	return d.say("level", "n", pr.Level, "all", len(pr.Exercise.Levels))
}

// roleOf names the leg of a prescription by the role that the plan gave it.
func (d *desk) roleOf(pr plan.Prescription) string {
	return d.word("role", pr.Role, "side", d.word("side", string(pr.Side)))
}

func (d *desk) slot(s *program.Slot) string {
	if s == nil {
		return ""
	}
	return nonEmpty("; ", s.ID, nonEmpty(", ", s.Source, d.word("standing", string(s.Standing))))
}

func (d *desk) device(pr plan.Prescription) string {
	if pr.Device == nil {
		return ""
	}
	return nonEmpty(", ", pr.Device.Name, pr.Device.ID, amountAs(d, "carriage", pr.Device.Carriage), amountAs(d, "bar", pr.Device.Bar))
}

func amountAs[Q unit.Quantity](d *desk, key string, n basis.Num[Q]) string {
	if !n.OK() {
		return ""
	}
	return d.say(key, "amount", amount(n))
}

func (d *desk) setup(pr plan.Prescription) string {
	s := pr.Setup
	if s == nil {
		return ""
	}
	var all []string
	for _, hole := range []struct{ key, at string }{{"seat", s.Seat}, {"back", s.Back}, {"pad", s.Pad}} {
		if hole.at != "" {
			all = append(all, d.say(hole.key, "at", hole.at))
		}
	}
	return strings.Join(all, ", ")
}

func (d *desk) tested(pr plan.Prescription) string {
	logged := ""
	if pr.Logged {
		logged = d.say("from-log")
	}
	return nonEmpty(", ", d.w.Day(pr.LiftedOn), d.reach(pr.Tested), logged)
}

// maximum is the estimate behind the load, or why there is none; a dose without a load has neither.
func (d *desk) maximum(pr plan.Prescription) string {
	if !loaded(pr) || pr.OneRM.Step() == nil {
		return ""
	}
	return d.withSpan(pr.OneRM, pr.Span)
}

func (d *desk) rangeOf(w plan.WeekDose) string {
	if w.NearPin == 0 {
		return nonEmpty(", ", d.reach(w.Range), d.reason(w.RangeBy))
	}
	return nonEmpty(", ", d.reach(w.Range), d.reason(w.RangeBy), d.say("pin", "number", w.NearPin, "bend", degreesText(w.PinDeg)))
}

// plates is what is put on or pinned, and where it hangs.
func (d *desk) plates(w plan.WeekDose) string {
	switch {
	case len(w.Each) > 0:
		return d.eachSet(w)
	case w.Stretch.OK():
		return d.say("stretched", "amount", amount(w.Stretch))
	case len(w.PerSide) == 0:
		return amount(w.Plates)
	}
	side := make([]string, len(w.PerSide))
	for i, kg := range w.PerSide {
		side[i] = resultNumber(float64(kg))
	}
	return d.say("per-side", "load", amount(w.Plates), "plates", strings.Join(side, " + "))
}

// dose writes what is said of a dose and leaves out what is not.
func (d *desk) dose(x program.Dose) string { return strings.Join(d.doseParts(x), ", ") }

func (d *desk) doseParts(x program.Dose) (all []string) {
	add := func(key string, v *int) {
		if v != nil {
			all = append(all, d.say(key, "n", strconv.Itoa(*v)))
		}
	}
	add("dose-sets", x.Sets)
	if x.RepsTo != nil {
		all = append(all, d.say("dose-reps-to", "from", number(x.Reps), "to", number(x.RepsTo)))
	} else {
		add("dose-reps", x.Reps)
	}
	add("dose-reserve", x.Reserve)
	if x.HoldFor != nil {
		all = append(all, d.say("dose-hold", "n", resultNumber(float64(*x.HoldFor))))
	}
	add("dose-times", x.TimesADay)
	add("dose-minutes", x.Minutes)
	add("dose-contacts", x.Contacts)
	add("dose-rounds", x.Rounds)
	if x.WorkFor != nil {
		all = append(all, d.say("dose-work", "n", resultNumber(float64(*x.WorkFor))))
	}
	add("dose-effort", x.Effort)
	if x.Talk != "" {
		all = append(all, d.word("talk", string(x.Talk)))
	}
	if x.Rest != nil {
		all = append(all, d.say("dose-rest", "n", resultNumber(float64(*x.Rest))))
	}
	return all
}

// doseOf is the dose of a week, with the force of a hold.
func (d *desk) doseOf(w plan.WeekDose) string {
	if !w.HoldAt.OK() {
		return d.dose(w.Dose)
	}
	return nonEmpty(", ", d.dose(w.Dose), d.say("hold-at", "amount", amount(w.HoldAt)))
}

// doseSums is the chain of the loads, week by week down to what was typed.
func (d *desk) doseSums() (lines []string) {
	for _, pr := range d.p.Prescriptions {
		for _, w := range pr.Weeks {
			lines = append(lines, sums(&d.tests, doseSteps(w)...)...)
		}
		if loaded(pr) {
			lines = append(lines, sums(&d.tests, liftedSteps(pr)...)...)
		}
	}
	return lines
}
