package page

import (
	"slices"

	"paceleaf/generator/plan"
)

// A week away has its own place, with its own equipment and its own emergency number.

// placeIn is the id of the place in which a week is spent; "" where it is not known.
func (h handout) placeIn(week int) string {
	for _, w := range h.Weeks {
		switch {
		case w.Number != week:
		case w.Place != nil:
			return w.Place.ID
		case w.Away != nil:
			return w.Away.Place
		}
	}
	return ""
}

// elsewhere reports whether a week is spent at another place than the first week of a box: what is left out there has
// boxes of its own.
func (h handout) elsewhere(p plan.Prescription, week int) bool {
	return h.placeIn(week) != h.placeIn(p.Weeks[0].Week)
}

// at says in which weeks and where an exercise is done, where the block is spent at two places and it is done at one.
func (h handout) at(m move) string {
	var weeks []int
	for _, p := range m.Legs {
		for _, d := range p.Weeks {
			if !slices.Contains(weeks, d.Week) {
				weeks = append(weeks, d.Week)
			}
		}
	}
	slices.Sort(weeks)
	place, moved := h.placeIn(weeks[0]), false
	for _, w := range h.Weeks {
		there := h.placeIn(w.Number) == place
		if slices.Contains(weeks, w.Number) && !there {
			return ""
		}
		moved = moved || !there
	}
	switch {
	case !moved:
		return ""
	case place == "":
		return h.w.Say("exercise.in-weeks", "n", len(weeks), "weeks", h.numbers(weeks))
	}
	return h.w.Say("exercise.at", "n", len(weeks), "weeks", h.numbers(weeks), "place", h.placeName(place))
}

// awayNote says where a week is spent, that its boxes count, and whom to call there.
func (h handout) awayNote(a *plan.Away) Node {
	spans := []Span{{Text: h.w.Say("weeks.away", "place", h.placeName(a.Place), "when", h.runs(a.From, a.Until))}}
	if a.Emergency != "" {
		spans = append(spans, Span{Text: " " + h.w.Say("weeks.away-emergency") + " "}, dial(a.Emergency))
	}
	return spoken("note", spans...)
}
