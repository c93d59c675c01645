package program

import "paceleaf/generator/unit"

// DoseIn is the dose in a week of the phase: the last wave that has begun, laid over the slot's own dose.
func (s *Slot) DoseIn(phaseWeek int) Dose {
	d := s.Dose
	for _, w := range s.Waves {
		if w.FromWeek <= phaseWeek {
			d = d.over(w.Dose)
		}
	}
	return d
}

// DoseFor is the dose of an exercise in a slot's week: the slot's, or the exercise's own where the slot's does not fit it.
func (s *Slot) DoseFor(e *Exercise, phaseWeek int) Dose {
	d := s.Filled(s.DoseIn(phaseWeek))
	if e.Own != nil && !d.fits(e) {
		return *e.Own
	}
	return d
}

// fits reports whether a dose is of the kind that the exercise needs: a held one is held, a timed one has minutes.
func (d Dose) fits(e *Exercise) bool {
	switch {
	case e.ResistedBy == FootContacts:
		return d.Contacts != nil
	case e.Isometric():
		return d.HoldFor != nil
	case e.ResistedBy == Time:
		return d.HoldFor != nil || d.Minutes != nil || d.WorkFor != nil
	}
	return (d.Reps != nil || d.WorkFor != nil) && d.HoldFor == nil
}

// over returns d with what w says in its place.
func (d Dose) over(w Dose) Dose {
	for _, f := range []struct{ have, say **int }{{&d.Sets, &w.Sets}, {&d.Reps, &w.Reps}, {&d.Reserve, &w.Reserve},
		{&d.TimesADay, &w.TimesADay}, {&d.Minutes, &w.Minutes}, {&d.Contacts, &w.Contacts},
		{&d.Rounds, &w.Rounds}, {&d.Effort, &w.Effort}} {
		if *f.say != nil {
			*f.have = *f.say
		}
	}
	if w.Reps != nil || w.RepsTo != nil {
		d.RepsTo = w.RepsTo // a wave that names its repetitions says the whole of them
	}
	if w.HoldFor != nil {
		d.HoldFor = w.HoldFor
	}
	if w.Rest != nil {
		d.Rest = w.Rest
	}
	if w.WorkFor != nil {
		d.WorkFor = w.WorkFor
	}
	switch { // the newer word on how hard takes the older one's place
	case w.Talk != "":
		d.Talk, d.Effort = w.Talk, nil
	case w.Effort != nil:
		d.Talk = ""
	}
	return d
}

// RangeIn is the part of the movement that the slot asks for in a week of the phase; nil: all that the exercise has.
func (s *Slot) RangeIn(phaseWeek int) *unit.Reach {
	r := s.Range
	for i := range s.Waves {
		if w := &s.Waves[i]; w.FromWeek <= phaseWeek && w.Range != nil {
			r = w.Range
		}
	}
	return r
}

// Speed is how fast a repetition of an exercise goes in a slot: the slot's word, else the exercise's own.
func (s *Slot) Speed(e *Exercise) (lift, hold, lower unit.Seconds) {
	lift, hold, lower = e.Lift, e.Hold, e.Lower
	if s != nil && s.Lift > 0 {
		lift = s.Lift
	}
	if s != nil && s.Lower > 0 {
		lower = s.Lower
	}
	return lift, hold, lower
}
