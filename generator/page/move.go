package page

import (
	"slices"
	"strconv"

	"paceleaf/generator/plan"
	"paceleaf/generator/program"
)

// move is one exercise on one machine, with a box for each leg that does it.
type move struct {
	Exercise *program.Exercise
	Device   *plan.Device
	Legs     []plan.Prescription // operated leg first
}

// moves are the prescriptions gathered by exercise and machine, in the order of the plan.
func (h handout) moves() (moves []move) {
	for _, p := range h.Prescriptions {
		if p.Exercise == nil || len(p.Weeks) == 0 {
			continue
		}
		i := slices.IndexFunc(moves, func(m move) bool { return m.Exercise.ID == p.Exercise.ID && m.Device == p.Device })
		if i < 0 {
			moves = append(moves, move{Exercise: p.Exercise, Device: p.Device})
			i = len(moves) - 1
		}
		moves[i].Legs = append(moves[i].Legs, p)
	}
	for _, m := range moves {
		slices.SortStableFunc(m.Legs, func(a, b plan.Prescription) int { return h.turn(a) - h.turn(b) })
	}
	return moves
}

// in reports whether the move stands in a session.
func (m move) in(session string) bool {
	return slices.ContainsFunc(m.Legs, func(p plan.Prescription) bool { return slices.Contains(p.Sessions, session) })
}

// sessions are the sessions that any leg of the move stands in.
func (m move) sessions() (ids []string) {
	for _, p := range m.Legs {
		for _, s := range p.Sessions {
			if !slices.Contains(ids, s) {
				ids = append(ids, s)
			}
		}
	}
	return ids
}

// anyWeek reports whether a dose of any leg and week is so.
func (m move) anyWeek(is func(plan.WeekDose) bool) bool {
	return slices.ContainsFunc(m.Legs, func(p plan.Prescription) bool { return slices.ContainsFunc(p.Weeks, is) })
}

// apart is the end of an id: it parts an exercise from the same one on another machine of the block, by the machine, and by
// a number where two places call their machines alike.
func (h handout) apart(m move) string {
	all := slices.DeleteFunc(h.moves(), func(o move) bool { return o.Exercise.ID != m.Exercise.ID })
	if len(all) < 2 || m.Device == nil {
		return ""
	}
	at := slices.IndexFunc(all, func(o move) bool { return o.Device == m.Device })
	end := "-" + m.Device.ID
	if slices.ContainsFunc(all[:at], func(o move) bool { return o.Device != nil && o.Device.ID == m.Device.ID }) {
		end += "-" + strconv.Itoa(at+1)
	}
	return end
}

func (h handout) exerciseTitle(id string) string {
	if h.Program != nil && h.Program.Exercises[id] != nil {
		return h.Program.Exercises[id].Title
	}
	return ""
}
