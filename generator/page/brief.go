package page

import (
	"slices"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// brief is the page in a few lines: what the block is for, how often, what counts most, when to come back.
func (h handout) brief() Part {
	w := h.w
	return h.part("brief", w.Say("brief.title"),
		spoken("lead", strong(h.aim())),
		factual("summary",
			fact(w.Say("brief.limit"), h.firstLimit()),
			fact(w.Say("brief.sessions"), h.often()),
			fact(w.Say("brief.length"), h.length()),
			fact(w.Say("brief.visit"), h.visit()),
			fact(w.Say("brief.measure"), h.remeasure()),
			fact(w.Say("brief.valid"), w.Day(h.ends()))),
		paragraph("replaces", h.replaces()),
		h.jump(),
	)
}

// jump leads past all that is read once, to the exercises: on a phone in a gym they are several screens below.
func (h handout) jump() Node {
	if len(h.moves()) == 0 {
		return Node{}
	}
	return spoken("jump", Span{Text: h.w.Say("exercises.title"), Href: "#exercises"})
}

// often is the number of sessions a week with their days.
func (h handout) often() string {
	w := h.w
	first, daily := h.weekdays(1), len(h.daily(1)) > 0
	says := w.Say("brief.often", "n", len(first), "days", w.Join(first))
	switch {
	case len(first) == 0 && !daily:
		return ""
	case len(first) == 0, len(first) == 7:
		says = w.Say("brief.every-day")
	case daily:
		says += " " + w.Say("brief.and-daily")
	}
	for _, week := range h.Weeks {
		if !slices.Equal(h.weekdays(week.Number), first) {
			return says + " " + w.Say("brief.differs")
		}
	}
	return says
}

// weekdays are the training days of a week by name.
func (h handout) weekdays(week int) (days []string) {
	for _, s := range h.Sessions {
		if s.Week == week && !s.Daily {
			days = append(days, h.w.Weekday(s.Day))
		}
	}
	return days
}

// firstLimit is what counts most: a pause before any limit.
func (h handout) firstLimit() string {
	if h.paused() {
		return h.w.Say("brief.paused", "knee", h.kneeIn(h.side()))
	}
	bans := h.bans()
	if len(bans) == 0 {
		return ""
	}
	first := bans[max(0, slices.IndexFunc(bans, func(b ban) bool { return b.side == h.side() || b.side == unit.Both }))]
	if first.side == h.side() && !h.otherWorks(first) {
		return first.says
	}
	return h.w.Say("brief.limit-of", "leg", h.legLabel(first.side), "what", first.says)
}

func (h handout) visit() string {
	if h.Block.NextVisit == nil {
		return h.w.Say("brief.no-visit")
	}
	return h.w.Day(*h.Block.NextVisit)
}

// replaces names the page that this one takes the place of: the newest earlier block.
func (h handout) replaces() string {
	var before *plan.Block
	for i := range h.Client.Blocks {
		if b := &h.Client.Blocks[i]; b.Number < h.Block.Number && (before == nil || b.Number > before.Number) {
			before = b
		}
	}
	if before == nil {
		return ""
	}
	return h.w.Say("brief.replaces", "n", before.Number, "starts", h.w.Day(before.Starts))
}

// runs writes a stretch of days.
func (h handout) runs(from, to unit.Day) string {
	return h.w.Say("date.span", "from", h.w.ShortDay(from), "to", h.w.ShortDay(to))
}
