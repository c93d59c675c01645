package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// prescribed is each exercise and leg: what to do week by week, and the sums that lead to it.
func (d *desk) prescribed() Part {
	if len(d.p.Prescriptions) == 0 {
		return d.part("prescribed", d.note("nothing-prescribed"))
	}
	nodes := append([]Node{d.note("week-note")}, d.lighterWeeks()...)
	for _, pr := range d.p.Prescriptions {
		nodes = append(nodes, d.prescription(pr))
	}
	return d.part("prescribed", nodes...)
}

func (d *desk) prescription(pr plan.Prescription) Node {
	nodes := []Node{factual("prescription-facts",
		d.labelled("slot", d.slot(pr.Slot)),
		d.labelled("device", d.device(pr)),
		d.labelled("setup", d.setup(pr)),
		d.labelled("sessions", d.sessions(pr)),
		d.labelled("level", d.level(pr)),
		d.labelled("tested", d.tested(pr)),
		d.labelled("maximum", d.maximum(pr)),
		d.labelled("body-moves", d.bodyMoves(pr)),
		d.labelled("step", d.step(pr)),
		d.labelled("tonnage", d.planned(pr)),
		d.labelled("mechanics", d.mechanics(pr.Mechanics)),
		d.labelled("from-isometric", d.fromIsometric(pr.FromIsometric)),
		d.labelled("cuff", d.cuffed(pr)),
		d.labelled("current", d.stimulated(pr)),
		d.labelled("cautions", strings.Join(pr.Exercise.Cautions, "; ")),
		d.labelled("not-for", strings.Join(pr.Exercise.NotFor, "; ")),
	), d.weeks(pr)}
	if lines := d.doseSums(pr); len(lines) > 0 {
		nodes = append(nodes, bullets("sum", lines...))
	}
	return group("prescription", d.say("prescription", "exercise", pr.Exercise.Title, "leg", d.roleOf(pr)), 3, nodes...)
}

// sessions are the sessions of a prescription, each with its length where that is known.
func (d *desk) sessions(pr plan.Prescription) string {
	all := make([]string, len(pr.Sessions))
	for i, id := range pr.Sessions {
		all[i] = id
		if n := d.p.Minutes[id]; n > 0 {
			all[i] = d.say("session-minutes", "session", id, "n", n)
		}
	}
	return strings.Join(all, ", ")
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

// weeks is the table of the weeks; weeks that ask the same are one line, and without a load its columns are left out.
func (d *desk) weeks(pr plan.Prescription) Node {
	columns := []string{"week", "due", "dose", "range", "plates", "moved", "share", "implied", "why"}
	if !loaded(pr) {
		columns = slices.Delete(columns, 4, 8)
	}
	table := d.table("weeks", d.say("weeks-caption"), columns...)
	for i := 0; i < len(pr.Weeks); {
		j, cells := i+1, d.weekOf(pr.Weeks[i], loaded(pr))
		for j < len(pr.Weeks) && slices.Equal(cells, d.weekOf(pr.Weeks[j], loaded(pr))) {
			j++
		}
		var numbers []int
		for _, w := range pr.Weeks[i:j] {
			numbers = append(numbers, w.Week)
		}
		table.row("", append([]string{d.say("week", "number", spanOf(numbers), "day", d.w.ShortDay(pr.Weeks[i].Starts))}, cells...)...)
		i = j
	}
	return table
}

// weekOf is a line of the table without its week.
func (d *desk) weekOf(w plan.WeekDose, loaded bool) []string {
	due := "ceiling"
	if w.Due {
		due = "due"
	}
	cells := []string{d.say(due), d.doseOf(w), d.rangeOf(w)}
	if loaded {
		cells = append(cells, d.plates(w), amount(w.Moved), amount(w.Share), left(w.Implied))
	}
	return append(cells, d.whyDose(w))
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
func (d *desk) dose(x program.Dose) string {
	var all []string
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
	return strings.Join(all, ", ")
}

// doseOf is the dose of a week, with the force of a hold.
func (d *desk) doseOf(w plan.WeekDose) string {
	if !w.HoldAt.OK() {
		return d.dose(w.Dose)
	}
	return nonEmpty(", ", d.dose(w.Dose), d.say("hold-at", "amount", amount(w.HoldAt)))
}

// doseSums is the chain of the loads: the first week down to what was typed, later weeks only what is new in them.
func (d *desk) doseSums(pr plan.Prescription) []string {
	c := d.newSums()
	var lines []string
	for _, w := range pr.Weeks {
		lines = append(lines, sums(c, doseSteps(w)...)...)
	}
	if loaded(pr) {
		lines = append(lines, sums(c, liftedSteps(pr)...)...)
	}
	return lines
}
