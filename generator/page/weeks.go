package page

import (
	"slices"
	"strconv"
	"strings"

	"paceleaf/generator/plan"
)

// weeks are the weeks of the block: the first is due, the later ones are earned.
func (h handout) weeks() Part {
	w := h.w
	lead := w.Say("weeks.lead")
	switch {
	case h.pausedThroughout():
		lead = w.Say("weeks.lead-paused")
	case h.Block.Weeks == 1:
		lead = ""
	}
	nodes := []Node{paragraph("lead", lead)}
	for _, week := range h.Weeks {
		nodes = append(nodes, h.week(week))
	}
	nodes = append(nodes, h.inSessions())
	if h.Block.Weeks > 1 && !h.pausedThroughout() {
		nodes = append(nodes, group("earn", w.Say("weeks.earn"), 3,
			paragraph("", w.Say("weeks.earn-if")),
			bullets("", w.Say("weeks.earn-reps"), w.Say("weeks.earn-pain"), w.Say("weeks.earn-swelling")),
			paragraph("", w.Say("weeks.else"))))
	}
	return h.part("weeks", w.Say("weeks.title"), append(nodes, h.missed())...)
}

// missed is what to do about what was left out. In a pause there is nothing to come back to yet.
func (h handout) missed() Node {
	w := h.w
	list := []string{w.Say("weeks.missed-session")}
	if !h.pausedThroughout() {
		list = append(list, w.Say("weeks.missed-one"), h.byWeight("weeks.missed-two", "weeks.missed-two-light"))
	}
	return group("missed", w.Say("weeks.missed"), 3, bullets("", list...))
}

// week lists the training days of one week.
func (h handout) week(week plan.Week) Node {
	w := h.w
	says, class := w.Say("weeks.due"), "week due"
	if week.Number > 1 {
		says, class = "", "week ceiling" // said once, above all weeks
	}
	list := Node{Kind: "list", Class: "days"}
	for _, name := range h.daily(week.Number) {
		list.Items = append(list.Items, dayLine(w.Say("weeks.daily"), name))
	}
	for _, s := range h.Sessions {
		if s.Week == week.Number && !s.Daily {
			list.Items = append(list.Items, dayLine(w.DayMonth(s.Day), h.sessionName(s.Session)))
		}
	}
	nodes := []Node{paragraph("how", says), list}
	if len(list.Items) == 0 {
		nodes = []Node{paragraph("how", w.Say("weeks.none"))}
	}
	if h.Stage.Set != nil && h.Stage.Set.DeloadIn(week.PhaseWeek) != nil {
		nodes = append(nodes, paragraph("note", w.Say("weeks.lighter")))
	}
	if week.Away != nil {
		nodes = append(nodes, h.awayNote(week.Away))
	}
	n := group(class, w.Say("weeks.week", "week", week.Number, "days", h.runs(week.Starts, week.Ends)), 3, nodes...)
	n.ID = "week-" + strconv.Itoa(week.Number)
	return n
}

// dayLine is a day with what is done on it. What is called as its day stands once.
func dayLine(day, name string) []Span {
	if name == day {
		name = ""
	}
	return []Span{strong(day), {Text: " " + name}}
}

// daily are the sessions of a week that are done on every day, by name.
func (h handout) daily(week int) (names []string) {
	for _, s := range h.Sessions {
		if name := h.sessionName(s.Session); s.Week == week && s.Daily && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// sessionName is what the program calls a session, or session A.
func (h handout) sessionName(id string) string {
	if id == plan.GentleSession {
		return h.w.Say("weeks.gentle")
	}
	for _, s := range h.Sessions {
		if s.Session == id && s.Title != "" {
			return s.Title
		}
	}
	return h.w.Say("weeks.session", "name", strings.ToUpper(id))
}

// sessionIDs are the sessions of the block, each once, in the order of their first day.
func (h handout) sessionIDs() (ids []string) {
	for _, s := range h.Sessions {
		if !slices.Contains(ids, s.Session) {
			ids = append(ids, s.Session)
		}
	}
	return ids
}

// inSessions lists what belongs to each session, with its length, where there are several or the length is known.
func (h handout) inSessions() Node {
	ids := h.sessionIDs()
	if len(ids) < 2 && len(h.Minutes) == 0 {
		return Node{}
	}
	facts := factual("sessions")
	for _, id := range ids {
		var titles []string
		for _, m := range h.moves() {
			if m.in(id) && !slices.Contains(titles, m.Exercise.Title) {
				titles = append(titles, m.Exercise.Title)
			}
		}
		facts.Facts = append(facts.Facts, fact(h.sessionWithLength(id), h.w.Each(titles)+"."))
	}
	return facts
}
