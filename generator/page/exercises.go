package page

import (
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
	"paceleaf/generator/unit"
)

// exercises are the exercises of the block, one group each.
func (h handout) exercises() Part {
	w := h.w
	moves := h.moves()
	if len(moves) == 0 {
		return h.part("exercises", w.Say("exercises.title"), paragraph("lead", w.Say("exercises.none")))
	}
	nodes := []Node{paragraph("lead", w.Say("exercises.lead"))}
	if slices.ContainsFunc(moves, func(m move) bool { return m.anyWeek(counted) }) {
		nodes = append(nodes, paragraph("note", w.Say("exercises.how-to-read")))
	}
	if slices.ContainsFunc(moves, h.staysSame) {
		nodes = append(nodes, paragraph("note", w.Say("exercises.same")))
	}
	nodes = append(nodes, paragraph("note", h.howToSee(moves)))
	for i, m := range moves {
		nodes = append(nodes, h.exercise(i+1, m))
	}
	if slices.ContainsFunc(moves, func(m move) bool { return m.anyWeek(searched) }) {
		nodes = append(nodes, h.findYourWeight())
	}
	return h.part("exercises", w.Say("exercises.title"), nodes...)
}

// staysSame reports whether a box of an exercise asks for the same in all later weeks, and so names none of them.
func (h handout) staysSame(m move) bool {
	return slices.ContainsFunc(m.Legs, func(p plan.Prescription) bool { return h.onlySame(h.stretches(p, h.at(m) != "")) })
}

func counted(d plan.WeekDose) bool  { return d.Dose.Sets != nil && d.Dose.Reps != nil }
func searched(d plan.WeekDose) bool { return d.FindYourWeight }

// exercise is one exercise: picture, steps, a box a leg, set-up, what is normal and what is not.
func (h handout) exercise(number int, m move) Node {
	w, e := h.w, m.Exercise
	boxes := make([]Node, len(m.Legs))
	for i, p := range m.Legs {
		boxes[i] = h.legBox(m, p)
	}
	n := group("exercise", w.Say("exercise.title", "n", number, "title", e.Title), 3,
		paragraph("meta", nonEmpty(" ", h.where(m), h.at(m))),
		group("figures", "", 4, h.figures(m)...),
		group("do", "", 4,
			factual("prepare", fact(w.Say("setup.prepare"), e.Words.Setup)),
			steps("steps", e.Words.Steps...),
			h.ladder(m)),
		group("boxes", "", 4, append([]Node{h.rangeOfAll(m)}, boxes...)...),
		h.setUp(m),
		group("hints", "", 4,
			named("cues", w.Say("exercise.cues"), h.cues(m)),
			named("watch", w.Say("exercise.watch"), e.Words.Faults),
			factual("feel",
				fact(w.Say("exercise.normal"), e.Words.Normal),
				fact(w.Say("exercise.ease"), e.Words.EaseOff),
				fact(w.Say("exercise.stop"), nonEmpty(" ", e.Words.Stop, h.gaveWay(e)))),
			paragraph("other-choice", h.otherChoice(m))))
	n.ID = h.anchorOf(m)
	return n
}

func (h handout) anchorOf(m move) string { return "exercise-" + m.Exercise.ID + h.apart(m) }

// gaveWay is whom to call, in the box of each exercise in which the loaded knee bears weight: there it gives way.
func (h handout) gaveWay(e *program.Exercise) string {
	if !plan.LoadsKnee(e) || !e.Names(unit.WeightBearing) {
		return ""
	}
	return h.w.Say("exercise.gave-way")
}

// named is a list under its own small heading; nothing where the list is empty.
func named(class, title string, items []string) Node {
	if len(items) == 0 {
		return Node{}
	}
	return group(class, title, 4, bullets("", items...))
}

// where names the sessions that the exercise stands in, where it does not stand in all.
func (h handout) where(m move) string {
	all, own := h.sessionIDs(), m.sessions()
	if len(own) == len(all) || len(own) == 0 {
		return ""
	}
	names := make([]string, len(own))
	for i, id := range own {
		names[i] = h.sessionName(id)
	}
	return h.w.Say("exercise.sessions", "names", h.w.Join(names))
}

// cues are the hints of the exercise; one that tells to go to an angle is kept only where every week shown reaches it.
func (h handout) cues(m move) (cues []string) {
	for _, c := range m.Exercise.Words.Cues {
		beyond := func(d plan.WeekDose) bool {
			return c.ReachesDeg != nil && (d.Range == nil || *c.ReachesDeg < d.Range.Straightest || *c.ReachesDeg > d.Range.MostBent)
		}
		if !m.anyWeek(beyond) {
			cues = append(cues, c.Text)
		}
	}
	return cues
}

// otherChoice names the easier and the harder exercise that limits, place and knee allow: names only, for the choice is
// the therapist's.
func (h handout) otherChoice(m move) (says string) {
	for _, p := range m.Legs {
		if p.Easier != nil {
			says = h.w.Say("exercise.easier", "title", p.Easier.Title)
		}
		if p.Harder != nil && !h.paused() {
			says = strings.TrimSpace(says + " " + h.w.Say("exercise.harder", "title", p.Harder.Title))
		}
		if says != "" {
			return says
		}
	}
	return ""
}

// findYourWeight is how to come to a first load where no test has given one.
func (h handout) findYourWeight() Node {
	w := h.w
	n := group("find", w.Say("find.title"), 3, paragraph("", w.Say("find.lead")),
		steps("", w.Say("find.light"), w.Say("find.step"), w.Say("find.tries"), w.Say("find.stop"), w.Say("find.write")),
		paragraph("", h.findTogether()))
	n.ID = "find-your-weight"
	return n
}

// findTogether says until when a weight is looked for only with the therapist (rules 24); a week away in that time asks for none.
func (h handout) findTogether() string {
	if !h.early() {
		return ""
	}
	return h.w.Say("find.early", "day", h.w.Day(h.Event.Date.AddWeeks(firstWeeks)))
}
