package page

import (
	"reflect"
	"regexp"
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// dates are the days on which something may change. None of them is a promise.
func (h handout) dates() Part {
	w := h.w
	facts := factual("dates")
	lines, drawn := h.gatheredDates(), []plan.DateLine(nil)
	var before plan.DateLine // the last one that named what is missing
	for i, d := range lines {
		says := h.dateLine(d, before)
		if d.Kind == "lifts" {
			says = h.lifting(lines, i)
		}
		if says != "" {
			facts.Facts, drawn = append(facts.Facts, fact(w.Day(d.On), says)), append(drawn, d)
			if len(h.missingNames(d.Missing)) > 0 {
				before = d
			}
		}
	}
	if len(facts.Facts) == 0 {
		return Part{}
	}
	return h.part("dates", w.Say("dates.title"), paragraph("lead", w.Say("dates.lead")), h.datePicture(drawn), facts)
}

// dateLine is a date in words. What is missing for a line before it need not be named again.
func (h handout) dateLine(d, before plan.DateLine) string {
	w := h.w
	switch d.Kind {
	case "visit":
		return w.Say("dates.visit")
	case "ends":
		return w.Say("dates.ends")
	case "away":
		return h.awayLine(d)
	case "loosens":
		if then := h.loosened(d); then != "" {
			if side := h.sideOf(d.Side); side != h.side() {
				then = w.Say("brief.limit-of", "leg", h.legLabel(side), "what", then)
			}
			return w.Say("dates.loosens-to", "what", then)
		}
		return w.Say("dates.loosens", "what", h.limitOf(d))
	case "tightens":
		return w.Say("dates.tightens", "what", h.ofLeg(h.loosened(d), h.sideOf(d.Side)))
	case "not-before":
		if !d.On.After(h.Block.Starts) {
			return "" // the day has come; what is missing stands under not yet
		}
		return joined(w.Say("dates.not-before", "what", d.Title), h.stillMissing(d, before), h.oneByOne(d))
	}
	return ""
}

// lifting says which limits may end on a day, all in one line: the first of the day speaks for all.
func (h handout) lifting(lines []plan.DateLine, first int) string {
	var names []string
	if h.saidByDate(lines, lines[first]) {
		return ""
	}
	for i, d := range lines {
		switch {
		case d.Kind != "lifts" || d.On != lines[first].On || h.saidByDate(lines, d):
		case i < first:
			return ""
		default:
			names = append(names, h.limitOf(d))
		}
	}
	switch len(names) {
	case 0:
		return ""
	case 1:
		return h.w.Say("dates.lifts", "what", names[0])
	}
	return h.w.Say("dates.lift", "what", h.w.Each(names))
}

// saidByDate reports whether an activity's own line, on the day or later, says more than the end of its limit does.
func (h handout) saidByDate(lines []plan.DateLine, d plan.DateLine) bool {
	return slices.ContainsFunc(lines, func(o plan.DateLine) bool {
		return o.Kind == "not-before" && !o.On.Before(d.On) && o.On.After(h.Block.Starts) && slices.ContainsFunc(h.Activities, func(a plan.ActivityState) bool {
			return a.Activity != nil && a.Activity.ID == o.What && slices.Equal(a.Activity.Kinds, []unit.Kind{unit.Kind(d.What)})
		})
	})
}

// gatheredDates are the dates of the plan: what is the same for both legs stands once, and the steps of sport after the
// next one stand together where they share a day.
func (h handout) gatheredDates() (lines []plan.DateLine) {
	for _, d := range h.Dates {
		i := slices.IndexFunc(lines, func(have plan.DateLine) bool { return sameChange(have, d) })
		switch {
		case i >= 0:
			lines[i].Side = unit.Both
			continue
		case d.Kind == "not-before" && h.laterStep(d.What):
			d.Missing = nil
			i = slices.IndexFunc(lines, func(have plan.DateLine) bool {
				return have.Kind == d.Kind && have.On == d.On && h.laterStep(have.What)
			})
		}
		if i >= 0 {
			lines[i].Title = h.w.Say("list.next", "before", lines[i].Title, "item", d.Title)
			continue
		}
		lines = append(lines, d)
	}
	return lines
}

// sameChange reports whether two lines say one thing of the left and of the right leg.
func sameChange(a, b plan.DateLine) bool {
	return a.Side != "" && b.Side == a.Side.Opposite() && a.On == b.On && a.Kind == b.Kind && a.What == b.What && a.Title == b.Title && a.SetBy == b.SetBy &&
		reflect.DeepEqual(a.Allow, b.Allow)
}

// limitOf names the limit of a date, and the leg where it is not the event's.
func (h handout) limitOf(d plan.DateLine) string {
	what := h.w.Say("kind." + d.What)
	if d.Title != "" && h.w.Has("kind."+d.Title) {
		what = h.w.Say("dates.limit-of", "what", what, "of", strings.ToLower(h.w.Say("kind."+d.Title)))
	}
	return h.ofLeg(what, h.sideOf(d.Side))
}

// loosened is what a limit asks from that day on. A part of body weight is a weight where a window of the limit knows it.
func (h handout) loosened(d plan.DateLine) string {
	if d.Allow == nil {
		return ""
	}
	var on []unit.Kind
	if d.Title != "" {
		on = []unit.Kind{unit.Kind(d.Title)}
	}
	allow := *d.Allow
	for _, l := range h.Limits {
		if allow.Part != nil && allow.PartMass == nil && string(l.Kind) == d.What && h.sideOf(l.Side) == h.sideOf(d.Side) && l.Allow.Part != nil && *l.Allow.Part == *allow.Part {
			allow.PartMass = l.Allow.PartMass
		}
	}
	return h.allows(h.sideOf(d.Side), unit.Kind(d.What), on, allow)
}

func (h handout) awayLine(d plan.DateLine) string {
	for _, a := range h.aways() {
		if a.From == d.On {
			return h.w.Say("dates.away", "place", h.placeName(a.Place), "until", h.w.ShortDay(a.Until))
		}
	}
	return ""
}

// missing names the criteria that are still missing for an activity, in plain words.
func (h handout) missing(ids []string) string {
	names := h.missingNames(ids)
	if len(names) == 0 {
		return ""
	}
	return h.w.Say("activity.missing", "what", h.w.Each(names))
}

func (h handout) missingNames(ids []string) (names []string) {
	for _, id := range ids {
		name := h.measure(id)
		if name != "" && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// missingAs is what is still missing: as for the line before it and what comes to that, where it misses all that one does and that
// is more than a name.
func (h handout) missingAs(d, before plan.DateLine) string {
	had, names := h.missingNames(before.Missing), h.missingNames(d.Missing)
	lacks := func(name string) bool { return !slices.Contains(names, name) }
	if len(had) < 2 || slices.ContainsFunc(had, lacks) {
		return h.missing(d.Missing)
	}
	more := slices.DeleteFunc(names, func(name string) bool { return slices.Contains(had, name) })
	if len(more) == 0 {
		return h.w.Say("activity.missing-as", "title", before.Title)
	}
	return h.w.Say("activity.missing-more", "title", before.Title, "what", h.w.Each(more))
}

// repeated is the number behind an id that stands more than once: knee-extension.lsi-2.
var repeated = regexp.MustCompile(`-\d+$`)

// measure is a criterion in words: running.knee-extension.lsi is said under knee-extension-lsi. What the words file
// does not know is a test. A floor in time is told by its date, a limit by its own sentence.
func (h handout) measure(id string) string {
	_, measure, _ := strings.Cut(id, ".")
	measure = repeated.ReplaceAllString(measure, "")
	key := "measure." + strings.ReplaceAll(measure, ".", "-")
	switch {
	case strings.HasPrefix(measure, "time"), measure == "limits":
		return ""
	case h.w.Has(key):
		return h.w.Say(key)
	}
	return h.w.Say("measure.other")
}
