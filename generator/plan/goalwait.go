package plan

import "paceleaf/generator/unit"

// A goal of range waits while a limit forbids it: nobody is late with what was not allowed.

// roomToReach is how many weeks a knee has for a goal once the limit in its way has lifted. Tool default: a knee that was
// held at 60 degrees is not at 90 on the next morning.
const roomToReach = 2

// wait reports whether limits of the event's knee forbid a goal on the day, and sets until when. It moves the day of a goal
// that a limit has held up.
func (j judge) wait(s *GoalState, k knees) (waits bool) {
	forbidden := func(d unit.Day) bool {
		for _, side := range k.sides() {
			if isOf(j.event.Side, side) && outOfReach(s, k.of[side].rule(unit.PassiveBend, []unit.Kind{unit.PassiveBend}, d)) {
				return true
			}
		}
		return false
	}
	days := append([]unit.Day{j.event.Date}, k.turns(unit.PassiveBend, j.event.Date)...)
	sortByDay(days, func(d unit.Day) unit.Day { return d })
	held := false
	for _, d := range days {
		now := forbidden(d)
		switch {
		case held && !now && d.After(j.asOf) && s.Until.IsZero():
			s.Until = d
		case held && !now && !d.After(j.asOf):
			s.By = later(s.By, d.AddWeeks(roomToReach))
		}
		held = now
	}
	if waits = forbidden(j.asOf); !waits {
		s.Until = unit.Day{}
		return false
	}
	if !s.Until.IsZero() {
		s.By = later(s.By, s.Until.AddWeeks(roomToReach))
	}
	return true
}

// outOfReach reports whether a ruling on the bend leaves no room for a goal in degrees.
func outOfReach(s *GoalState, r ruling) bool {
	if s.Mark.Grade != "" || s.Mark.Unit != unit.Degrees(0).Unit() {
		return false
	}
	mark := unit.Degrees(s.Mark.Number)
	switch {
	case s.Goal.Measure == "flexion" && s.Sense == "at least":
		return r.allow.Closed() || r.allow.Range != nil && r.allow.Range.MostBent < mark
	case s.Goal.Measure == "extension" && s.Sense == "at most":
		return r.allow.Closed() || r.allow.Range != nil && r.allow.Range.Straightest > mark
	}
	return false
}
