package plan

import (
	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/finding"
	"paceleaf/generator/unit"
)

// A client stands on scales, not on a share of body weight: part weight-bearing in percent is turned into kilograms.

var (
	byPart  = basis.Rule{Name: "part of body weight", Sum: "$1 × $2 ÷ 100", Source: "definition"}
	byLimit = basis.Rule{Name: "said by the limit"}
	byScale = basis.Rule{Name: "step of bathroom scales", Source: "common practice, no source"}
)

// newestMass is the body mass as last weighed up to a day; missing where nobody has.
func newestMass(c *client.Client, on unit.Day) (mass basis.Num[unit.Kilograms]) {
	for i := range c.Tests {
		if t := &c.Tests[i]; t.Mass.OK() && !t.On.After(on) {
			mass = t.Mass
		}
	}
	return mass
}

// partLoad is the weight that a share of body weight allows, cut down to a whole kilogram; missing where the mass is not known.
func partLoad(w *Window, f *finding.Findings, id string) {
	if w.Allow.Part == nil {
		return
	}
	var mass basis.Num[unit.Kilograms]
	for _, k := range f.Knees {
		if k.Mass.OK() {
			mass = k.Mass
		}
	}
	share := basis.Given(id+".share", byLimit, *w.Allow.Part, basis.Say("limit {a}", w.Name))
	raw := basis.Of2(id+".part", byPart, func(m unit.Kilograms, p unit.Percent) unit.Kilograms {
		return unit.Kilograms(float64(float64(m)*float64(p)) / 100)
	}, mass, share)
	step := basis.Given("scales.step", byScale, unit.Kilograms(1), "bathroom scales show whole kilograms")
	w.PartLoad = basis.Cut(id+".load", ByCut, unit.CutTo[unit.Kilograms], raw, step)
	if kg, ok := w.PartLoad.Value(); ok {
		w.Allow.PartMass = &kg
	}
}
