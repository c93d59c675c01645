package page

import (
	"slices"
	"strings"

	"paceleaf/generator/basis"
)

// decideFlags is the strictest signal, and every flag and doubt, each said once with all that it is about.
func (d *desk) decideFlags() Node {
	nodes := d.action()
	if h := d.p.Symptoms.Held; h != nil {
		nodes = append(nodes, factual("held", d.labelled("held", d.say("held", "day", d.w.Day(h.From), "who", d.therapist(h.By), "reason", h.Reason))))
	}
	lines := d.flagged(func(id string) bool { return !forSurgeon(id) })
	if len(lines) == 0 {
		nodes = append(nodes, d.note("no-flags"))
	}
	return group("decide-flags", d.say("decide-flags"), 3, append(nodes, bullets("flags", lines...))...)
}

// forSurgeon reports whether a flag is a question to the surgeon.
func forSurgeon(id string) bool { return id == "ask-surgeon" }

// flagLine is what several flags and doubts say alike.
type flagLine struct {
	id    string
	says  basis.Said
	about []string
	more  int // others of the same kind
}

// flagsOf are the flags of a kind, and the doubts that no flag tells, those that say the same in one.
func (d *desk) flagsOf(is func(id string) bool) (lines []flagLine) {
	add := func(id string, says basis.Said, of string) {
		i := slices.IndexFunc(lines, func(l flagLine) bool { return l.says == says })
		switch {
		case i < 0:
			lines = append(lines, flagLine{id, says, []string{of}, 0})
		case !slices.Contains(lines[i].about, of):
			lines[i].about = append(lines[i].about, of)
		}
	}
	for _, f := range d.p.Flags {
		if is(f.ID) {
			add(f.ID, f.Says, d.reason(basis.Said(f.About)))
		}
	}
	if f := d.p.Found; f != nil && is("") {
		for _, doubt := range f.Doubts {
			add(doubt.Code, doubt.Says, doubt.ID)
		}
	}
	return lines
}

// eachTold are the flags of which every one asks for something of its own: a question, or a call to the client by a day.
var eachTold = []string{"ask-surgeon", "limit-tightens"}

// flagged are flags for the first sheet: of several of one kind the last and how many more there are, unless each is told.
func (d *desk) flagged(is func(id string) bool) (says []string) {
	var lines []flagLine
	for _, l := range d.flagsOf(is) {
		if i := slices.IndexFunc(lines, func(have flagLine) bool { return have.id == l.id && !slices.Contains(eachTold, l.id) }); i >= 0 {
			l.more = lines[i].more + 1
			lines[i] = l
			continue
		}
		lines = append(lines, l)
	}
	for _, l := range lines {
		line := d.say("flag-line", "about", strings.Join(l.about, ", "), "says", d.reason(l.says))
		if l.more > 0 {
			line = d.say("flag-and-more", "line", line, "n", l.more)
		}
		says = append(says, line)
	}
	return says
}

// decideSurgeon is what to ask the surgeon, and which goals to tell of.
func (d *desk) decideSurgeon() Node {
	lines := append(d.flagged(forSurgeon), d.tellSurgeon()...)
	if len(lines) == 0 {
		lines = []string{d.say("no-question")}
	}
	return group("decide-surgeon", d.say("decide-surgeon"), 3, bullets("", lines...))
}

// tellSurgeon is the swelling that pauses the knee, and goals that are late and that the program wants told.
func (d *desk) tellSurgeon() (lines []string) {
	if ask := d.askSwelling(); ask != "" {
		lines = append(lines, ask)
	}
	for _, g := range d.p.Goals {
		if g.State == "late" && g.Goal.Tell == "surgeon" {
			lines = append(lines, d.say("tell-surgeon", "what", d.measuresOf([]string{g.Goal.Measure})[0], "found", orDash(d.foundOf(g)), "wanted", d.wantedOf(g), "day", d.nearDay(g.By)))
		}
	}
	return lines
}
