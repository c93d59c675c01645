package finding

import (
	"fmt"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// spreadLimit is the spread of trials above which a test is doubtful. Common practice, no source derives one.
const spreadLimit unit.Percent = 10

// strength takes one test of force: score of the trials, torque, correction for gravity, per kilogram, symmetry.
func (f *finder) strength(d *client.TestDay, s *client.Strength) {
	have := f.c.Conditions(s)
	ids := f.stem(s.Test, d, func(t *client.TestDay) bool {
		for i := range t.Strength {
			if t.Strength[i].Test == s.Test {
				return true
			}
		}
		return false
	})
	t := StrengthTest{On: d.On, Test: s.Test, Gauge: have.Gauge, Mode: string(have.Mode), Angle: have.Angle.Named(ids.id("", "angle")), Score: string(f.score(have.Gauge))}
	t.Conditions = conditions(have, t.Score)
	t.Alike = f.alike(s, have, t.Score)
	legs := pull{f, d, s, have, ids, t.Score, t.Angle}
	t.Left, t.Right = legs.leg(unit.Left, s.Left), legs.leg(unit.Right, s.Right)
	operated, other := t.OfSide(f.operated()), t.OfSide(f.other())
	if f.event.Side == unit.Both && t.Left.Torque.Or(0) < t.Right.Torque.Or(0) {
		operated = t.Left // of both knees the weaker one is judged
	}
	t.LSI = tenth(ids.id("", "lsi"), f.symmetry(ids, operated, other)).On(d.On)
	t.Deficit = basis.Of1(ids.id("", "deficit"), formula.ByDeficit, formula.Deficit, t.LSI).On(d.On)
	t.Preop = tenth(ids.id("", "preop-ratio"), f.preop(ids, d, operated, f.before(s.Test, t.Conditions))).On(d.On)
	f.Strength = append(f.Strength, t)
	if d.On.Before(f.event.Date) {
		return // a value from before the operation is data, not the state of the operated leg
	}
	f.strengthMeasures(&t, operated, other)
}

// score is best or mean, as the gauge says.
func (f *finder) score(gauge string) client.Trial {
	if g := f.clinic.Gauge(gauge); g != nil && g.Trial != "" {
		return g.Trial
	}
	return client.Best
}

// strengthMeasures files the newest values. The lower of symmetry and the pre-operative ratio governs (rules 13).
func (f *finder) strengthMeasures(t *StrengthTest, operated, other Leg) {
	var doubts []basis.Said
	for _, leg := range []struct {
		name basis.Said
		Leg
	}{{"operated", operated}, {"other", other}} {
		if spread, ok := leg.Spread.Value(); ok && spread > spreadLimit {
			doubts = append(doubts, f.doubt(leg.Spread.ID(), "spread", basis.Say("trials of the {a} leg spread more than {b} %: repeat", leg.name, float64(spreadLimit))))
		}
	}
	for _, m := range []Measure{
		f.trusted(measured(t.Test+".lsi", t.LSI, t.On, doubts...), t.LSI),
		measured(t.Test+".preop-ratio", t.Preop, t.On, doubts...),
		measured(t.Test+".nm-per-kg", operated.PerKg, t.On, doubts...),
	} {
		m.Alike = t.Alike
		f.put(m)
	}
}

// TooStrong is the symmetry above which the reference is in doubt (rules 13).
const TooStrong unit.Percent = 110

// trusted adds the doubt about the other leg to a symmetry above 110.
func (f *finder) trusted(m Measure, symmetry basis.Num[unit.Percent]) Measure {
	if v, ok := symmetry.Value(); ok && v > TooStrong {
		m.Doubts = append(m.Doubts, f.doubt(symmetry.ID(), "above-110", "symmetry above 110: is the other leg a good reference?"))
	}
	return m
}

// before is the other leg from before the event, under the same conditions: the newest that has a torque.
func (f *finder) before(test, conditions string) (found Leg) {
	for i := range f.Strength {
		t := &f.Strength[i]
		if t.Test == test && t.Conditions == conditions && t.On.Before(f.event.Date) {
			if leg := t.OfSide(f.other()); leg.Torque.OK() {
				found = leg
			}
		}
	}
	return found
}

// preop holds the operated leg against the other one before the event; of a young person, who grows, per kilogram of each
// day's mass (rules 13).
func (f *finder) preop(ids stem, d *client.TestDay, operated, before Leg) basis.Num[unit.Percent] {
	id := ids.id("", "preop-share")
	if f.c.Born.Under(client.GrownAt, d.On) {
		return basis.Try2(id, formula.ByPreopRatio, formula.PreopRatio[unit.NmPerKg], operated.PerKg, before.PerKg)
	}
	return basis.Try2(id, formula.ByPreopRatio, formula.PreopRatio[unit.NewtonMetres], operated.Torque, before.Torque)
}

// symmetry compares torques; forces only where no lever was typed for either leg.
func (f *finder) symmetry(ids stem, operated, other Leg) basis.Num[unit.Percent] {
	id := ids.id("", "symmetry")
	if operated.leverless && other.leverless {
		return basis.Try2(id, formula.BySymmetry, formula.Symmetry[unit.Newtons], operated.Force, other.Force).
			Because("no lever was typed: forces are compared, as if both levers were alike")
	}
	return basis.Try2(id, formula.BySymmetry, formula.Symmetry[unit.NewtonMetres], operated.Torque, other.Torque)
}

// pull is what a leg's trials are read with.
type pull struct {
	f     *finder
	d     *client.TestDay
	s     *client.Strength
	have  client.Conditions
	ids   stem
	score string
	angle basis.Num[unit.Degrees]
}

// leg computes one leg; a leg without trials is not tested, with the reason that was typed.
func (p pull) leg(side unit.Side, typed client.Pull) Leg {
	l := Leg{NotTested: typed.NotTested, StoppedForPain: typed.StoppedForPain}
	name := func(quantity string) string { return p.ids.id(string(side), quantity) }
	switch {
	case typed.StoppedForPain:
		l.NotTested = "stopped for pain"
	case typed.NotTested == "" && len(typed.Peak)+len(typed.Torque) == 0:
		l.NotTested = "not tested"
	}
	if l.NotTested != "" {
		l.Force = basis.Refused[unit.Newtons](name("force"), formula.ByBest, l.NotTested)
		l.Torque = basis.Refused[unit.NewtonMetres](name("torque"), formula.ByTorque, l.NotTested)
		l.leverless = true
		return l
	}
	if len(typed.Torque) > 0 {
		trials := numbered(typed.Torque, name, p.d.On)
		l.Spread = spread(name("spread"), trials)
		l.Torque = kept(name("torque"), p.score, trials)
	} else {
		trials := numbered(typed.Peak, name, p.d.On)
		l.Spread = spread(name("spread"), trials)
		l.Force = kept(name("force"), p.score, trials)
		arm := p.f.c.Arm(p.s, side)
		l.leverless = !arm.OK()
		l.Torque = p.torque(name, side, l.Force, arm)
	}
	l.PerKg = basis.Try2(name("nm-per-kg"), formula.ByPerKilogram, formula.PerKilogram, l.Torque, p.f.mass(p.d))
	return l
}

// torque is force times lever, corrected for gravity away from 90 degrees unless the gauge was tared.
func (p pull) torque(name func(string) string, side unit.Side, force basis.Num[unit.Newtons], arm basis.Num[unit.Metres]) basis.Num[unit.NewtonMetres] {
	if !arm.OK() {
		return basis.Refused[unit.NewtonMetres](name("torque"), formula.ByTorque, "no lever was typed", force.Step())
	}
	arm = arm.Named(name("arm"))
	if !p.have.Untared() {
		return basis.Of2(name("torque"), formula.ByTorque, formula.Torque, force, arm)
	}
	raw := basis.Of2(name("torque-uncorrected"), formula.ByTorque, formula.Torque, force, arm)
	weight := p.gravity(name, side, arm)
	if strings.Contains(p.s.Test, "flexion") {
		return basis.Of2(name("torque"), formula.ByFlexionCorrected, formula.FlexionCorrected, raw, weight)
	}
	return basis.Of2(name("torque"), formula.ByExtensionCorrected, formula.ExtensionCorrected, raw, weight)
}

// mass is the day's, else the newest one before it.
func (f *finder) mass(d *client.TestDay) (mass basis.Num[unit.Kilograms]) {
	for _, k := range f.Knees {
		if !k.On.After(d.On) && k.Mass.OK() {
			mass = k.Mass
		}
	}
	return mass
}

// numbered names the trials of a leg.
func numbered[Q unit.Quantity](trials []basis.Num[Q], name func(string) string, on unit.Day) []basis.Num[Q] {
	list := make([]basis.Num[Q], len(trials))
	for i, t := range trials {
		list[i] = t.Named(name(fmt.Sprintf("trial-%d", i+1))).On(on)
	}
	return list
}

// kept is the score of several trials.
func kept[Q unit.Quantity](id, score string, trials []basis.Num[Q]) basis.Num[Q] {
	if score == string(client.Mean) {
		return basis.OfList(id, formula.ByMeanOf, formula.MeanOf[Q], trials)
	}
	return basis.OfList(id, formula.ByBest, formula.Best[Q], trials)
}

func spread[Q unit.Quantity](id string, trials []basis.Num[Q]) basis.Num[unit.Percent] {
	return basis.OfList(id, formula.BySpread, formula.Spread[Q], trials)
}
