package library

import (
	"strings"

	"paceleaf/generator/program"
)

// doses are the dose of a slot, and from which week of the phase another one holds.
func (r *reader) doses(slot *program.Slot) string {
	all := []string{r.dose(slot.Filled(slot.Dose))}
	for _, w := range slot.Waves {
		all = append(all, r.w.Say("library-desk.wave", "n", w.FromWeek, "dose", r.dose(slot.Filled(slot.DoseIn(w.FromWeek)))))
	}
	if slot.WeeklyPercent > 0 {
		all = append(all, r.w.Say("library-desk.weekly", "share", r.w.Number(float64(slot.WeeklyPercent), 1)))
	}
	if slot.Range != nil {
		all = append(all, r.reach(slot.Range))
	}
	return strings.Join(all, "; ")
}

// dose is how much, in words.
func (r *reader) dose(d program.Dose) string {
	var all []string
	count := func(key string, n *int) {
		if n != nil {
			all = append(all, r.w.Say("desk.dose-"+key, "n", *n))
		}
	}
	count("sets", d.Sets)
	count("rounds", d.Rounds)
	if d.Reps != nil && d.RepsTo != nil {
		all = append(all, r.w.Say("desk.dose-reps-to", "from", *d.Reps, "to", *d.RepsTo))
	} else {
		count("reps", d.Reps)
	}
	count("reserve", d.Reserve)
	if d.HoldFor != nil {
		all = append(all, r.w.Say("desk.dose-hold", "n", r.w.Number(float64(*d.HoldFor), 1)))
	}
	count("times", d.TimesADay)
	count("minutes", d.Minutes)
	if d.WorkFor != nil {
		all = append(all, r.w.Say("desk.dose-work", "n", r.w.Number(float64(*d.WorkFor), 1)))
	}
	count("effort", d.Effort)
	if d.Talk != "" {
		all = append(all, r.w.Say("desk.talk-"+string(d.Talk)))
	}
	count("contacts", d.Contacts)
	if d.Rest != nil {
		all = append(all, r.w.Say("desk.dose-rest", "n", r.w.Number(float64(*d.Rest), 1)))
	}
	return strings.Join(all, ", ")
}
