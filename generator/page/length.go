package page

import (
	"slices"
	"strings"
)

// length is about how long a session takes; a part that is done all through the day has no length.
func (h handout) length() string {
	var turns, daily []int
	for _, s := range h.Sessions {
		switch n := h.Minutes[s.Session]; {
		case n == 0:
		case s.Daily:
			daily = append(daily, n)
		default:
			turns = append(turns, n)
		}
	}
	return strings.TrimSpace(h.about("brief.about", turns) + " " + h.about("brief.about-daily", daily))
}

// about says a length once, or from the shortest to the longest.
func (h handout) about(key string, minutes []int) string {
	if len(minutes) == 0 {
		return ""
	}
	least, most := slices.Min(minutes), slices.Max(minutes)
	time := h.w.Say("time.min", "n", most)
	if least < most {
		time = h.w.Say("time.span", "from", least, "to", time)
	}
	return h.w.Say(key, "time", time)
}

// sessionWithLength is a session by name, with its length where that is known.
func (h handout) sessionWithLength(id string) string {
	n := h.Minutes[id]
	if n == 0 {
		return h.sessionName(id)
	}
	return h.w.Say("weeks.about", "what", h.sessionName(id), "time", h.w.Say("time.min", "n", n))
}
