package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

const dot = " · "

// legBox is what one leg does: the dose of the first week in large type, then what may change in later weeks.
func (h handout) legBox(m move, p plan.Prescription) Node {
	first := p.Weeks[0]
	nodes := []Node{
		paragraph("when", h.begins(p)),
		h.doseLine(p, first),
		h.eachSet(p, first),
		paragraph("manner", strings.Join(h.manner(first), dot)),
		paragraph("reps-first", h.repsFirst(first)),
		paragraph("plates", h.plates(p, first)),
		paragraph("cuff", h.cuff(p, first)),
		paragraph("range", h.ownRange(m, p)),
		paragraph("brace", h.braceOn(p, first)),
		h.later(p, h.at(m) != ""),
	}
	side := "leg-other"
	if h.turn(p) == 0 {
		side = "leg-own"
	}
	return group("leg "+side+" side-"+string(p.Side), h.boxTitle(p), 4, nodes...)
}

// boxTitle names the leg of a box: LEFT leg (operated).
func (h handout) boxTitle(p plan.Prescription) string {
	title := h.w.Say("leg." + string(p.Side))
	if role := h.role(p); role != "" {
		return h.w.Say("leg.with-role", "leg", title, "role", role)
	}
	return title
}

// begins says from which week on the box counts, where it is not the first, and what to do until told. That later weeks are ceilings
// stands above all weeks.
func (h handout) begins(p plan.Prescription) string {
	if first := p.Weeks[0]; !first.Due {
		return joined(h.w.Say("dose.from-week", "week", first.Week), h.untilBegun(p))
	}
	return ""
}

// doseLine is the dose in digits, 3 × 10 · 20 kg on each side; manner follows it: stop when 2 more were possible · rest 2 min.
func (h handout) doseLine(p plan.Prescription, d plan.WeekDose) Node {
	spans := []Span{strong(strings.Join(h.work(p, d), dot))}
	if d.FindYourWeight {
		spans = append(spans, strong(dot), Span{Text: h.w.Say("load.find"), Href: "#find-your-weight", Strong: true})
	}
	return spoken("dose", spans...)
}

// work is how much of what: the amount and the load.
func (h handout) work(p plan.Prescription, d plan.WeekDose) (parts []string) {
	if p.Level > 0 {
		parts = append(parts, h.rung(p, d))
	}
	parts = append(parts, h.amount(d)...)
	parts = append(parts, h.besides(p, d)...)
	if load := h.loadOf(p, d); load != "" && len(d.Each) == 0 {
		parts = append(parts, load)
	}
	return parts
}

// amount is the dose without its load. What is not said is not part of it.
func (h handout) amount(d plan.WeekDose) (parts []string) {
	w, do := h.w, d.Dose
	times, hold := number(do.Sets), do.HoldFor
	if times == "" {
		times = number(do.Reps)
	}
	switch {
	case do.WorkFor != nil:
		parts = append(parts, h.timed(do))
	case len(d.Each) > 0:
		parts = append(parts, w.Say("dose.sets", "n", len(d.Each)+min(1, len(d.Fourth))))
	case do.Sets != nil && do.Reps == nil && hold == nil && do.Contacts != nil:
		parts = append(parts, w.Say("dose.sets-contacts", "sets", *do.Sets, "n", *do.Contacts))
	case do.Sets != nil && do.RepsTo != nil:
		parts = append(parts, w.Say("dose.sets-reps-to", "sets", *do.Sets, "from", *do.Reps, "to", *do.RepsTo))
	case do.RepsTo != nil:
		parts = append(parts, w.Say("dose.reps-to", "from", *do.Reps, "to", *do.RepsTo))
	case do.Sets != nil && do.Reps != nil:
		parts = append(parts, w.Say("dose.sets-reps", "sets", *do.Sets, "reps", *do.Reps))
		if hold != nil {
			parts = append(parts, w.Say("dose.hold", "time", h.time(*hold)))
		}
	case hold != nil && times != "":
		parts = append(parts, w.Say("dose.times-hold", "n", times, "time", h.time(*hold)))
	case hold != nil:
		parts = append(parts, w.Say("dose.hold-once", "time", h.time(*hold)))
	case do.Minutes != nil && do.Sets != nil:
		parts = append(parts, w.Say("dose.sets-minutes", "sets", *do.Sets, "n", *do.Minutes))
	case do.Sets != nil:
		parts = append(parts, w.Say("dose.sets", "n", *do.Sets))
	case do.Reps != nil:
		parts = append(parts, w.Say("dose.reps", "n", *do.Reps))
	}
	if do.Minutes != nil && (do.Sets == nil || do.Reps != nil) {
		parts = append(parts, w.Say("dose.minutes", "n", *do.Minutes))
	}
	if do.Contacts != nil && (do.Sets == nil || do.Reps != nil || hold != nil) {
		parts = append(parts, w.Say("dose.contacts", "n", *do.Contacts))
	}
	if do.TimesADay != nil {
		parts = append(parts, w.Say("dose.times-a-day", "n", *do.TimesADay))
	}
	return parts
}

// manner is how hard and how rested.
func (h handout) manner(d plan.WeekDose) (parts []string) {
	switch r := d.Dose.Reserve; {
	case r == nil:
	case *r == 0 && d.FindYourWeight && d.Dose.Reps != nil: // the first weight is found with some in reserve
		parts = append(parts, h.w.Say("dose.just-so-often", "n", *d.Dose.Reps))
	case *r == 0:
		parts = append(parts, h.w.Say("dose.to-the-end"))
	default:
		parts = append(parts, h.w.Say("dose.reserve", "n", *r))
	}
	if felt := h.felt(d.Dose); felt != "" {
		parts = append(parts, felt)
	}
	if r := d.Dose.Rest; r != nil && *r > 0 && d.Dose.Rounds == nil {
		parts = append(parts, h.w.Say("dose.rest", "time", h.time(*r)))
	}
	return parts
}

// repsFirst says that repetitions come before weight, where the dose is a range of them.
func (h handout) repsFirst(d plan.WeekDose) string {
	if d.Dose.RepsTo == nil {
		return ""
	}
	key := "dose.reps-first"
	if d.Plates.OK() || d.FindYourWeight {
		key = "dose.reps-first-load"
	}
	return h.w.Say(key, "from", *d.Dose.Reps, "to", *d.Dose.RepsTo)
}

// time writes seconds, whole minutes, or both from 2 minutes on.
func (h handout) time(s unit.Seconds) string {
	if m := int(s) / 60; m > 0 && unit.Seconds(m*60) == s {
		return h.w.Say("time.min", "n", m)
	}
	if m := int(s) / 60; m >= 2 {
		return h.w.Say("time.min-s", "n", m, "s", h.w.Number(float64(s)-float64(m*60), 1))
	}
	return h.w.Say("time.s", "n", h.w.Number(float64(s), 1))
}

// rangeOf is the allowed bend in words, with the pin that stops there.
func (h handout) rangeOf(p plan.Prescription, d plan.WeekDose) string {
	if d.Range == nil || d.Range.Empty() {
		return ""
	}
	says := h.inRange(p.Exercise, *d.Range, d.Bends, measuredEnd(d))
	if d.Range.Arc() == 0 && d.Range.MostBent == 0 && h.lacksStraight(p.Side) {
		says = h.w.Say("range.hold-as-straight")
	}
	return strings.TrimSpace(says + " " + h.pin(d.NearPin, d.PinDeg))
}

// sameRange is the range of an exercise, where it is the same word for word in the boxes of both legs.
func (h handout) sameRange(m move) string {
	says := h.rangeOf(m.Legs[0], m.Legs[0].Weeks[0])
	if len(m.Legs) < 2 || slices.ContainsFunc(m.Legs, func(p plan.Prescription) bool { return h.rangeOf(p, p.Weeks[0]) != says }) {
		return ""
	}
	return says
}

// ownRange is the range in the box of one leg, where it is not that of both.
func (h handout) ownRange(m move, p plan.Prescription) string {
	if h.sameRange(m) != "" {
		return ""
	}
	return h.rangeOf(p, p.Weeks[0])
}

// rangeOfAll is the range of both legs in one line that names them, above their boxes: how far comes before how heavy.
func (h handout) rangeOfAll(m move) Node {
	says := h.sameRange(m)
	if says == "" {
		return Node{}
	}
	return spoken("range all-legs", strong(h.w.Say("leg.each-is")), Span{Text: " " + says})
}

func number(n *int) string {
	if n == nil {
		return ""
	}
	return strconv.Itoa(*n)
}
