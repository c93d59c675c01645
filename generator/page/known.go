package page

import (
	"paceleaf/generator/unit"
)

// What a program tells a client beside exercises: notes in short, its end, when the next measurement is due.

// known are the notes that the phase or the program names, each in one or two sentences.
func (h handout) known() Part {
	if h.Program == nil {
		return Part{}
	}
	facts := factual("notes")
	for _, n := range h.Program.ToldIn(h.Stage.Set) {
		facts.Facts = append(facts.Facts, fact(n.Title, n.Short))
	}
	return h.part("known", h.w.Say("known.title"), facts)
}

// finish is how far the end of the program is, in its last phase: what is still missing, or what the program says then. The
// therapist ends it.
func (h handout) finish() Part {
	if h.End == nil {
		return Part{}
	}
	w := h.w
	says := h.Program.End.Says
	if len(h.End.Missing) > 0 {
		says = ""
		if h.End.NotBefore.After(h.Block.Starts) {
			says = w.Say("activity.not-before", "day", w.Day(h.End.NotBefore))
		}
		says = nonEmpty(" ", says, h.missing(h.End.Missing))
	}
	return h.part("finish", w.Say("finish.title"), paragraph("lead", says), paragraph("note", w.Say("finish.who-decides")))
}

// remeasure is the day on which the next measurement is due, where the program says one; a day that has passed is now.
func (h handout) remeasure() string {
	switch {
	case h.Retest == nil:
		return ""
	case h.Retest.Due.Before(h.Block.Starts):
		return h.w.Say("brief.measure-now")
	}
	return h.w.Day(h.Retest.Due)
}

// remeasure says when the next measurement is due, and of which day the last one is.
func (d *desk) remeasure() string {
	r := d.p.Retest
	if r == nil {
		return ""
	}
	last := d.say("measured-never")
	if r.Last != (unit.Day{}) {
		last = d.say("measured-on", "day", d.w.Day(r.Last))
	}
	return d.say("measure-due", "day", d.w.Day(r.Due), "n", r.EveryWeeks, "last", last)
}

// lighterWeeks are the planned lighter weeks of the block, with their source.
func (d *desk) lighterWeeks() (lines []Node) {
	for _, w := range d.p.Weeks {
		l := d.p.Stage.Set.DeloadIn(w.PhaseWeek)
		if l == nil {
			continue
		}
		var parts []string
		if l.SetsPercent > 0 {
			parts = append(parts, d.say("lighter-sets", "n", resultNumber(float64(l.SetsPercent))))
		}
		if l.LoadPercent > 0 {
			parts = append(parts, d.say("lighter-load", "n", resultNumber(float64(l.LoadPercent))))
		}
		lines = append(lines, d.note("lighter-week", "week", w.Number, "what", nonEmpty(", ", parts...),
			"source", nonEmpty("; ", nonEmpty(", ", l.Source, d.word("standing", string(l.Standing))), l.Note)))
	}
	return lines
}

// ending are the criteria of the program's end.
func (d *desk) ending() Node {
	if d.p.End == nil {
		return Node{}
	}
	e := d.p.Program.End
	why := nonEmpty("; ", nonEmpty(", ", e.Source, d.word("standing", string(e.Standing))), e.Note)
	if why == "" {
		return d.criteria(d.say("end-caption"), d.p.End.Criteria)
	}
	return d.criteria(d.say("end-caption-by", "source", why), d.p.End.Criteria)
}
