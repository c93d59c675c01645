package program

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
		return d.HoldFor != nil || d.Minutes != nil
	}
	return d.Reps != nil && d.HoldFor == nil
}

// over returns d with what w says in its place.
func (d Dose) over(w Dose) Dose {
	for _, f := range []struct{ have, say **int }{{&d.Sets, &w.Sets}, {&d.Reps, &w.Reps}, {&d.Reserve, &w.Reserve},
		{&d.TimesADay, &w.TimesADay}, {&d.Minutes, &w.Minutes}, {&d.Contacts, &w.Contacts}} {
		if *f.say != nil {
			*f.have = *f.say
		}
	}
	if w.HoldFor != nil {
		d.HoldFor = w.HoldFor
	}
	if w.Rest != nil {
		d.Rest = w.Rest
	}
	return d
}
