package client

import (
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/source"
)

// judge holds a client against itself and the clinic.
func (r *reader) judge() {
	c := r.c
	r.place(c.Place, c.At.At("place"))
	r.events()
	for _, s := range c.Stages {
		r.therapist(s.By, s.At.At("by"))
	}
	for _, o := range c.Opened {
		r.therapist(o.By, o.At.At("by"))
	}
	for _, w := range c.Waived {
		r.therapist(w.By, w.At.At("by"))
		if w.From.IsZero() && !r.spoilt(w.At) {
			r.ask(w.At.At("criterion"), fmt.Sprintf("the waiver of %s has no day", w.Criterion), "write from = the day of the decision: a waiver counts no longer than to the next operation")
		}
	}
	r.references()
	for i := range c.Limits {
		r.limit(&c.Limits[i])
	}
	for _, a := range c.Away {
		if !r.spoilt(a.At) && a.Until.Before(a.From) {
			r.wrong(a.At.At("until"), fmt.Sprintf("until %s lies before from %s", a.Until, a.From), "write the last day away")
		}
		r.place(a.Place, a.At.At("place"))
	}
	r.trainingDays()
	r.days()
	for id, s := range c.Setups {
		r.setup(id, s)
	}
	r.setupNames()
	for i := range c.Tests {
		r.tests(&c.Tests[i])
	}
	r.holds()
	r.blocks()
	r.logs()
}

// spoilt reports whether the reader has found a mistake in a table already, or in its whole file: what would follow from
// it is not told as a second mistake.
func (r *reader) spoilt(table basis.Origin) bool {
	return slices.ContainsFunc(r.faults, func(f source.Fault) bool {
		inside := f.Key == "" || f.Key == table.Key || strings.HasPrefix(f.Key, table.Key+".")
		return !f.Ask && f.File == table.File && inside
	})
}

// references holds the therapist's word on the reference against the other leg.
func (r *reader) references() {
	for _, ref := range r.c.References {
		r.therapist(ref.By, ref.At.At("by"))
		if r.c.SoundOther() && !r.spoilt(ref.At) {
			r.ask(ref.At.At("use"), "the other leg is called sound, so symmetry counts and this reference does not", "take it out, or mend other_leg")
		}
	}
}

func (r *reader) trainingDays() {
	for i, d := range r.c.TrainingDays {
		if slices.Contains(r.c.TrainingDays[:i], d) && d != "" {
			r.wrong(r.c.At.At(fmt.Sprintf("training_days[%d]", i)), fmt.Sprintf("training day %s stands twice", d), "keep one: a day has one session")
		}
	}
}

func (r *reader) limit(l *Limit) {
	if r.spoilt(l.At) {
		return
	}
	if what, instead := l.Allowance.Misfit(l.Kind); what != "" {
		r.wrong(l.At.At("kind"), what, instead)
	}
	if l.Lifts != nil && !l.Lifts.After(l.From) {
		r.wrong(l.At.At("lifts"), fmt.Sprintf("lifts %s does not lie after from %s", l.Lifts, l.From), "write the first day without the limit")
	}
}

func (r *reader) setup(id string, s Setup) {
	r.gauge(s.Gauge, s.At.At("gauge"))
	if s.Device == "" {
		return
	}
	at := s.Place
	if at == "" {
		at = r.c.Place
	} else {
		r.place(at, s.At.At("place"))
	}
	r.device(s.Device, at, s.At.At("device"))
}
