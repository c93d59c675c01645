package page

import (
	"cmp"
	"slices"
	"strconv"

	"paceleaf/generator/basis"
	"paceleaf/generator/plan"
	"paceleaf/generator/unit"
)

// DiaryDose is what a box asks for in a week: As holds it under the very keys of a log (client.Sets), so that the script asks
// for nothing that a log has no place for. A list is asked for set by set, a number once; nil is "as many as you can". Two
// keys are the script's own, for a box tells a load on each side: load, and loads where the sets differ.
type DiaryDose struct {
	Week int            `json:"week"`
	As   map[string]any `json:"as"`
}

// logWords are the sentences that ask for a key of a log; where it is one set, the key ends in 1.
var logWords = map[string]string{"reps": "reps", "reps1": "reps-once", "time_s": "seconds", "time_s1": "seconds-once",
	"time_min": "minutes-of", "time_min1": "minutes-once", "foot_contacts": "landings", "rounds": "rounds", "times": "often"}

// asBoxSays is the dose of a week as the box says it; empty where there is nothing to count.
func (leg DiaryLeg) asBoxSays(d plan.WeekDose) map[string]any {
	as := map[string]any{}
	if len(d.Each) > 0 {
		leg.setBySet(as, d)
		return as
	}
	sets := 1
	if d.Dose.Sets != nil {
		sets = *d.Dose.Sets
	}
	do := d.Dose
	switch {
	case do.Reps != nil:
		as["reps"] = slices.Repeat([]int{*do.Reps}, sets)
		if load := leg.onTheBox(d.Plates, d.PerSide); load != nil && !d.FindYourWeight {
			as["load"] = *load
		}
	case do.WorkFor != nil && do.Rounds != nil:
		as["rounds"] = *do.Rounds
	case do.HoldFor != nil || do.WorkFor != nil:
		as["time_s"] = slices.Repeat([]float64{float64(*cmp.Or(do.HoldFor, do.WorkFor))}, sets)
	case do.Minutes != nil:
		as["time_min"] = slices.Repeat([]int{*do.Minutes}, sets)
	case do.Contacts != nil:
		as["foot_contacts"] = *do.Contacts
	}
	if do.TimesADay != nil && *do.TimesADay > 1 {
		as["times"] = *do.TimesADay
	}
	return as
}

// setBySet lays out sets that differ; of the fourth one, whose load goes by the third, nothing is known yet.
func (leg DiaryLeg) setBySet(as map[string]any, d plan.WeekDose) {
	each := d.Each
	if len(d.Fourth) > 0 {
		each = append(each[:len(each):len(each)], plan.SetDose{})
	}
	reps, loads := make([]*int, len(each)), make([]*float64, len(each))
	for i, s := range each {
		reps[i], loads[i] = s.Reps, leg.onTheBox(s.Plates, s.PerSide)
	}
	as["reps"] = reps
	if leg.Load != "" {
		as["loads"] = loads
	}
}

// onTheBox is a load as the box says it: on each side, in the unit of the device; nil where the box says none.
func (leg DiaryLeg) onTheBox(plates basis.Num[unit.Kilograms], perSide []unit.Kilograms) *float64 {
	kg, ok := plates.Value()
	if !ok || leg.Load == "" {
		return nil
	}
	load := float64(kg)
	if len(perSide) > 0 {
		load = float64(total(perSide))
	}
	if leg.Load == "lb" {
		load /= unit.KilogramsPerPound
	}
	load, _ = strconv.ParseFloat(strconv.FormatFloat(load, 'f', 2, 64), 64) // as words.Number writes it
	return &load
}
