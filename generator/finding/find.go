package finding

import (
	"slices"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Of says what the tests of a client say as of a day. event is the one that weeks count from: its side is the operated
// leg, its day divides before from after. A test dated after asOf is as if it had not been made.
func Of(clinic *client.Clinic, c *client.Client, event *client.Event, asOf unit.Day) *Findings {
	return Ways(nil).Of(clinic, c, event, asOf)
}

// Of is what Of says where a program has a way of its own for some exercises.
func (w Ways) Of(clinic *client.Clinic, c *client.Client, event *client.Event, asOf unit.Day) *Findings {
	f := &finder{ways: w, clinic: clinic, c: c, event: event, Findings: &Findings{AsOf: asOf, Measures: map[string]Measure{}, History: map[string][]Measure{}}}
	for i := range c.Tests {
		if d := &c.Tests[i]; !d.On.After(asOf) {
			f.days = append(f.days, d)
		}
	}
	for _, d := range f.days {
		f.knee(d)
		for i := range d.Strength {
			f.strength(d, &d.Strength[i])
		}
		f.ratios(d)
		for i := range d.Lifts {
			f.lift(d, &d.Lifts[i])
		}
		for i := range d.Hops {
			f.hop(d, &d.Hops[i])
		}
		f.battery(d)
		f.reach(d)
		f.rise(d)
		for i := range d.Questionnaires {
			f.questionnaire(d, &d.Questionnaires[i])
		}
	}
	f.reports()
	f.rangeMeasures()
	f.references()
	return f.Findings
}

// finder gathers the findings.
type finder struct {
	*Findings
	ways   Ways
	clinic *client.Clinic
	c      *client.Client
	event  *client.Event
	days   []*client.TestDay
	ends   straightEnds // of the days gone over so far
}

// newest reports whether no later day up to asOf holds the same test; the newest one's ids carry no day.
func (f *finder) newest(d *client.TestDay, holds func(*client.TestDay) bool) bool {
	for _, later := range f.days {
		if later.On.After(d.On) && holds(later) {
			return false
		}
	}
	return true
}

// stem is the beginning of an id: the thing, and the day where it is not the newest.
type stem struct {
	thing string
	when  string
}

func (f *finder) stem(thing string, d *client.TestDay, holds func(*client.TestDay) bool) stem {
	s := stem{thing: thing}
	if !f.newest(d, holds) {
		s.when = "." + d.On.String()
	}
	return s
}

// id makes thing[.side][.when].quantity.
func (s stem) id(side, quantity string) string {
	if side != "" {
		side = "." + side
	}
	return s.thing + side + s.when + "." + quantity
}

// put notes the newest value of a measure. Days come oldest first, so a later one replaces an earlier one.
func (f *finder) put(m Measure) {
	if _, known := f.Measures[m.Name]; !known {
		f.Order = append(f.Order, m.Name)
	}
	f.Measures[m.Name] = m
	f.record(m)
}

// measured makes a measure of a number; a missing number is not tested, with its reason.
func measured[Q unit.Quantity](name string, n basis.Num[Q], on unit.Day, doubts ...basis.Said) Measure {
	v, ok := n.Value()
	return Measure{Name: name, Value: n.Step(), Number: float64(v), Unit: v.Unit(), OK: ok, On: on, Reason: n.Why(), Doubts: doubts}
}

// Measure returns the newest value of a measure; not tested where there is none.
func (f *Findings) Measure(name string) Measure {
	if m, known := f.Measures[name]; known {
		return m
	}
	return Measure{Name: name, Reason: "not tested"}
}

// flag notes what is to be looked at without doubting the value.
func (f *finder) flag(id, code string, says basis.Said) {
	f.Flags = append(f.Flags, Doubt{ID: id, Says: says, Code: code})
}

func (f *finder) doubt(id, code string, says basis.Said) basis.Said {
	f.Doubts = append(f.Doubts, Doubt{ID: id, Says: says, Code: code})
	return says
}

// operated and other are the two legs of the event.
func (f *finder) operated() unit.Side { return f.event.Side }
func (f *finder) other() unit.Side    { return f.event.Side.Opposite() }

// OfSide picks the leg.
func (s *StrengthTest) OfSide(side unit.Side) Leg {
	if side == unit.Left {
		return s.Left
	}
	return s.Right
}

// OfSide picks the leg; both is the set with both legs together.
func (l *LiftTest) OfSide(side unit.Side) LiftLeg {
	switch side {
	case unit.Left:
		return l.Left
	case unit.Right:
		return l.Right
	}
	return l.Both
}

// references compares with the other leg: where it is no sound reference, symmetry opens nothing.
func (f *finder) references() {
	if f.c.SoundOther() && f.event.Side != unit.Both {
		return
	}
	for _, name := range f.Order {
		m := f.Measures[name]
		if !slices.Contains(compared, quantity(name)) || !m.OK {
			continue
		}
		if f.event.Side != unit.Both && quantity(name) == preopRatio {
			continue // the other leg from before the event is the reference that stays (rules 12)
		}
		if f.event.Side == unit.Both {
			f.Measures[name] = Measure{Name: name, On: m.On, Reason: "both knees: there is no other leg to compare with"}
			delete(f.History, name)
			continue
		}
		m.Doubts = append(m.Doubts, f.doubt(name, "reference-not-sound", basis.Say("the other leg is no sound reference ({a})", f.c.OtherLeg)))
		f.Measures[name] = m
		for i := range f.History[name] {
			f.History[name][i].Doubts = append(f.History[name][i].Doubts, m.Doubts[len(m.Doubts)-1])
		}
	}
}

// compared are the quantities that hold one leg against the other.
var compared = []string{"lsi", "percent-of-other", preopRatio}

// preopRatio compares with what the other leg was before the event.
const preopRatio = "preop-ratio"

func quantity(name string) string {
	for i := len(name) - 1; i >= 0; i-- {
		if name[i] == '.' {
			return name[i+1:]
		}
	}
	return ""
}
