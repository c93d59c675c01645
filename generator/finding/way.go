package finding

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// Way is how a load of an exercise is reckoned: by which equation, and with which part of the body. The program says so; the zero
// Way is Epley's equation and a body that is not moved.
type Way struct {
	Equation formula.Equation
	Body     formula.BodyExercise // empty: the body is not moved
}

// Ways are the ways of the exercises of a program, by id.
type Ways map[string]Way

// epley reports whether the way is the one of package formula's plain functions.
func (w Way) epley() bool { return w.Equation == "" || w.Equation == formula.Epley }

// OneRM is the estimated maximum of a set of n repetitions to failure.
func (w Way) OneRM(id string, moved basis.Num[unit.Kilograms], n basis.Num[unit.Count]) basis.Num[unit.Kilograms] {
	if w.epley() {
		return basis.Try2(id, formula.OneRMRule(n.Or(0)), formula.OneRM, moved, n)
	}
	return basis.Try2(id, formula.OneRMRuleBy(w.Equation, n.Or(0)), func(kg unit.Kilograms, n unit.Count) (unit.Kilograms, error) {
		return formula.OneRMBy(w.Equation, kg, n)
	}, moved, n)
}

// Share is the share of the maximum that n repetitions to failure allow, by the same equation.
func (w Way) Share(id string, n basis.Num[unit.Count]) basis.Num[unit.Percent] {
	if w.epley() {
		return basis.Try1(id, formula.AllowedShareRule(n.Or(0)), formula.AllowedShare, n)
	}
	return basis.Try1(id, formula.AllowedShareRuleBy(w.Equation, n.Or(0)), func(n unit.Count) (unit.Percent, error) {
		return formula.AllowedShareBy(w.Equation, n)
	}, n)
}

// ToFailureAt is how many repetitions a maximum allows at a load, by the same equation.
func (w Way) ToFailureAt(id string, most, moved basis.Num[unit.Kilograms]) basis.Num[unit.Count] {
	if w.epley() {
		return basis.Try2(id, formula.ByImpliedToFailure, formula.ImpliedToFailure, most, moved)
	}
	return basis.Try2(id, formula.ImpliedToFailureRuleBy(w.Equation), func(most, kg unit.Kilograms) (unit.Count, error) {
		return formula.ImpliedToFailureBy(w.Equation, most, kg)
	}, most, moved)
}

// Body is the part of the body that moves with a load (rules 19). Least and Most are one share where the sex is known. Where it
// is not, an estimate is made with the smaller one and a load is freed of the larger: what is left to add is then never more than
// either sex would be given.
type Body struct {
	Least, Most basis.Num[unit.Percent]
	Mass        basis.Num[unit.Kilograms]
}

var byNoMass = basis.Rule{Name: "body mass"}

// BodyOf is what an exercise moves of a body of some mass; nil where the body is not moved.
func BodyOf(of formula.BodyExercise, sex client.Sex, mass basis.Num[unit.Kilograms]) *Body {
	if of == "" {
		return nil
	}
	if !mass.OK() {
		mass = basis.Refused[unit.Kilograms]("body.mass-missing", byNoMass, "the body moves too, and its mass is not known: write mass_kg on a test day")
	}
	if sex != "" {
		share := bodyShare(of, formula.Sex(sex))
		return &Body{Least: share, Most: share, Mass: mass}
	}
	woman, man := bodyShare(of, formula.Female), bodyShare(of, formula.Male)
	if woman.Or(0) > man.Or(0) {
		woman, man = man, woman
	}
	return &Body{Least: woman, Most: man, Mass: mass}
}

func bodyShare(of formula.BodyExercise, sex formula.Sex) basis.Num[unit.Percent] {
	return basis.OfAny("body."+string(of)+"."+string(sex)+".share", formula.BodyShareRule(of, sex), func() (unit.Percent, error) {
		return formula.BodyShare(of, sex)
	})
}

// With is all that moves: a part of the body and what is added to it.
func (b *Body) With(id string, added basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
	return basis.Try3(id, formula.ByEffectiveLoad, formula.EffectiveLoad, b.Least, b.Mass, added)
}

// Without is what is added to the body for a load; refused where the body alone is heavier.
func (b *Body) Without(id string, load basis.Num[unit.Kilograms]) basis.Num[unit.Kilograms] {
	return basis.Try3(id, formula.ByAddedLoad, formula.AddedLoad, b.Most, b.Mass, load)
}

// NewestMass is the last body mass that was weighed.
func (f *Findings) NewestMass() (mass basis.Num[unit.Kilograms]) {
	for i := range f.Knees {
		if f.Knees[i].Mass.OK() {
			mass = f.Knees[i].Mass
		}
	}
	return mass
}
