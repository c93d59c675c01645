package program

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// longestDay is how many minutes of one slot a day may ask for. Chosen: eight hours; more is a slip of the keys.
const longestDay = 8 * 60

// dose holds the doses of a slot, from wave to wave, against themselves and against its exercises.
func (r *reader) dose(s Slot) {
	r.method(s)
	r.repsFirst(s)
	about := fmt.Sprintf("slot %q", s.ID)
	r.oneDose(about, s.Filled(s.Dose), s.At)
	last := 0
	for _, w := range s.Waves {
		if w.FromWeek <= last {
			r.wrong(w.At.At("from_week"), fmt.Sprintf("week %d does not come after week %d", w.FromWeek, last), "put the waves in order of weeks, from week 1 on")
		}
		last = w.FromWeek
		r.oneDose(about, s.Filled(s.DoseIn(w.FromWeek)), w.At)
	}
	for i, id := range s.Choose {
		if e := r.p.Exercises[id]; e != nil && e.Own == nil && s.Filled(s.Dose).strange(e) {
			at := s.At.At(fmt.Sprintf("choose[%d]", i))
			r.faults.Add(source.Fault{File: at.File, Key: at.Key, Ask: true, What: fmt.Sprintf("slot %q counts no time, and %s has no [dose] of its own", s.ID, id),
				Instead: "see whether minutes, hold_s or work_s is meant, or add a [dose] to programs/exercises/" + id + ".toml"})
		}
	}
}

// strange reports whether a dose counts repetitions of what only goes on for a time, such as cycling.
func (d Dose) strange(e *Exercise) bool {
	return e.ResistedBy == Time && len(e.Levels) == 0 && !e.Isometric() && !d.fits(e)
}

// oneDose asks that a dose says how much, in keys that go together, and no more than a day has room for.
func (r *reader) oneDose(about string, d Dose, at basis.Origin) {
	for _, c := range d.contradictions() {
		if c.holds {
			key := at
			if c.key != "" {
				key = at.At(c.key)
			}
			r.wrong(key, about+" "+c.what, c.instead)
			return // the others follow from it
		}
	}
}

// contradiction is one way in which a dose cannot be meant.
type contradiction struct {
	holds              bool
	key, what, instead string
}

func (d Dose) contradictions() []contradiction {
	counted := d.Reps != nil || d.HoldFor != nil || d.Minutes != nil || d.Contacts != nil
	return []contradiction{
		{!counted && d.WorkFor == nil, "", "does not say how much", "write reps, hold_s, minutes, work_s or foot_contacts"},
		{d.Rounds != nil && (d.WorkFor == nil || d.Rest == nil), "rounds", "has rounds without both of their parts", "write work_s for the hard part and rest_s for the easy part"},
		{d.Rounds != nil && (counted || d.Sets != nil), "rounds", "counts rounds and something else too", "keep rounds, work_s and rest_s, and take sets, reps, hold_s, minutes and foot_contacts out"},
		{d.WorkFor != nil && counted, "work_s", "has work_s beside another amount", "keep one of work_s, reps, hold_s, minutes, foot_contacts"},
		{d.Effort != nil && d.Talk != "", "talk", "says how hard in two ways", "keep effort or talk"},
		{(d.Effort != nil || d.Talk != "") && d.Minutes == nil && d.WorkFor == nil, "", "says how hard it feels, but counts no time", "write minutes or work_s; of repetitions write reserve"},
		{d.Reserve != nil && d.Reps == nil, "reserve", "keeps repetitions in reserve, but counts none", "write reps, or take reserve out"},
		{d.aDay() > longestDay, "", fmt.Sprintf("asks for %.0f minutes of one day", d.aDay()), "mend sets, times_a_day or the time; a number may be in the wrong unit"},
	}
}

// aDay is how many minutes of work and rest a dose asks of one leg on one day, as far as it says a time.
func (d Dose) aDay() float64 {
	n := func(of *int) float64 {
		if of == nil {
			return 1
		}
		return float64(*of)
	}
	seconds := 0.0
	switch {
	case d.Minutes != nil:
		seconds = 60 * n(d.Minutes)
	case d.HoldFor != nil:
		seconds = float64(n(d.Reps) * float64(*d.HoldFor))
	case d.WorkFor != nil:
		seconds = float64(*d.WorkFor)
	}
	if d.Rest != nil && (d.Sets != nil || d.Rounds != nil) {
		seconds += float64(*d.Rest)
	}
	return float64(seconds*float64(n(d.Sets)*n(d.Rounds))*n(d.TimesADay)) / 60
}
