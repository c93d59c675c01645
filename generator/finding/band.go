package finding

import (
	"fmt"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/formula"
	"paceleaf/generator/unit"
)

// A measured band pulls as hard as its stretch says, on the line of its two points. Its force counts as the weight that pulls as hard,
// so that a band is reckoned as any other device. Nothing carries from one band to another.

var (
	byAsWeight = basis.Rule{Name: "force, as the weight that pulls as hard", Sum: "$1 ÷ 9.80665", Source: "definition"}
	byAsForce  = basis.Rule{Name: "weight, as the force that it pulls with", Sum: "$1 × 9.80665", Source: "definition"}
	byLength   = basis.Rule{Name: "length of a stretched band", Sum: "$1 × (1 + $2 ÷ 100)", Source: "definition"}
	byHalfway  = basis.Rule{Name: "cut to step", Sum: "down($1 ÷ $2) × $2", Source: "one rounding, toward caution"}
	byTape     = basis.Rule{Name: "step of a tape"}
)

// tape is what a length is told in, cut down: 1 cm.
const tape unit.Metres = 0.01

// BandPull is the weight that a band pulls as hard as at a length.
func BandPull(id string, length basis.Num[unit.Metres], place *client.Place, d *client.Device) basis.Num[unit.Kilograms] {
	s1, f1, s2, f2 := bandLine(place, d)
	at := basis.Try2(id+"-stretch", formula.ByStretch, formula.Stretch, length, d.Rest.Named(DeviceID(place, d, "rest")))
	force := basis.OfAny(id+"-force", formula.ByElastic, func() (unit.Newtons, error) {
		return formula.Elastic(pullOf(s1, f1), pullOf(s2, f2), at.Or(0))
	}, s1, f1, s2, f2, at)
	return basis.Of1(id, byAsWeight, func(n unit.Newtons) unit.Kilograms { return unit.Kilograms(float64(n) / unit.NewtonsPerKgf) }, force)
}

// BandLength is how long a band is to be pulled for a load, cut down to a centimetre; refused outside its two points.
func BandLength(id string, load basis.Num[unit.Kilograms], place *client.Place, d *client.Device) basis.Num[unit.Metres] {
	s1, f1, s2, f2 := bandLine(place, d)
	force := basis.Of1(id+"-target", byAsForce, func(kg unit.Kilograms) unit.Newtons { return unit.Newtons(float64(kg) * unit.NewtonsPerKgf) }, load)
	at := basis.OfAny(id+"-target-stretch", formula.ByStretchFor, func() (unit.Percent, error) {
		return formula.StretchFor(pullOf(s1, f1), pullOf(s2, f2), force.Or(0))
	}, s1, f1, s2, f2, force)
	long := basis.Of2(id+"-uncut", byLength, func(rest unit.Metres, at unit.Percent) unit.Metres {
		return unit.Metres(float64(rest) * (1 + float64(at)/100))
	}, d.Rest.Named(DeviceID(place, d, "rest")), at)
	return basis.Cut(id, byHalfway, unit.CutTo[unit.Metres], long, basis.Given("tape.step", byTape, tape, "1 cm"))
}

// bandLine are the two measured points of a band, the shorter first: stretch and force of each.
func bandLine(place *client.Place, d *client.Device) (s1 basis.Num[unit.Percent], f1 basis.Num[unit.Newtons], s2 basis.Num[unit.Percent], f2 basis.Num[unit.Newtons]) {
	point := func(i int) (basis.Num[unit.Percent], basis.Num[unit.Newtons]) {
		name := func(what string) string { return DeviceID(place, d, fmt.Sprintf("point-%d-%s", i+1, what)) }
		p := d.Points[i]
		stretch := basis.Try2(name("stretch"), formula.ByStretch, formula.Stretch, p.Length.Named(name("length")), d.Rest.Named(DeviceID(place, d, "rest")))
		return stretch, p.Force.Named(name("force"))
	}
	first, second := 0, 1
	if d.Points[0].Length.Or(0) > d.Points[1].Length.Or(0) {
		first, second = 1, 0
	}
	s1, f1 = point(first)
	s2, f2 = point(second)
	return s1, f1, s2, f2
}

func pullOf(stretch basis.Num[unit.Percent], force basis.Num[unit.Newtons]) formula.Pull {
	return formula.Pull{Stretch: stretch.Or(0), Force: force.Or(0)}
}
