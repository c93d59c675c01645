package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
)

// dates are the days on which something may change. None of them is a promise.
func (h handout) dates() Part {
	w := h.w
	facts := factual("dates")
	for _, d := range h.Dates {
		if says := h.dateLine(d); says != "" {
			facts.Facts = append(facts.Facts, fact(w.Day(d.On), says))
		}
	}
	if len(facts.Facts) == 0 {
		return Part{}
	}
	return h.part("dates", w.Say("dates.title"), paragraph("lead", w.Say("dates.lead")), facts)
}

func (h handout) dateLine(d plan.DateLine) string {
	w := h.w
	switch d.Kind {
	case "visit":
		return w.Say("dates.visit")
	case "ends":
		return w.Say("dates.ends")
	case "away":
		return h.awayLine(d)
	case "lifts":
		if d.Title != "" && w.Has("kind."+d.Title) {
			return w.Say("dates.lifts-of", "what", w.Say("kind."+d.What), "of", strings.ToLower(w.Say("kind."+d.Title)))
		}
		return w.Say("dates.lifts", "what", w.Say("kind."+d.What))
	case "loosens":
		return w.Say("dates.loosens", "what", w.Say("kind."+d.What), "from", h.loosened(d))
	case "not-before":
		if !d.On.After(h.Block.Starts) {
			return "" // the day has come; what is missing stands under not yet
		}
		return strings.TrimSpace(w.Say("dates.not-before", "what", d.Title) + " " + h.missing(d.Missing))
	}
	return ""
}

// loosened is what a limit asks from that day on.
func (h handout) loosened(d plan.DateLine) string {
	for _, l := range h.Limits {
		if string(l.Kind) == d.What && l.From == d.On && d.Allow != nil {
			return h.allows(l.Kind, l.On, *d.Allow)
		}
	}
	return ""
}

func (h handout) awayLine(d plan.DateLine) string {
	for _, a := range h.aways() {
		if a.From == d.On {
			return h.w.Say("dates.away", "place", h.placeName(a.Place), "until", h.w.ShortDay(a.Until))
		}
	}
	return ""
}

// missing names what is still missing for an activity, in plain words; the floor in time is told by its date.
func (h handout) missing(ids []string) string {
	var names []string
	for _, id := range ids {
		name := h.measure(id)
		if name != "" && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		return ""
	}
	return h.w.Say("activity.missing", "what", h.w.Join(names))
}

// measure is a criterion in words: running.knee-extension.lsi is said under knee-extension-lsi. What the words file
// does not know is a test.
func (h handout) measure(id string) string {
	_, measure, _ := strings.Cut(id, ".")
	key := "measure." + strings.ReplaceAll(measure, ".", "-")
	switch {
	case measure == "time":
		return ""
	case h.w.Has(key):
		return h.w.Say(key)
	}
	return h.w.Say("measure.other")
}
