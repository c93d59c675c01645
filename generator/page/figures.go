package page

import (
	"slices"
	"strconv"

	"paceleaf/generator/figure"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// figures are the pictures of an exercise: of the event's own leg in the first week, and once more where its range is
// another in a later week. Another leg has pictures of its own only where limits of its own let it do less than is drawn; what
// else it does, such as keep to the range that it was tested in, stands in its box. An exercise without a pose has its
// sentence alone.
func (h handout) figures(m move) (nodes []Node) {
	for i, p := range m.Legs {
		if i > 0 && !(m.Exercise.Figure.Drawn() && h.limited(p.Side) && beyond(m.Legs[0], p)) {
			continue
		}
		for _, s := range scenes(h.shownWeeks(p)) {
			nodes = append(nodes, h.figure(m, p, s))
		}
	}
	return nodes
}

// limited reports whether a leg has limits that name it: the leg of the event has, a sound one has none.
func (h handout) limited(side unit.Side) bool {
	return slices.ContainsFunc(h.Limits, func(w plan.Window) bool { return h.sideOf(w.Side) == side })
}

// beyond reports whether a leg does in any week what another must not.
func beyond(own, other plan.Prescription) bool {
	return slices.ContainsFunc(own.Weeks, func(d plan.WeekDose) bool {
		o, same := doseOf(other, d.Week)
		return same && o.Range != nil && (d.Range == nil || !d.Range.Within(*o.Range))
	})
}

// scene is a range with the weeks in which it is allowed.
type scene struct {
	reach  *unit.Reach
	weeks  []int
	aim    bool   // the bend of its end is beyond what the knee does now
	before *scene // what is drawn of the same leg before it
}

// scenes are what is drawn of a leg: the range of its first week and, where that changes, the last other one. A third is
// told in the box alone.
func scenes(weeks []plan.WeekDose) []scene {
	var all []scene
	for _, d := range weeks {
		i := slices.IndexFunc(all, func(s scene) bool { return alike(s.reach, d.Range) })
		if i < 0 {
			all = append(all, scene{reach: d.Range, aim: d.Range != nil && d.Bends != nil && *d.Bends < d.Range.MostBent})
			i = len(all) - 1
		}
		all[i].weeks = append(all[i].weeks, d.Week)
	}
	if len(all) == 1 {
		all[0].weeks = nil // the same all through: no week need be named
		return all
	}
	later := all[len(all)-1]
	later.before = &all[0]
	return []scene{all[0], later}
}

func alike(a, b *unit.Reach) bool { return a == b || a != nil && b != nil && *a == *b }

// figure is one picture. Where it cannot be drawn, the line in its place says so: a picture of another range would be
// followed.
func (h handout) figure(m move, p plan.Prescription, s scene) Node {
	e := m.Exercise
	if !e.Figure.Drawn() {
		return Node{Kind: "figure", Says: e.Describe}
	}
	leg, id := h.w.Say("leg."+string(p.Side)), "fig-"+e.ID+"-"+string(p.Side)
	title := h.w.Say("figure.leg", "leg", leg)
	if len(s.weeks) > 0 {
		title = h.w.Say("figure.weeks", "leg", leg, "n", len(s.weeks), "weeks", h.numbers(s.weeks))
		id += "-week-" + strconv.Itoa(s.weeks[0])
	}
	id += h.apart(m)
	d := Drawing{ID: id, Pose: e.Figure, Side: p.Side, Range: s.reach}
	if s.before == nil {
		d.Shows = e.Describe // of two pictures of a leg the first tells the movement
	}
	if figure.Moves(e.Figure) {
		d.Play, d.Halt = h.w.Say("figure.play"), h.w.Say("figure.stop")
	}
	node, err := pictured(h.w.Say("figure.named", "title", e.Title, "leg", title), title, h.shows(p, s), d)
	if err != nil {
		return Node{Kind: "figure", Title: title, Says: nonEmpty(" ", e.Describe, h.w.Say("figure.none"))}
	}
	return node
}

// shows is the line below a picture: how far the knee goes and, where a later week goes further, that a date alone opens nothing.
// The movement itself stands in the steps.
func (h handout) shows(p plan.Prescription, s scene) string {
	told := ""
	if s.before != nil && wider(s.before.reach, s.reach) {
		told = h.w.Say("later.told")
	}
	return nonEmpty(" ", h.goes(p, s), told)
}

// goes says from which bend to which the picture goes, in the numbers that stand in it; nothing where none do.
func (h handout) goes(p plan.Prescription, s scene) string {
	first, last, shown, err := figure.Ends(p.Exercise.Figure, s.reach)
	if err != nil || !shown {
		return ""
	}
	beside, bends := figure.Beside(p.Exercise.Figure)
	if beside {
		return h.bendOf(p, s, h.degrees(first), h.degrees(last), !bends || p.Exercise.Isometric()) + " " + h.w.Say("figure.beside")
	}
	return h.bendOf(p, s, h.degrees(first), h.degrees(last), p.Exercise.Isometric())
}

// bendOf is the sentence of goes; still says that the knee stays between both.
func (h handout) bendOf(p plan.Prescription, s scene, from, to string, still bool) string {
	knees := 1
	if p.Side == unit.Both {
		knees = 2
	}
	switch {
	case from == to:
		return h.w.Say("figure.stays", "n", knees, "at", to)
	case still:
		return h.w.Say("figure.stays-between", "n", knees, "from", from, "to", to)
	case s.aim:
		return h.w.Say("figure.goes-at-most", "n", knees, "from", from, "to", to)
	}
	return h.w.Say("figure.goes", "n", knees, "from", from, "to", to)
}

// howToSee is how to read the pictures, where there are any.
func (h handout) howToSee(moves []move) string {
	ranged := func(m move) bool {
		pose := m.Exercise.Figure
		return pose.Drawn() && !pose.Hidden && m.anyWeek(func(d plan.WeekDose) bool { return d.Range != nil })
	}
	switch {
	case slices.ContainsFunc(moves, ranged):
		return h.w.Say("figure.how-to-read") + " " + h.w.Say("figure.how-to-read-range")
	case slices.ContainsFunc(moves, func(m move) bool { return m.Exercise.Figure.Drawn() }):
		return h.w.Say("figure.how-to-read")
	}
	return ""
}
