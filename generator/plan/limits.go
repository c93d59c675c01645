package plan

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// Limits, by day (rules 4 to 10). A limit is laid out as windows of days. For a kind and a day: instructions replace the
// shipped windows; of one author the latest said stands; several authors meet in the strictest; a therapist's own
// window tightens whatever is left. Shipped windows meet in the strictest. A day that a schedule does not cover is closed.

// class says how a window takes part.
type class int

const (
	shipped class = iota
	instructed
	tightened
)

// window is a Window with what deciding needs.
type window struct {
	Window
	class  class
	author string // who said it; one author supersedes himself
	early  bool   // it begins before the event: it was said of another state of the knee, so it tightens and opens nothing
}

// limits are all windows of one leg.
type limits struct {
	side    unit.Side
	event   *client.Event // from which its schedules count
	windows []*window
	mass    basis.Num[unit.Kilograms] // of the body, as last weighed; missing where nobody has
}

// program lays out the schedules of a program that apply to a leg of that role.
func (l *limits) program(p *program.Program, c *client.Client, event *client.Event, role program.LegRole) {
	for i := range p.Limits {
		limit := &p.Limits[i]
		if of := limit.When.Leg; of == role || of == "" && role == program.OperatedLeg {
			if chosen(p, limit) && applies(limit.When, c, event, event.Date) && fromThere(limit.When, event, l.side) {
				l.schedule(limit, c, event)
			}
		}
	}
}

// chosen reports whether a program uses a limit: of each kind the named preset, and instead of it the nameless schedule
// of the same file, our composite, where no preset is named. Schedules of other files stand beside both.
func chosen(p *program.Program, l *program.Limit) bool {
	named := p.Presets[string(l.Kind)]
	if l.Preset != "" || named == "" {
		return l.Preset == named
	}
	return !slices.ContainsFunc(p.Limits, func(o program.Limit) bool {
		return o.Kind == l.Kind && o.Preset == named && o.At.File == l.At.File
	})
}

// applies reports whether a condition fits the client on a day; what it says of the graft's origin, the event's own leg.
func applies(w program.When, c *client.Client, event *client.Event, on unit.Day) bool {
	if !fromThere(w, event, event.Side) {
		return false
	}
	if len(w.Graft) > 0 && !slices.Contains(w.Graft, event.Graft) {
		return false
	}
	if len(w.Sport) > 0 && !slices.Contains(w.Sport, c.Sport) {
		return false
	}
	if len(w.Also) > 0 && !slices.ContainsFunc(w.Also, func(a string) bool { return slices.Contains(event.Also, a) }) {
		return false
	}
	if w.UnderAge > 0 && !c.Born.Under(w.UnderAge, on) {
		return false
	}
	return true
}

// schedule lays out the rows of a shipped limit from the event on.
func (l *limits) schedule(limit *program.Limit, c *client.Client, event *client.Event) {
	day := func(week int) unit.Day { return event.Date.AddWeeks(week) }
	end := unit.Day{}
	if limit.LiftsWeek != nil {
		end = day(*limit.LiftsWeek)
	}
	if opened := openedOn(limit, c, event); !opened.IsZero() && (end.IsZero() || opened.Before(end)) {
		end = opened
	}
	if first := *limit.Steps[0].Week; first > 0 {
		l.row(limit, program.Step{At: limit.At}, day(0), earlier(day(first), end), true)
	}
	for i, s := range limit.Steps {
		until := end
		if i+1 < len(limit.Steps) {
			until = earlier(day(*limit.Steps[i+1].Week), end)
		}
		l.row(limit, s, day(*s.Week), until, false)
	}
}

// openedOn is the day from which the therapist has opened a limit that may be opened; zero where he has not.
func openedOn(limit *program.Limit, c *client.Client, event *client.Event) unit.Day {
	if limit.OpensWeek == nil {
		return unit.Day{}
	}
	for _, o := range c.Opened {
		if o.ID == string(limit.Kind) && !o.From.Before(event.Date) {
			if floor := event.Date.AddWeeks(*limit.OpensWeek); o.From.Before(floor) {
				return floor
			}
			return o.From
		}
	}
	return unit.Day{}
}

func earlier(a, b unit.Day) unit.Day {
	if b.IsZero() || a.Before(b) {
		return a
	}
	return b
}

func (l *limits) row(limit *program.Limit, s program.Step, from, until unit.Day, gap bool) {
	if !until.IsZero() && !from.Before(until) {
		return
	}
	allow := s.Allowance
	if gap {
		no := false
		allow = unit.Allowance{Allowed: &no}
	}
	standing := s.Standing
	if standing == "" {
		standing = limit.Standing
	}
	if standing == "" {
		standing = unit.ToolDefault
	}
	note := s.Note
	if note == "" {
		note = limit.Note
	}
	l.windows = append(l.windows, &window{class: shipped, Window: Window{Kind: limit.Kind, On: limit.On, Allow: allow,
		From: from, Lifts: until, SetBy: "program", Name: limit.At.File, Source: limit.Source, Standing: standing, Note: note, Gap: gap, At: s.At}})
}

func (l *limits) instruction(i *client.Limit, event *client.Event) {
	w := &window{class: instructed, author: string(i.SetBy) + " " + i.Name, early: i.From.Before(event.Date), Window: Window{Kind: i.Kind, On: i.On, Allow: i.Allowance,
		From: i.From, SetBy: string(i.SetBy), Name: i.Name, Route: string(i.Route), Said: i.Said, Reason: i.Reason, Standing: unit.Instruction, At: i.At}}
	if i.Lifts != nil {
		w.Lifts = *i.Lifts
	}
	if i.SetBy == client.ByTherapist {
		w.class = tightened
	}
	l.windows = append(l.windows, w)
}

// covers reports whether the window holds on a day.
func (w *window) covers(d unit.Day) bool {
	return !d.Before(w.From) && (w.Lifts.IsZero() || d.Before(w.Lifts))
}

// speaksOf reports whether the window is about this kind of an exercise that names these kinds.
func (w *window) speaksOf(k unit.Kind, named []unit.Kind) bool {
	if w.Kind != k {
		return false
	}
	return len(w.On) == 0 || slices.ContainsFunc(w.On, func(on unit.Kind) bool { return slices.Contains(named, on) })
}

// ruling is what is allowed of one kind on one day, and by which windows.
type ruling struct {
	allow  unit.Allowance
	by     []*window // the windows that stand: those that limit come first
	gapped bool      // closed because no row covers the day
}

// rule decides one kind on one day, for an exercise that names these kinds.
func (l *limits) rule(k unit.Kind, named []unit.Kind, d unit.Day) ruling {
	var of [3][]*window
	var about [3]bool
	for _, w := range l.windows {
		if !w.speaksOf(k, named) {
			continue
		}
		about[w.class] = true
		if w.covers(d) {
			of[w.class] = append(of[w.class], w)
		}
	}
	stand := latestOfEach(of[instructed])
	if !slices.ContainsFunc(stand, func(w *window) bool { return !w.early }) {
		stand = append(stand, of[shipped]...)
	}
	if len(stand) == 0 && about[instructed] && !about[shipped] && l.between(k, named, d) {
		no := false
		return ruling{allow: unit.Allowance{Allowed: &no}, gapped: true}
	}
	return meet(append(slices.Clone(stand), of[tightened]...))
}

// between reports whether a later instruction about the kind is still to come: then the days before it are a gap.
func (l *limits) between(k unit.Kind, named []unit.Kind, d unit.Day) bool {
	return slices.ContainsFunc(l.windows, func(w *window) bool {
		return w.class == instructed && w.speaksOf(k, named) && d.Before(w.From)
	})
}

// latestOfEach keeps of each author what he said last. Of two things said on one day neither is the later: both stand, so
// that they meet in the strictest (sameday.go asks about them).
func latestOfEach(said []*window) (kept []*window) {
	for _, w := range said {
		if !slices.ContainsFunc(said, func(o *window) bool { return o.author == w.author && o.Said.After(w.Said) }) {
			kept = append(kept, w)
		}
	}
	return kept
}

// meet is the strictest of the windows that stand.
func meet(stand []*window) ruling {
	r := ruling{by: stand}
	for _, w := range stand {
		r.allow = stricter(r.allow, w.Allow)
	}
	return r
}

// binds reports whether a window is one of those that make the ruling what it is.
func (r ruling) binds(w *window) bool {
	a := w.Allow
	switch {
	case a.Free():
		return false
	case r.allow.Closed():
		return a.Closed() || !slices.ContainsFunc(r.by, func(o *window) bool { return o.Allow.Closed() })
	case a.Range != nil && r.allow.Range != nil:
		return a.Range.Straightest == r.allow.Range.Straightest && a.Range.Straightest > 0 || a.Range.MostBent == r.allow.Range.MostBent
	case a.Grade != "":
		return a.Grade == r.allow.Grade
	}
	return true
}

// setBy names the first binding window, for a reason.
func (r ruling) setBy() basis.Said {
	for _, w := range r.by {
		if r.binds(w) {
			return w.said()
		}
	}
	if r.gapped {
		return "no row of a schedule covers this day"
	}
	return ""
}

// said is who set a window and until when.
func (w *window) said() basis.Said {
	until := basis.Said("until further notice")
	if !w.Lifts.IsZero() {
		until = basis.Say("until {a}", w.Lifts)
	}
	if w.class == shipped {
		return basis.Say("program limit {a}, {b}", w.Name, until)
	}
	return basis.Say("{a} {b}, {c} of {d}, {e}", basis.Said(w.SetBy), w.Name, basis.Said(w.Route), w.Said, until)
}

func later(a, b unit.Day) unit.Day {
	if a.After(b) {
		return a
	}
	return b
}
