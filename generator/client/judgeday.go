package client

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"paceleaf/generator/basis"
)

// What a test day alone, and the client and the clinic beside it, say against its values.

func (r *reader) tests(d *TestDay) {
	r.therapist(d.By, d.At.At("by"))
	for _, knee := range []struct {
		name string
		KneeRange
	}{{"left", d.Left}, {"right", d.Right}} {
		if lacks, beyond := knee.LacksExtension.Or(0), knee.BeyondStraight.Or(0); lacks > 0 && beyond > 0 {
			r.wrong(knee.At.At("lacks_extension_deg"), fmt.Sprintf("the %s knee lacks %g° of straight and goes %g° beyond it", knee.name, float64(lacks), float64(beyond)), "keep one of the two")
		}
	}
	seen := map[string]bool{}
	for i := range d.Strength {
		s := &d.Strength[i]
		r.once(seen, s.Test, s.At.At("test"), "give the second a name of its own, such as "+s.Test+"-60")
		r.strength(d, s)
	}
	r.testNames(d)
	for _, h := range d.Hops {
		r.once(seen, "hop-"+h.Test, h.At.At("test"), "keep one, with all its trials in one list")
	}
	for i := range d.Questionnaires {
		q := &d.Questionnaires[i]
		r.once(seen, q.ID, q.At.At("id"), "keep one score a day")
		r.questionnaire(q)
	}
	r.reach(d)
	for i := range d.Lifts {
		l := &d.Lifts[i]
		r.once(seen, l.Exercise, l.At.At("exercise"), "keep the heaviest set")
		if r.spoilt(l.At) {
			continue
		}
		setup := r.c.Setups[l.Exercise]
		r.place(l.Place, l.At.At("place"))
		r.device(l.Device, cmp.Or(l.Place, setup.Place, r.c.Place), l.At.At("device"))
		for _, leg := range []struct {
			name string
			set  Set
		}{{"left", l.Left}, {"right", l.Right}, {"both", l.Both}} {
			r.set(l, leg.name, leg.set)
		}
	}
}

// once asks that a test stands once on a day: two values of one name would have one id.
func (r *reader) once(seen map[string]bool, name string, at basis.Origin, instead string) {
	if name != "" && seen[name] {
		r.wrong(at, fmt.Sprintf("%s stands twice on this day", name), instead)
	}
	seen[name] = true
}

// testNames asks for names of tests that are known: a value under a misspelt one would be passed over in silence.
func (r *reader) testNames(d *TestDay) {
	for i := range d.Strength {
		s := &d.Strength[i]
		named := func(known string) bool { return s.Test == known || strings.HasPrefix(s.Test, known+"-") }
		if s.Test != "" && !slices.ContainsFunc(strengthTests, named) {
			r.ask(s.At.At("test"), fmt.Sprintf("no rule knows the test of force %q", s.Test),
				"write one of "+strings.Join(strengthTests, ", ")+", with a word behind it for a second one (knee-extension-60)")
		}
	}
	for i := range d.Hops {
		h := &d.Hops[i]
		if _, known := hopTests["hop-"+h.Test]; h.Test != "" && !known {
			r.wrong(h.At.At("test"), fmt.Sprintf("hop %q is not known", h.Test), "write one of single, triple, crossover, timed-6m, side, vertical")
		}
	}
}

func (r *reader) strength(d *TestDay, s *Strength) {
	if r.spoilt(s.At) {
		return
	}
	r.gauge(s.Gauge, s.At.At("gauge"))
	r.conditions(s)
	for _, leg := range []struct {
		name string
		pull Pull
	}{{"left", s.Left}, {"right", s.Right}} {
		values := len(leg.pull.Peak) + len(leg.pull.Torque)
		if values > 0 && (leg.pull.NotTested != "" || leg.pull.StoppedForPain) {
			r.wrong(s.At.At(leg.name), fmt.Sprintf("the %s leg has values and is called not tested", leg.name), "keep one of the two")
		}
	}
}

// reach holds the Y-balance and the rise: a leg has values or is not tested.
func (r *reader) reach(d *TestDay) {
	for _, leg := range []struct {
		name         string
		at           basis.Origin
		values, none bool
	}{
		{"left", d.YBalance.At.At("left"), d.YBalance.Left.Done(), d.YBalance.Left.NotTested != "" || d.YBalance.Left.StoppedForPain},
		{"right", d.YBalance.At.At("right"), d.YBalance.Right.Done(), d.YBalance.Right.NotTested != "" || d.YBalance.Right.StoppedForPain},
		{"left", d.Rise.At.At("left"), d.Rise.Left.Seat.OK(), d.Rise.Left.NotTested != "" || d.Rise.Left.StoppedForPain},
		{"right", d.Rise.At.At("right"), d.Rise.Right.Seat.OK(), d.Rise.Right.NotTested != "" || d.Rise.Right.StoppedForPain},
	} {
		if leg.values && leg.none {
			r.wrong(leg.at, fmt.Sprintf("the %s leg has values and is called not tested", leg.name), "keep one of the two")
		}
	}
}

func (r *reader) set(l *Lift, name string, s Set) {
	at := l.At.At(name)
	switch {
	case s.Plates.OK() && s.Moved.OK():
		r.wrong(at, "plates and moved load together", "keep one: plates_kg is what is put on, moved_kg is all that moves")
	case s.Stretched.OK() && (s.Plates.OK() || s.Moved.OK()):
		r.wrong(at, "a weight and the length of a band together", "keep one: a band has stretched_cm, a weight plates_kg or moved_kg")
	case s.loaded() && !s.Reps.OK():
		r.wrong(at, "a load without repetitions", "write reps and reserve")
	case s.Reps.OK() && !s.Reserve.OK():
		r.wrong(at, "repetitions without what was in reserve", "write reserve = 0 for a set to failure")
	case s.Reps.OK() && !s.loaded():
		r.wrong(at, "repetitions without a load", "write plates_kg or moved_kg, or stretched_cm of a band")
	}
}
