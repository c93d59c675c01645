package page

import (
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// Sets that differ, and what a dose needs besides a weight: a cuff, current, a force to hold, the length of a band.

// eachSet is one line a set, where the sets differ; then the fourth set by what was done in the third.
func (h handout) eachSet(p plan.Prescription, d plan.WeekDose) Node {
	var lines []string
	for i, s := range d.Each {
		lines = append(lines, h.w.Say("sets.set", "n", i+1, "what", h.oneSet(p, s)))
	}
	for i := 0; i < len(d.Fourth); i++ {
		f, last := d.Fourth[i], i
		for last+1 < len(d.Fourth) && d.Fourth[last+1].Plates.Or(0) == f.Plates.Or(0) {
			last++
		}
		times := h.w.Say("sets.or-more", "n", f.From)
		if to := d.Fourth[last].To; to > 0 {
			times = h.w.Say("sets.times", "from", f.From, "to", to)
		}
		load := h.loadOf(p, plan.WeekDose{Plates: f.Plates, PerSide: f.PerSide})
		lines = append(lines, h.w.Say("sets.fourth", "n", len(d.Each)+1, "times", times, "before", len(d.Each), "load", load))
		i = last
	}
	if len(lines) == 0 {
		return Node{}
	}
	return bullets("sets", lines...)
}

// oneSet is 10 times, 22.5 kg; or as many as you can.
func (h handout) oneSet(p plan.Prescription, s plan.SetDose) string {
	times := h.w.Say("sets.as-many")
	if s.Reps != nil {
		times = h.w.Say("dose.reps", "n", *s.Reps)
	}
	return times + dot + h.loadOf(p, plan.WeekDose{Plates: s.Plates, PerSide: s.PerSide})
}

// eachLoads are the loads of the sets in turn, in one line.
func (h handout) eachLoads(p plan.Prescription, d plan.WeekDose) string {
	loads := make([]string, len(d.Each))
	for i, s := range d.Each {
		loads[i] = h.oneSet(p, s)
	}
	return strings.Join(loads, "; ")
}

// besides is what is held or worn while the dose is done.
func (h handout) besides(p plan.Prescription, d plan.WeekDose) (parts []string) {
	if force, ok := d.HoldAt.Value(); ok {
		parts = append(parts, h.w.Say("sets.push", "force", h.force(force, d.HoldIn)))
	}
	if long, ok := d.Stretch.Value(); ok {
		parts = append(parts, h.w.Say("sets.stretch", "n", h.w.Number(float64(100*float64(long)), 0)))
	}
	return parts
}

// cuff is how a cuff is worn, or how far the current goes.
func (h handout) cuff(p plan.Prescription, d plan.WeekDose) string {
	if pressure, ok := d.Pressure.Value(); ok {
		return h.w.Say("sets.cuff", "n", h.w.Number(float64(pressure), 0))
	}
	if p.Slot != nil && p.Slot.Stimulated != nil && d.Time.OK() {
		return h.w.Say("sets.current")
	}
	return ""
}

// force writes a force in the unit of the gauge.
func (h handout) force(n unit.Newtons, in string) string {
	for _, e := range n.Endings() {
		if e.Symbol == in {
			return withUnit(h.w.Number(float64(n)/e.Factor, 1), in)
		}
	}
	return withUnit(h.w.Number(float64(n), 0), n.Unit())
}
