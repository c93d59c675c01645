package finding

import (
	"fmt"
	"math"
	"strings"

	"paceleaf/generator/basis"
	"paceleaf/generator/client"
	"paceleaf/generator/unit"
)

// Alike is what two values of one measure must have in common before one may be held against the other, or both stand in one
// trend. What does not apply stays empty.
type Alike struct {
	Gauge   string // id of the gauge
	Kind    string // kind of the gauge, on which its error depends
	Mode    string
	Angle   string
	Speed   string
	Score   string // best or mean of the trials
	Gravity string // how the weight of the shank was dealt with
	Device  string // of a lift: place and device
	Range   string // of a lift: the bend that was gone through
	Tool    string // what the bend of a knee was measured with
	Levers  [2]unit.Metres
}

// leverSlack is how far two levers of one leg may differ and be called the same. Tool default: a tape is read no better.
const leverSlack unit.Metres = 0.01

// Apart says why two values cannot be compared, both sides named; empty where they can.
func (a Alike) Apart(b Alike) basis.Said {
	for _, aspect := range []struct {
		name basis.Said
		a, b string
	}{
		{"gauge", a.Gauge, b.Gauge}, {"mode", a.Mode, b.Mode}, {"angle", a.Angle, b.Angle}, {"speed", a.Speed, b.Speed},
		{"score of the trials", a.Score, b.Score}, {"way with the weight of the shank", a.Gravity, b.Gravity}, {"device", a.Device, b.Device},
		{"range", a.Range, b.Range}, {"tool", a.Tool, b.Tool},
	} {
		if aspect.a != aspect.b {
			return basis.Say("another {a} ({b}, then {c})", aspect.name, orNone(aspect.a), orNone(aspect.b))
		}
	}
	for i := range a.Levers {
		if (a.Levers[i] == 0) != (b.Levers[i] == 0) || math.Abs(float64(a.Levers[i]-b.Levers[i])) > float64(leverSlack) {
			return basis.Say("another lever ({a}, then {b})", metres(a.Levers[i]), metres(b.Levers[i]))
		}
	}
	return ""
}

func orNone(s string) basis.Said {
	if s == "" {
		return "none said"
	}
	return basis.Said(s)
}

func metres(m unit.Metres) basis.Said {
	if m == 0 {
		return "none typed"
	}
	return basis.Said(fmt.Sprintf("%.3g m", float64(m)))
}

// alike is what a test of force was made with.
func (f *finder) alike(s *client.Strength, have client.Conditions, score string) Alike {
	a := Alike{Gauge: have.Gauge, Mode: string(have.Mode), Score: score, Gravity: f.gravityBy(s, have)}
	if angle, ok := have.Angle.Value(); ok {
		a.Angle = fmt.Sprintf("%g°", float64(angle))
	}
	if g := f.clinic.Gauge(have.Gauge); g != nil {
		a.Kind = g.Kind
	}
	if have.Speed != nil {
		a.Speed = fmt.Sprintf("%g°/s", *have.Speed)
	}
	if len(s.Left.Torque)+len(s.Right.Torque) == 0 { // a device that gives torques has its own lever
		a.Levers = [2]unit.Metres{f.c.Arm(s, unit.Left).Or(0), f.c.Arm(s, unit.Right).Or(0)}
	}
	return a
}

// conditions is one word for all that must be alike before two values may be put in one trend.
func conditions(c client.Conditions, score string) string {
	speed := ""
	if c.Speed != nil {
		speed = fmt.Sprintf("%g°/s", *c.Speed)
	}
	angle := ""
	if a, ok := c.Angle.Value(); ok {
		angle = fmt.Sprintf("%g°", float64(a))
	}
	return strings.Join([]string{c.Gauge, string(c.Mode), angle, speed, score}, " ")
}

// record keeps a value of a measure in its history; the newest stands there too.
func (f *finder) record(m Measure) {
	if m.OK && m.Grade == "" {
		f.History[m.Name] = append(f.History[m.Name], m)
	}
}
