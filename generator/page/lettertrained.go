package page

import (
	"cmp"
	"slices"
	"strings"

	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// What a letter says of the training: what is due in the first week, leg by leg, and apart from it what a later week may bring. A reader who
// never sees the handout must not take the load of one leg for the other's.

func (l *letter) trained() Part {
	due, later := l.dueAndLater()
	if len(due) == 0 {
		return l.part("letter-trained", l.note("nothing-prescribed"), l.laterOnes(later))
	}
	if l.p.Symptoms.Action.Rank() < plan.Pause.Rank() {
		return l.part("letter-trained", paragraph("", l.say("letter-trained", "which", l.items(due))), l.laterOnes(later))
	}
	var knee, other []plan.Prescription
	for _, pr := range due {
		if l.p.Event.Side == unit.Both || pr.Side == unit.Both || pr.Side == l.p.Event.Side {
			knee = append(knee, pr)
		} else {
			other = append(other, pr)
		}
	}
	nodes := []Node{paragraph("", l.say("letter-paused", "knee", l.word("paused-knee", string(l.p.Event.Side))))}
	if len(other) > 0 {
		nodes = append(nodes, paragraph("", l.say("letter-other-only", "which", l.items(other))))
	}
	if len(knee) > 0 {
		nodes = append(nodes, paragraph("", l.say("letter-goes-on", "which", l.items(knee))))
	}
	return l.part("letter-trained", append(nodes, l.laterOnes(later))...)
}

// dueAndLater are what is due in the first week, and what a leg begins in a later one.
func (l *letter) dueAndLater() (due, later []plan.Prescription) {
	for _, pr := range l.p.Prescriptions {
		if pr.Weeks[0].Week == 1 {
			due = append(due, pr)
		}
	}
	for _, pr := range l.p.Prescriptions {
		alike := func(o plan.Prescription) bool { return o.Exercise == pr.Exercise && o.Side == pr.Side }
		if pr.Weeks[0].Week > 1 && !slices.ContainsFunc(due, alike) { // the same on another machine is nothing new
			later = append(later, pr)
		}
	}
	return due, later
}

// laterOnes are the exercises that a later week may bring, with the week.
func (l *letter) laterOnes(later []plan.Prescription) Node {
	if len(later) == 0 {
		return Node{}
	}
	return paragraph("", l.say("letter-later", "which", l.itemsOf(later, func(pr plan.Prescription) string { return l.say("letter-from-week", "n", pr.Weeks[0].Week) })))
}

func (l *letter) items(due []plan.Prescription) string { return l.itemsOf(due, l.loadAndCarriage) }

// itemsOf are exercises, each with its legs and what is said of them.
func (l *letter) itemsOf(all []plan.Prescription, of func(plan.Prescription) string) string {
	only := *l.p
	only.Prescriptions = all
	var each []string
	for _, legs := range (&desk{sheet: l.sheet, p: &only}).byExercise() {
		each = append(each, l.say("letter-item", "exercise", legs[0].Exercise.Title, "legs", l.legsOf(legs, of)))
	}
	return strings.Join(each, "; ")
}

// legsOf names the legs of an exercise, always: two that are asked for the same are "each leg".
func (l *letter) legsOf(legs []plan.Prescription, of func(plan.Prescription) string) string {
	var sides []unit.Side
	var says []string
	for _, pr := range legs {
		if what := of(pr); !slices.Contains(sides, pr.Side) || !slices.Contains(says, what) {
			sides, says = append(sides, pr.Side), append(says, what)
		}
	}
	if len(sides) > 1 && !slices.Contains(sides, unit.Both) && len(slices.Compact(slices.Clone(says))) == 1 {
		return nonEmpty(": ", l.say("letter-each-leg"), says[0])
	}
	key := "letter-leg"
	if len(slices.Compact(slices.Clone(sides))) == 1 {
		key = "letter-only"
	}
	parts := make([]string, len(sides))
	for i, side := range sides {
		leg := l.say("letter-together")
		if side != unit.Both {
			leg = l.say(key, "leg", l.word("side", string(side)))
		}
		parts[i] = nonEmpty(": ", leg, says[i])
	}
	return strings.Join(parts, "; ")
}

// loadAndCarriage is what is put on, and what the machine weighs beside it.
func (l *letter) loadAndCarriage(pr plan.Prescription) string {
	load := l.loadIn(&pr)
	if load == "" || pr.Weeks[0].FindYourWeight || pr.Device == nil {
		return load
	}
	beside := cmp.Or(amountAs(&l.desk, "letter-carriage", pr.Device.Carriage), amountAs(&l.desk, "letter-bar", pr.Device.Bar))
	return nonEmpty(" ", load, beside)
}
