package formula

import (
	"errors"

	"paceleaf/generator/basis"
	"paceleaf/generator/unit"
)

// ByWeekLoad is the rule of WeekLoad.
var ByWeekLoad = basis.Rule{Name: "load of the week", Sum: "sum($*)", Source: "Foster 1998"}

// WeekLoad returns the load of seven days: their sum. A day of rest is a 0; a day that nobody told of is not.
//
// Source: Foster 1998, Med Sci Sports Exerc 30:1164–1168.
// Studied: as SessionLoad.
// Refuses: another number of days than 7; a day below zero or no number.
func WeekLoad(days []unit.Points) (unit.Points, error) {
	if err := week(days); err != nil {
		return 0, err
	}
	var total unit.Points
	for _, d := range days {
		total += d
	}
	return total, nil
}

func week(days []unit.Points) error {
	if len(days) != 7 {
		return errors.New("a week has 7 days, rest days as 0: no load of the week")
	}
	for _, d := range days {
		if !number(d) || d < 0 {
			return errors.New("a day has no load; write 0 for a day of rest: no load of the week")
		}
	}
	return nil
}
